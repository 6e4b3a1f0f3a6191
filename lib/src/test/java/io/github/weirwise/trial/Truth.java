package io.github.weirwise.trial;

import io.github.weirwise.report.Range;
import io.github.weirwise.unit.Target;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.function.Predicate;

/** Noise-free answers about one tank: steady states, distance to the band, the best setting. */
final class Truth {
    private static final double LOG_LOW = Math.log(Target.AMOUNT_BAND.low());
    private static final double LOG_HIGH = Math.log(Target.AMOUNT_BAND.high());
    private static final double SCAN_MM = 1;

    private final TankPlan plan;
    private final List<Ailment> ailments;
    private final DoubleSupplier neckLife;

    /** A tank as it is, with the factor on life by the ordinary film in its neck. */
    Truth(TankPlan plan, List<Ailment> ailments, DoubleSupplier neckLife) {
        this.plan = plan;
        this.ailments = ailments;
        this.neckLife = neckLife;
    }

    /** A unit without any fault and with a clean neck. */
    static Truth healthy(TankPlan plan) {
        return new Truth(plan, List.of(), () -> 1);
    }

    /** The steady state with the mark at a height, besides the causes with another factor on life. */
    TruePoint at(double hour, double markMm, double life) {
        return at(hour, markMm, life, each -> true);
    }

    /** The steady state with only some of the causes. */
    TruePoint at(double hour, double markMm, double life, Predicate<Ailment> acting) {
        Strain strain = strain(hour, acting);
        strain.life *= life * neckLife.getAsDouble();
        TrueUnit unit = plan.unit();
        return TrueLaw.at(unit, markMm + unit.crestOffsetMm() + strain.slipMm, strain);
    }

    TruePoint steady(double hour, double markMm) {
        return at(hour, markMm, 1);
    }

    /** The steady state once all that can be serviced is serviced. */
    TruePoint serviced(double hour, double markMm) {
        return at(hour, markMm, 1, each -> !each.kind().serviceable());
    }

    Strain strain(double hour, Predicate<Ailment> acting) {
        Strain strain = new Strain();
        for (Ailment each : ailments) {
            if (acting.test(each)) {
                each.act(hour, strain);
            }
        }
        return strain;
    }

    /** Darkness in platinum-cobalt units for gas over liquid against the target's. */
    double darkness(double hour, double gasPerLiquid) {
        TrueUnit unit = plan.unit();
        return unit.darknessPtCo()
                * strain(hour, each -> true).strength
                * Math.pow(gasPerLiquid, unit.darknessExponent());
    }

    /** How far an amount (logarithm over the target's) lies outside the band; 0 inside. */
    static double outside(double logAmount) {
        return Math.max(0, Math.max(LOG_LOW - logAmount, logAmount - LOG_HIGH));
    }

    /** Whether amount and darkness are in band without noise and nothing floods. */
    boolean inBand(double hour, double markMm) {
        TruePoint point = steady(hour, markMm);
        return !point.flooded() && outside(point.logAmount()) == 0 && darknessOutside(hour, point) == 0;
    }

    /** How far darkness lies outside the wanted range, as a logarithm; 0 inside or when waived. */
    double darknessOutside(double hour, TruePoint point) {
        if (plan.lowLoad()) {
            return 0;
        }
        return darknessOutside(darkness(hour, point.gasPerLiquid()));
    }

    private double darknessOutside(double ptCo) {
        Range wanted = plan.unit().sheet().target().darknessPtCo();
        return Math.max(0, Math.max(Math.log(wanted.low() / ptCo), Math.log(ptCo / wanted.high())));
    }

    /** Whether a measured mean darkness is in range or waived. */
    boolean darknessFits(double ptCo) {
        return plan.lowLoad() || darknessOutside(ptCo) == 0;
    }

    /** The mark that gives this amount (logarithm over the target's), or the nearest end of the weir's travel. */
    double markFor(double hour, double logAmount, Predicate<Ailment> acting) {
        double low = plan.unit().sheet().weir().lowestCrestMm();
        double high = plan.unit().sheet().weir().highestCrestMm();
        for (int i = 0; i < 30 && high - low > 0.01; i++) {
            double middle = (low + high) / 2;
            if (at(hour, middle, 1, acting).logAmount() > logAmount) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return (low + high) / 2;
    }

    /** The mark nearest to the target without leaving the band of darkness, as the tank is at this hour. */
    double bestMark(double hour) {
        double middle = markFor(hour, 0, each -> true);
        if (inBand(hour, middle)) {
            return middle;
        }
        var weir = plan.unit().sheet().weir();
        double best = middle;
        double least = Double.POSITIVE_INFINITY;
        for (double mark = weir.lowestCrestMm(); mark <= weir.highestCrestMm(); mark += SCAN_MM) {
            TruePoint point = steady(hour, mark);
            double distance = outside(point.logAmount())
                    + darknessOutside(hour, point)
                    + (point.flooded() ? 5 : 0)
                    + 1e-3 * Math.abs(point.logAmount());
            if (distance < least) {
                least = distance;
                best = mark;
            }
        }
        return best;
    }
}
