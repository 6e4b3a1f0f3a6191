package io.github.weirwise.unit;

import io.github.weirwise.internal.physics.bubbles.TerminalSpeed;
import io.github.weirwise.internal.physics.foam.Drainage;
import io.github.weirwise.internal.physics.seawater.Seawater;

/**
 * Everything the steady law needs besides the unit's shape, in SI units, already free of words and marks; its sources are
 * those of {@link SteadyLaw}.
 *
 * <p>{@link #of} makes them from settings and traits that are checked. Whoever puts them together by hand is not stopped here,
 * in the innermost loop of tank and belief: {@link SteadyLaw#at} says what it refuses.
 *
 * @param crestM true height of the weir crest over the chamber floor
 * @param flowM3PerS water over the weir
 * @param levelBeyondM water level beyond the weir over the chamber floor
 * @param airM3PerS air that really enters all columns together
 * @param terminalSpeedMPerS rise of a single fresh bubble
 * @param meanLifeS mean life of a bubble in the foam
 * @param lifeShape exponent alpha of the law of lives
 * @param drainageSpeedMPerS K of the drainage law at the lip
 * @param backPressureHeadM pressure in the cup as metres of water
 * @param weightOnWater share of the foam's weight that rests on the water
 * @since 0.1
 */
public record SteadyInputs(
        double crestM,
        double flowM3PerS,
        double levelBeyondM,
        double airM3PerS,
        double terminalSpeedMPerS,
        double meanLifeS,
        double lifeShape,
        double drainageSpeedMPerS,
        double backPressureHeadM,
        double weightOnWater) {
    private static final double LOWEST_CREST_M = 0.001;
    private static final double CUBIC_METRES_PER_SECOND = 1 / 3.6e6;

    /**
     * The inputs that belong to a unit with its settings; both are checked where they are made, so this never throws. Water by
     * {@link Seawater}, rise speed by {@link TerminalSpeed#contaminated}, drainage by {@link Drainage#speed}; how load, salt,
     * dirt and additives change the mean life is assumed ({@code docs/reference/model.md}).
     */
    public static SteadyInputs of(SkimmerUnit unit, Settings settings) {
        FoamTraits traits = unit.traits();
        Condition condition = settings.condition();
        double density = Seawater.density(settings.practicalSalinity(), settings.waterCelsius());
        double viscosity = Seawater.viscosity(settings.practicalSalinity(), settings.waterCelsius());
        return new SteadyInputs(
                trueCrestM(settings.weirCrestMm(), condition.weirSlipMm()),
                settings.flowLitresPerHour() * CUBIC_METRES_PER_SECOND,
                condition.levelBeyondWeirMm() / 1000,
                settings.airLitresPerHour()
                        * condition.airLineOpening()
                        * condition.injectorHealth()
                        * CUBIC_METRES_PER_SECOND,
                TerminalSpeed.contaminated(FreshBubble.diameterM(traits, settings), density, viscosity),
                MeanLife.seconds(traits, settings),
                traits.lifeShape(),
                Drainage.speed(density, viscosity, traits.lipBubbleMm() / 2000, traits.filmMobility()),
                condition.backPressurePa() / (density * STANDARD_GRAVITY),
                traits.weightOnWater());
    }

    /** A crest by its mark and its slip; a weir that slid all the way down still stands a little over the floor. */
    static double trueCrestM(double markedMm, double slipMm) {
        return Math.max(LOWEST_CREST_M, (markedMm + slipMm) / 1000);
    }

    /**
     * The same inputs with other air.
     *
     * @param value m3/s, any number, never throws
     */
    public SteadyInputs withAirM3PerS(double value) {
        return copy(crestM, value, meanLifeS);
    }

    /**
     * The same inputs with another crest.
     *
     * @param value m over the chamber floor, any number, never throws
     */
    public SteadyInputs withCrestM(double value) {
        return copy(value, airM3PerS, meanLifeS);
    }

    /**
     * The same inputs with another mean life.
     *
     * @param value s, any number, never throws
     */
    public SteadyInputs withMeanLifeS(double value) {
        return copy(crestM, airM3PerS, value);
    }

    private SteadyInputs copy(double crest, double air, double life) {
        return new SteadyInputs(
                crest,
                flowM3PerS,
                levelBeyondM,
                air,
                terminalSpeedMPerS,
                life,
                lifeShape,
                drainageSpeedMPerS,
                backPressureHeadM,
                weightOnWater);
    }

    private static final double STANDARD_GRAVITY = 9.80665;
}
