package io.github.weirwise.unit;

import io.github.weirwise.internal.physics.foam.Capillarity;
import io.github.weirwise.internal.physics.foam.Venting;
import io.github.weirwise.report.Require;
import java.util.Objects;

/**
 * What the reference column has to assume beyond a unit's {@link FoamTraits}. None of it has been measured in tank foam.
 *
 * @param venting where the gas of burst bubbles goes
 * @param capillarity how bubbles suck liquid
 * @param surfacePressureMnPerM how much the organics lower the surface tension of clean sea water, 0 to 60 mN/m; proteins take
 *     several to 20
 * @param grownAgeSeconds age at which bubbles have grown from the fresh to the lip size, 1 to 10000 s; 100 s is about the age
 *     at the lip of the three default units
 * @param detail how closely the column is solved
 * @since 0.1
 */
public record ColumnAssumptions(
        Venting venting,
        Capillarity capillarity,
        double surfacePressureMnPerM,
        double grownAgeSeconds,
        ColumnDetail detail) {
    /** Gas of burst bubbles vents through the foam, bubbles without order, 20 mN/m, grown within 100 s; solved in full. */
    public static final ColumnAssumptions DEFAULT =
            new ColumnAssumptions(Venting.THROUGH_FOAM, Capillarity.DISORDERED, 20, 100, ColumnDetail.FULL);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public ColumnAssumptions {
        Objects.requireNonNull(venting, "venting");
        Objects.requireNonNull(capillarity, "capillarity");
        Objects.requireNonNull(detail, "detail");
        String fix = "start from ColumnAssumptions.DEFAULT";
        Require.inRange("surfacePressureMnPerM", surfacePressureMnPerM, 0, 60, "mN/m", fix);
        Require.inRange("grownAgeSeconds", grownAgeSeconds, 1, 10000, "s", fix);
    }

    /** The same assumptions with another way for the gas. */
    public ColumnAssumptions withVenting(Venting other) {
        return new ColumnAssumptions(other, capillarity, surfacePressureMnPerM, grownAgeSeconds, detail);
    }

    /** The same assumptions with another capillarity. */
    public ColumnAssumptions withCapillarity(Capillarity other) {
        return new ColumnAssumptions(venting, other, surfacePressureMnPerM, grownAgeSeconds, detail);
    }

    /**
     * The same assumptions with another surface pressure.
     *
     * @param value 0 to 60 mN/m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public ColumnAssumptions withSurfacePressureMnPerM(double value) {
        return new ColumnAssumptions(venting, capillarity, value, grownAgeSeconds, detail);
    }

    /**
     * The same assumptions with another age of grown bubbles.
     *
     * @param value 1 to 10000 s
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public ColumnAssumptions withGrownAgeSeconds(double value) {
        return new ColumnAssumptions(venting, capillarity, surfacePressureMnPerM, value, detail);
    }

    /** The same assumptions solved more or less closely. */
    public ColumnAssumptions withDetail(ColumnDetail other) {
        return new ColumnAssumptions(venting, capillarity, surfacePressureMnPerM, grownAgeSeconds, other);
    }
}
