package io.github.weirwise.trial;

/** What hidden causes, load and time do to a true unit at one moment; filled anew for every hour. */
final class Strain {
    /** On the air drawn, as a meter in the air line shows it. */
    double air = 1;
    /** Share of the drawn air that reaches the foam. */
    double kept = 1;

    double flow = 1;
    double life = 1;
    double rise = 1;
    double strength = 1;
    double slipMm;
    double backPressureMm;
    /** Water beyond the weir over the chamber floor; unset means the free level of the unit. */
    double beyondMm = Double.NEGATIVE_INFINITY;

    double salinityShift;
}
