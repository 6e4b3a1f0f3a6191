package io.github.weirwise.internal.physics.foam;

/**
 * Whether and by which osmotic pressure squeezed bubbles suck liquid towards the drier foam; law and constants are those of {@link
 * OsmoticPressure} (Hoehler et al. 2008; Maestro et al. 2013).
 *
 * @since 0.1
 */
public enum Capillarity {
    /** No suction: the liquid fraction is that of the local balance of drainage and carriage. */
    NONE(0, OsmoticPressure.DISORDERED.wettestFraction()),
    /** Bubbles of one size in order; see {@link OsmoticPressure#ORDERED}. */
    ORDERED(OsmoticPressure.ORDERED.strength(), OsmoticPressure.ORDERED.wettestFraction()),
    /** Bubbles without order; see {@link OsmoticPressure#DISORDERED}. */
    DISORDERED(OsmoticPressure.DISORDERED.strength(), OsmoticPressure.DISORDERED.wettestFraction());

    private final double strength;
    private final double packing;

    Capillarity(double strength, double packing) {
        this.strength = strength;
        this.packing = packing;
    }

    /** Liquid fraction from which bubbles no longer touch: the foam's wetness where it meets water. */
    public double packingFraction() {
        return packing;
    }

    boolean acts() {
        return strength > 0;
    }

    /** Pi r/gamma; 0 in froth of round bubbles. */
    double reducedPressure(double fraction) {
        double rest = Math.max(0, packing - fraction);
        return strength * rest * rest / Math.sqrt(fraction);
    }

    /** -d(Pi r/gamma)/d eps divided by (packing - eps), finite up to packing. */
    double reducedSlopePerRest(double fraction) {
        double root = Math.sqrt(fraction);
        return strength * (2 + 0.5 * (packing - fraction) / fraction) / root;
    }
}
