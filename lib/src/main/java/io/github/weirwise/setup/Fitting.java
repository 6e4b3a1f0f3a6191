package io.github.weirwise.setup;

/**
 * Loss coefficients K (without unit) of pipe fittings: head loss = K V^2/(2 g) with the speed in the pipe.
 *
 * <p>Values for threaded or glued fittings of small bore as handbooks give them (Streeter &amp; Wylie; Crane TP-410 for
 * entrance and exit), from memory. Makes and sizes differ by a third and more.
 */
public enum Fitting {
    /** Pipe end flush with a wall, sharp edge. */
    ENTRANCE_SHARP(0.5),
    /** Pipe end that stands inside the tank. */
    ENTRANCE_PROJECTING(0.78),
    /** Well rounded entrance. */
    ENTRANCE_ROUNDED(0.04),
    /** Free or drowned exit: the whole speed head is lost. */
    EXIT(1.0),
    /** Standard 90 degree elbow. */
    ELBOW_90(0.9),
    /** Long-sweep 90 degree elbow. */
    ELBOW_90_LONG(0.6),
    /** 45 degree elbow. */
    ELBOW_45(0.42),
    /** Tee, flow straight on. */
    TEE_RUN(0.6),
    /** Tee, flow into the branch. */
    TEE_BRANCH(1.8),
    /** Close return bend. */
    RETURN_BEND(2.2),
    /** Gate valve, open. */
    GATE_VALVE_OPEN(0.19),
    /** Ball valve, open. */
    BALL_VALVE_OPEN(0.05),
    /** Swing check valve, open. */
    CHECK_VALVE(2.5),
    /** Globe valve, open. */
    GLOBE_VALVE_OPEN(10);

    private final double lossCoefficient;

    Fitting(double lossCoefficient) {
        this.lossCoefficient = lossCoefficient;
    }

    /** K, without unit. */
    public double lossCoefficient() {
        return lossCoefficient;
    }
}
