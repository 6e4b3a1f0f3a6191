package io.github.weirwise.unit;

import io.github.weirwise.report.Require;

/**
 * What nobody sets but everything depends on: the load of the water and the state of the parts.
 *
 * @param skimmableMgPerLitre surface-active organics in the water, 0 to 500 mg/L; 2 mg/L is the reference load
 * @param airLineOpening share of the clean air draw that the air line still lets through, 0 to 1
 * @param injectorHealth share of its clean air draw that the injector with its pump still gives, 0 to 1.5
 * @param neckFouling film of fat and dirt in the neck, 0 (washed) to 1 (thick)
 * @param filmBreaker film-breaking oil or food in the water, 0 (none) to 1 (foam nearly gone)
 * @param foamBooster foaming agent such as a water conditioner, 0 (none) to 3 (severe)
 * @param backPressurePa pressure in the cup over the room, from a blocked vent or a hose under water, 0 to 2000 Pa; 10 Pa
 *     is about 1 mm of water
 * @param levelBeyondWeirMm water level on the biofilter side of the weir, over the chamber floor; far below the crest for
 *     a free weir, -1000 to 2000 mm
 * @param weirSlipMm how much higher the crest really is than its mark says (negative when it slid down), -100 to 100 mm
 * @since 0.1
 */
public record Condition(
        double skimmableMgPerLitre,
        double airLineOpening,
        double injectorHealth,
        double neckFouling,
        double filmBreaker,
        double foamBooster,
        double backPressurePa,
        double levelBeyondWeirMm,
        double weirSlipMm) {
    /** Load at which a unit's mean foam life is stated. */
    public static final double REFERENCE_SKIMMABLE_MG_PER_LITRE = 2;

    /** Reference load, everything clean, free weir. */
    public static final Condition REFERENCE = new Condition(REFERENCE_SKIMMABLE_MG_PER_LITRE, 1, 1, 0, 0, 0, 0, 0, 0);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public Condition {
        String fix = "start from Condition.REFERENCE and change one thing";
        Require.inRange("skimmableMgPerLitre", skimmableMgPerLitre, 0, 500, "mg/L", fix);
        Require.inRange("airLineOpening", airLineOpening, 0, 1, "", fix);
        Require.inRange("injectorHealth", injectorHealth, 0, 1.5, "", fix);
        Require.inRange("neckFouling", neckFouling, 0, 1, "", fix);
        Require.inRange("filmBreaker", filmBreaker, 0, 1, "", fix);
        Require.inRange("foamBooster", foamBooster, 0, 3, "", fix);
        Require.inRange("backPressurePa", backPressurePa, 0, 2000, "Pa", fix);
        Require.inRange("levelBeyondWeirMm", levelBeyondWeirMm, -1000, 2000, "mm", fix);
        Require.inRange("weirSlipMm", weirSlipMm, -100, 100, "mm", fix);
    }

    /**
     * The same condition with another load.
     *
     * @param value 0 to 500 mg/L
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withSkimmableMgPerLitre(double value) {
        return new Condition(
                value,
                airLineOpening,
                injectorHealth,
                neckFouling,
                filmBreaker,
                foamBooster,
                backPressurePa,
                levelBeyondWeirMm,
                weirSlipMm);
    }

    /**
     * The same condition with another air-line opening.
     *
     * @param value share of the clean air draw, 0 to 1
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withAirLineOpening(double value) {
        return new Condition(
                skimmableMgPerLitre,
                value,
                injectorHealth,
                neckFouling,
                filmBreaker,
                foamBooster,
                backPressurePa,
                levelBeyondWeirMm,
                weirSlipMm);
    }

    /**
     * The same condition with another injector health.
     *
     * @param value share of the clean air draw, 0 to 1.5
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withInjectorHealth(double value) {
        return new Condition(
                skimmableMgPerLitre,
                airLineOpening,
                value,
                neckFouling,
                filmBreaker,
                foamBooster,
                backPressurePa,
                levelBeyondWeirMm,
                weirSlipMm);
    }

    /**
     * The same condition with another neck film.
     *
     * @param value 0 (washed) to 1 (thick)
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withNeckFouling(double value) {
        return new Condition(
                skimmableMgPerLitre,
                airLineOpening,
                injectorHealth,
                value,
                filmBreaker,
                foamBooster,
                backPressurePa,
                levelBeyondWeirMm,
                weirSlipMm);
    }

    /**
     * The same condition with another film breaker.
     *
     * @param value 0 (none) to 1 (foam nearly gone)
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withFilmBreaker(double value) {
        return new Condition(
                skimmableMgPerLitre,
                airLineOpening,
                injectorHealth,
                neckFouling,
                value,
                foamBooster,
                backPressurePa,
                levelBeyondWeirMm,
                weirSlipMm);
    }

    /**
     * The same condition with another foaming agent.
     *
     * @param value 0 (none) to 3 (severe)
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withFoamBooster(double value) {
        return new Condition(
                skimmableMgPerLitre,
                airLineOpening,
                injectorHealth,
                neckFouling,
                filmBreaker,
                value,
                backPressurePa,
                levelBeyondWeirMm,
                weirSlipMm);
    }

    /**
     * The same condition with another pressure in the cup.
     *
     * @param value 0 to 2000 Pa
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withBackPressurePa(double value) {
        return new Condition(
                skimmableMgPerLitre,
                airLineOpening,
                injectorHealth,
                neckFouling,
                filmBreaker,
                foamBooster,
                value,
                levelBeyondWeirMm,
                weirSlipMm);
    }

    /**
     * The same condition with another level beyond the weir.
     *
     * @param value -1000 to 2000 mm over the chamber floor
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withLevelBeyondWeirMm(double value) {
        return new Condition(
                skimmableMgPerLitre,
                airLineOpening,
                injectorHealth,
                neckFouling,
                filmBreaker,
                foamBooster,
                backPressurePa,
                value,
                weirSlipMm);
    }

    /**
     * The same condition with another slip of the weir.
     *
     * @param value -100 to 100 mm
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withWeirSlipMm(double value) {
        return new Condition(
                skimmableMgPerLitre,
                airLineOpening,
                injectorHealth,
                neckFouling,
                filmBreaker,
                foamBooster,
                backPressurePa,
                levelBeyondWeirMm,
                value);
    }
}
