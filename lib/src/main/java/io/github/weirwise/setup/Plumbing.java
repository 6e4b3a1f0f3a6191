package io.github.weirwise.setup;

import io.github.weirwise.internal.physics.hydraulics.Pipe;
import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import java.util.List;

/**
 * A run of smooth plastic pipe with its fittings.
 *
 * @param boreMm inner diameter, 5 to 500 mm
 * @param lengthMm length along the pipe, 10 to 100000 mm
 * @param fittings entrance, bends, valves and exit, in any order
 */
public record Plumbing(double boreMm, double lengthMm, List<Fitting> fittings) {
    private static final Limit BORE_MM = Limit.of("boreMm", 5, 500, Unit.MILLIMETRE, "setup.try.measureThePipesInner");
    private static final Limit LENGTH_MM =
            Limit.of("lengthMm", 10, 100000, Unit.MILLIMETRE, "setup.try.measureAlongThePipe");

    /**
     * Copies the list.
     *
     * @throws io.github.weirwise.report.OutOfRangeException if a measure is out of its range
     */
    public Plumbing {
        BORE_MM.check(boreMm);
        LENGTH_MM.check(lengthMm);
        fittings = List.copyOf(fittings);
    }

    /** The run as a full pipe; losses summed over the fittings. */
    Pipe pipe() {
        double losses = fittings.stream().mapToDouble(Fitting::lossCoefficient).sum();
        return new Pipe(boreMm / 1000, lengthMm / 1000, Pipe.SMOOTH_PLASTIC_M, losses);
    }

    /** How many of the fittings turn the flow. */
    public long bends() {
        return fittings.stream().filter(Plumbing::turns).count();
    }

    private static boolean turns(Fitting fitting) {
        return switch (fitting) {
            case ELBOW_90, ELBOW_90_LONG, ELBOW_45, TEE_BRANCH, RETURN_BEND -> true;
            default -> false;
        };
    }
}
