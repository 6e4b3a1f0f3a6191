package io.github.weirwise.unit;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

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
    private static final String TRY = "unit.try.startFromConditionReference";

    private static final Limit SKIMMABLE_MG_PER_LITRE =
            Limit.of("skimmableMgPerLitre", 0, 500, Unit.MILLIGRAM_PER_LITRE, TRY);
    private static final Limit AIR_LINE_OPENING = Limit.of("airLineOpening", 0, 1, Unit.PLAIN, TRY);
    private static final Limit INJECTOR_HEALTH = Limit.of("injectorHealth", 0, 1.5, Unit.PLAIN, TRY);
    private static final Limit NECK_FOULING = Limit.of("neckFouling", 0, 1, Unit.PLAIN, TRY);
    private static final Limit FILM_BREAKER = Limit.of("filmBreaker", 0, 1, Unit.PLAIN, TRY);
    private static final Limit FOAM_BOOSTER = Limit.of("foamBooster", 0, 3, Unit.PLAIN, TRY);
    private static final Limit BACK_PRESSURE_PA = Limit.of("backPressurePa", 0, 2000, Unit.PASCAL, TRY);
    private static final Limit LEVEL_BEYOND_WEIR_MM = Limit.of("levelBeyondWeirMm", -1000, 2000, Unit.MILLIMETRE, TRY);
    private static final Limit WEIR_SLIP_MM = Limit.of("weirSlipMm", -100, 100, Unit.MILLIMETRE, TRY);

    /** Load at which a unit's mean foam life is stated. */
    public static final double REFERENCE_SKIMMABLE_MG_PER_LITRE = 2;

    /** Reference load, everything clean, free weir. */
    public static final Condition REFERENCE = new Condition(REFERENCE_SKIMMABLE_MG_PER_LITRE, 1, 1, 0, 0, 0, 0, 0, 0);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public Condition {
        SKIMMABLE_MG_PER_LITRE.check(skimmableMgPerLitre);
        AIR_LINE_OPENING.check(airLineOpening);
        INJECTOR_HEALTH.check(injectorHealth);
        NECK_FOULING.check(neckFouling);
        FILM_BREAKER.check(filmBreaker);
        FOAM_BOOSTER.check(foamBooster);
        BACK_PRESSURE_PA.check(backPressurePa);
        LEVEL_BEYOND_WEIR_MM.check(levelBeyondWeirMm);
        WEIR_SLIP_MM.check(weirSlipMm);
    }

    /**
     * The same condition with another load.
     *
     * @param value 0 to 500 mg/L
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withSkimmableMgPerLitre(double value) {
        return changed(0, value);
    }

    /**
     * The same condition with another air-line opening.
     *
     * @param value share of the clean air draw, 0 to 1
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withAirLineOpening(double value) {
        return changed(1, value);
    }

    /**
     * The same condition with another injector health.
     *
     * @param value share of the clean air draw, 0 to 1.5
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withInjectorHealth(double value) {
        return changed(2, value);
    }

    /**
     * The same condition with another neck film.
     *
     * @param value 0 (washed) to 1 (thick)
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withNeckFouling(double value) {
        return changed(3, value);
    }

    /**
     * The same condition with another film breaker.
     *
     * @param value 0 (none) to 1 (foam nearly gone)
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withFilmBreaker(double value) {
        return changed(4, value);
    }

    /**
     * The same condition with another foaming agent.
     *
     * @param value 0 (none) to 3 (severe)
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withFoamBooster(double value) {
        return changed(5, value);
    }

    /**
     * The same condition with another pressure in the cup.
     *
     * @param value 0 to 2000 Pa
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withBackPressurePa(double value) {
        return changed(6, value);
    }

    /**
     * The same condition with another level beyond the weir.
     *
     * @param value -1000 to 2000 mm over the chamber floor
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withLevelBeyondWeirMm(double value) {
        return changed(7, value);
    }

    /**
     * The same condition with another slip of the weir.
     *
     * @param value -100 to 100 mm
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Condition withWeirSlipMm(double value) {
        return changed(8, value);
    }

    /** The same condition with one component changed, by its place in the record. */
    private Condition changed(int place, double value) {
        double[] all = {
            skimmableMgPerLitre,
            airLineOpening,
            injectorHealth,
            neckFouling,
            filmBreaker,
            foamBooster,
            backPressurePa,
            levelBeyondWeirMm,
            weirSlipMm
        };
        all[place] = value;
        return new Condition(all[0], all[1], all[2], all[3], all[4], all[5], all[6], all[7], all[8]);
    }
}
