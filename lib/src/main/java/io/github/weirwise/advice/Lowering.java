package io.github.weirwise.advice;

import io.github.weirwise.unit.SkimmerUnit;

/**
 * How far the weir goes down against a flood, in whole millimetres: enough for the amount that was seen to fall to what the
 * target allows, and for a level that was read too high to come back to where a unit is started.
 *
 * <p>A millimetre is taken as a factor of {@value #PER_MM}, in the middle of what gentle units show (x1.05 to 1.35, stated
 * judgement); steeper units calm down sooner. Foam that nobody measured, and what a drain takes, gets the least: a look after twenty
 * minutes tells whether more is needed. Foam that looked calm beside an ordinary amount gets less still.
 */
final class Lowering {
    /** The amount changes by about this factor a millimetre. */
    static final double PER_MM = 1.2;

    private static final int LEAST_MM = 10;
    private static final int MOST_MM = 30;
    private static final int MOST_WHILE_DRAINED_MM = 12;
    private static final int CALM_MM = 4;

    private Lowering() {}

    /** Millimetres down that the flood asks for, 4 to 30; the weir's own travel is not looked at. */
    static int wantedMm(SkimmerUnit unit, FloodSeen flood, double drainMlPerDay) {
        double runs = flood.mlPerDay().orElse(0);
        double allowed = unit.target().skimmateBandMlPerDay().high();
        double forAmount = Math.log(Math.max(1, runs / allowed)) / Math.log(PER_MM);
        double forLevel = flood.levelMm().orElse(unit.target().submergenceMm())
                - unit.target().submergenceMm();
        boolean drained = flood.measured() && runs <= drainMlPerDay;
        int most = drained ? MOST_WHILE_DRAINED_MM : MOST_MM;
        int least = flood.calm() && flood.measured() && runs <= allowed ? CALM_MM : LEAST_MM;
        return (int) Math.max(least, Math.min(most, Math.ceil(Math.max(forAmount, forLevel))));
    }
}
