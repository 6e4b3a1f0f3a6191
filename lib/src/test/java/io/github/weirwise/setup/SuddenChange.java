package io.github.weirwise.setup;

/** Loss coefficients K of sudden changes of bore, with the speed in the narrow pipe; by their diameters' ratio, narrow over wide. */
public final class SuddenChange {
    private SuddenChange() {}

    /** Widening: (1 - (d/D)^2)^2 (Borda and Carnot). */
    public static double widening(double diameterRatio) {
        double rest = 1 - diameterRatio * diameterRatio;
        return rest * rest;
    }

    /** Narrowing: 0.5 (1 - (d/D)^2), Crane TP-410. */
    public static double narrowing(double diameterRatio) {
        return 0.5 * (1 - diameterRatio * diameterRatio);
    }
}
