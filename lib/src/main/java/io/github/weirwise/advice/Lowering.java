package io.github.weirwise.advice;

import io.github.weirwise.unit.SkimmerUnit;

/**
 * How far the weir goes down against a flood, in whole millimetres: enough for the amount that was seen to fall to what the
 * target allows, and for a level that was read too high to come back to where a unit is started.
 *
 * <p>A millimetre is taken as a factor of {@value #PER_MM}, in the middle of what gentle units show (x1.05 to 1.35, stated
 * judgement); steeper units calm down sooner, and a look after twenty minutes tells whether more is needed. Streaming foam that nobody measured counts as a cup an hour. While the cup's
 * drain takes what comes, the floor stays dry and the first lowering stays small.
 */
final class Lowering {
    /** The amount changes by about this factor a millimetre. */
    static final double PER_MM = 1.2;

    private static final int LEAST_MM = 10;
    private static final int MOST_MM = 30;
    private static final int MOST_WHILE_DRAINED_MM = 12;

    private Lowering() {}

    /** Millimetres down that the flood asks for, 10 to 30; the weir's own travel is not looked at. */
    static int wantedMm(SkimmerUnit unit, FloodSeen flood, double drainMlPerDay) {
        double runs = Math.max(flood.mlPerDay().orElse(0), flood.measured() ? 0 : 24 * unit.cupMl());
        double allowed = unit.target().skimmateBandMlPerDay().high();
        double forAmount = Math.log(Math.max(1, runs / allowed)) / Math.log(PER_MM);
        double forLevel = flood.levelMm().orElse(unit.target().submergenceMm())
                - unit.target().submergenceMm();
        int most = runs <= drainMlPerDay ? MOST_WHILE_DRAINED_MM : MOST_MM;
        return (int) Math.max(LEAST_MM, Math.min(most, Math.ceil(Math.max(forAmount, forLevel))));
    }
}
