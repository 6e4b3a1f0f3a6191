package io.github.weirwise.setup;

import io.github.weirwise.report.Range;

/**
 * Where "fits" ends. Common practice unless a line says otherwise; margins are engineering judgement.
 */
public final class FitLimits {
    /** Share of the media covered at first filling. */
    public static final double FILLING_COVER = 0.5;
    /** Greatest share of the media covered in running. */
    public static final double RUNNING_COVER = 1.0 / 3;
    /** Tank volumes through the filter per hour. */
    public static final Range TURNOVERS_PER_HOUR = new Range(3, 10);
    /** Flow over the unit's rated flow that suits it. */
    public static final Range SHARE_OF_RATED_FLOW = new Range(0.6, 1.25);
    /** Flow over the unit's rated flow that can still be lived with. */
    public static final Range LIVABLE_SHARE_OF_RATED_FLOW = new Range(0.4, 1.5);
    /** Full-bore capacity of the drain over the flow; engineering judgement for slime and a half-blocked strainer. */
    public static final double FULL_BORE_MARGIN = 2;
    /** Free room over drain-back; engineering judgement. */
    public static final double DRAIN_BACK_MARGIN = 1.25;
    /** Distance that water at the overflow keeps from the tank's rim, mm. */
    public static final double TANK_FREEBOARD_MM = 20;
    /** Travel of the weir left on either side of the starting crest, mm; engineering judgement. */
    public static final double WEIR_TRAVEL_MM = 15;
    /** Distance of the running level from where the pump draws air, mm; a day or two of evaporation. */
    public static final double PUMP_INTAKE_MM = 20;
    /** Container over the skimmate expected between emptyings; the upper end of the band that counts as on target. */
    public static final double CONTAINER_MARGIN = 2.4;
    /** Fall of a drain hose per length, plumbing practice for waste pipes. */
    public static final double HOSE_FALL_SHARE = 0.02;
    /** Room for a hand over the cup, mm. */
    public static final double HAND_MM = 30;
    /** Share of the stand's rating that may be used; engineering judgement. */
    public static final double STAND_SHARE = 0.9;
    /** Fall of salinity that reef animals bear in a day; common practice, from memory. */
    public static final double SALINITY_FALL = 1.5;
    /** Bends in drain and return line together that still count as few. */
    public static final int BENDS = 8;
    /** Difference of height between filter and extra sump that still counts as level, mm. */
    public static final double LEVEL_MM = 3;
    /**
     * Share of the media's volume that trickling water holds and lets go when the flow stops; from memory for loosely
     * packed plastic media, 0.01 to 0.06.
     */
    public static final double TRICKLE_SHARE = 0.03;

    private FitLimits() {}
}
