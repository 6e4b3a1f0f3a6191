package io.github.weirwise.lab;

/**
 * Every number about people, events and noise on one page; the same for all truths. All are judgement (no measurement of
 * keepers is known), none is fitted.
 */
final class Habits {
    // People and their eyes.
    /** Two readers; the second comes every so many visits on average. */
    static final double SECOND_READER = 0.3;
    /** Each reader's own bias of the ruler, mm. */
    static final double RULER_BIAS_MM = 1.5;
    /** Scatter of a ruler in bubbly water, mm; common practice says 2 to 3 mm with the bias. */
    static final double RULER_MM = 1.6;
    /** Each reader rounds the level to one of these, mm. */
    static final int[] RULER_STEPS_MM = {1, 2, 5};
    /** The cup is read to this, mL. */
    static final double CUP_STEP_ML = 5;
    /** Scatter of the cup as a share, and each reader's own factor. */
    static final double CUP_SHARE = 0.07;
    /** Scatter of a foam look and of each reader's words, in logarithms of the amount. */
    static final double LOOK_LOG = 0.4;
    /** Scatter of darkness, a logarithm. */
    static final double DARK_LOG = 0.3;
    /** Speed of the foam in the neck of a usual unit on target, mm/min. */
    static final double CREEP_MM_PER_MIN = 30;
    /** Share of readings with a gross mistake in level or cup. */
    static final double MISREAD = 0.03;
    /** Chance that level, cup, darkness, look are not read at a visit. */
    static final double NO_LEVEL = 0.15;

    static final double NO_CUP = 0.05;
    static final double NO_DARKNESS = 0.3;
    static final double NO_LOOK = 0.1;
    /** Chance that nobody comes (never to the first visit). */
    static final double MISSED_VISIT = 0.06;
    /** Chance that a move or service is not done though advised; making safe and looks are always done. */
    static final double NOT_FOLLOWED = 0.1;
    /** A hand sets the weir to within, mm. */
    static final double HAND_MM = 0.6;
    /** Air that was stopped is started again by somebody after so many hours, whatever is advised. */
    static final int AIR_LEFT_OFF_HOURS = 48;
    /** Chance that a happening is written down. */
    static final double NOTED = 0.6;
    /** Chance that there are readings from before the first question, and at most how many days. */
    static final double HISTORY = 0.4;

    static final int HISTORY_DAYS = 5;

    // The water.
    /** Foaminess wanders about its mean: deviation in log amount and time to forget, days. */
    static final double[] DRIFT_LOG = {0.1, 0.4};

    static final double[] DRIFT_DAYS = {2, 8};
    /** Hours in which the foam answers to a change. */
    static final double[] LAG_HOURS = {2, 7};
    /** Two feedings a day, hours after the daily visit; how far foam falls, and for how many hours. */
    static final int[] FED_AT_HOURS = {9, 23};

    static final double[] FED_FALL_LOG = {0.1, 0.7};
    static final double FED_HOURS = 1.5;
    /** A washed neck carries no foam at first: fall in log amount, hours. */
    static final double[] WASHED_FALL_LOG = {0.2, 0.8};

    static final double WASHED_HOURS = 8;

    // Happenings, a day.
    static final double FED_HEAVILY_A_DAY = 0.04;
    static final double CONDITIONER_A_DAY = 0.008;
    static final double HANDS_A_DAY = 0.02;
    static final double DEATH_A_DAY = 0.007;
    static final double POWER_CUT_A_DAY = 0.008;

    // Parts.
    /** What a service leaves behind. */
    static final double LEFT_BY_SERVICE = 0.06;
    /** Days from clean to worst: neck, pad, air line, both pumps, nozzle. */
    static final double[] NECK_DAYS = {12, 35};

    static final double[] PAD_DAYS = {18, 60};
    static final double[] AIR_LINE_DAYS = {45, 180};
    static final double[] PUMP_DAYS = {90, 350};
    static final double[] NOZZLE_DAYS = {120, 500};
    /** In short plays parts start this clean, in the long one this fouled. */
    static final double START_FOULED = 0.2;

    static final double START_FOULED_LONG = 0.5;
    /** Hours in which a hidden fault of a short play has grown, from before the first visit on. */
    static final double[] FAULT_GROWS_HOURS = {12, 240};

    static final double[] FAULT_SIZE = {0.45, 1.0};
    /** Chance of a second hidden fault. */
    static final double SECOND_FAULT = 0.12;
    /** In the long play: a sudden fault (vent, seat, slip, salt, bubbles under) so often a day. */
    static final double SUDDEN_A_DAY = 0.006;
    /** In the long play: somebody cleans neck or pad unasked, so often a day. */
    static final double UNASKED_UPKEEP_A_DAY = 0.02;
    /** Where the weir stands when nobody set it wrong, and when somebody did: log amount of the sound unit. */
    static final double SET_LOG = 0.35;

    static final double[] SET_WRONG_LOG = {1.1, 2.6};

    private Habits() {}
}
