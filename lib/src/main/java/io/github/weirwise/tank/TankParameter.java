package io.github.weirwise.tank;

import static io.github.weirwise.tank.TankProcess.*;

import io.github.weirwise.report.Bounds;
import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Unit;

/**
 * Every number that drives a process of the tank: process, unit, default, limits and where the default comes from.
 *
 * <p>"Assumed" means that nothing published was found; such a number is a starting point and should be set from a tank's
 * own record where it matters.
 */
public enum TankParameter {
    /** Evaporation from the surface against the ASHRAE form. */
    EVAPORATION_FACTOR(
            EVAPORATION, "", 0.74, 0, 3, "Smith, L\u00f6f & Jones 1993: undisturbed water against the ASHRAE form"),
    /** Evaporation from a trickle tower's draught, on top of the surface. */
    TOWER_EVAPORATION_KG_PER_DAY(EVAPORATION, "kg/day", 0, 0, 1000, "assumed: none; set from litres topped off"),
    /** How fast the float closes a gap in the sump. */
    TOP_OFF_RETURN_PER_HOUR(TOP_OFF, "1/h", 0.25, 0.01, 0.5, "assumed: how fast the float mends a gap in the sump"),
    /** Most that the top-off gives. */
    TOP_OFF_LIMIT_LITRES_PER_HOUR(TOP_OFF, "L/h", 10, 0, 1000, "assumed: dosing pump of a small tank"),

    /** Lag of the foam behind the skimmer at rest. */
    SETTLING_HOURS(FOAM_LAG, "h", 3, 0.25, 48, "assumed: film on the neck and foam follow a change within hours"),
    /** Lag of a flood. */
    FLOOD_HOURS(FOAM_LAG, "h", 0.25, 0.05, 6, "assumed: a flood shows in a quarter of an hour"),
    /** Time constant with which the film on the neck returns. */
    FILM_RETURN_HOURS(FOAM_LAG, "h", 8, 0.5, 96, "common practice: foam comes back 4 to 24 h after washing"),
    /** Wet foam over the lip at a restart. */
    RESTART_SURGE_ML(FOAM_LAG, "mL", 15, 0, 5000, "assumed: wet foam pushed over the lip when the pump starts"),

    /** Time constant from meal to excretion. */
    DIGESTION_HOURS(DIGESTION, "h", 8, 0.5, 72, "assumed: excretion follows a meal over hours"),
    /** Nitrogen in all organic matter of the tank. */
    NITROGEN_IN_ORGANICS(DIGESTION, "g/g", 0.08, 0.01, 0.2, "assumed: nitrogen share of dry waste"),
    /** Share of fresh organic waste that is solid. */
    SOLID_SHARE_OF_WASTE(DIGESTION, "", 0.5, 0, 1, "assumed: the rest is dissolved"),
    /** Share of dissolved waste that foam can take. */
    SKIMMABLE_SHARE_OF_DISSOLVED(DIGESTION, "", 0.9, 0, 1, "assumed: surface-active part of fresh dissolved waste"),

    /** Decay of solids, in the water and in the pad. */
    SOLIDS_DECAY_PER_DAY(DECAY, "1/day", 0.3, 0, 5, "assumed"),
    /** Share of decaying solids that becomes ammonia and carbon dioxide at once. */
    SOLIDS_MINERALISED_SHARE(DECAY, "", 0.4, 0, 1, "assumed: the rest dissolves, split like fresh waste"),
    /** Decay of skimmable organics. */
    SKIMMABLE_DECAY_PER_DAY(DECAY, "1/day", 0.4, 0, 5, "assumed: bacteria on media, rock and glass"),
    /** Share of decaying skimmable organics that stays as refractory ones. */
    SKIMMABLE_TO_REFRACTORY_SHARE(DECAY, "", 0.1, 0, 1, "assumed: yellow remainder of decay"),
    /** Decay of refractory organics. */
    REFRACTORY_DECAY_PER_DAY(DECAY, "1/day", 0.02, 0, 1, "assumed"),
    /** Share of the solids in passing water that a clean pad keeps. */
    PAD_CATCH_SHARE(PAD_FILTRATION, "", 0.02, 0, 0.2, "assumed: share of the solids in a pass that the pad keeps"),

    /** Greatest areal rate at 24 C. */
    NITRIFICATION_SATURATED(NITRIFICATION, "g N/(m2 day)", 0.28, 0.001, 5, "Nijhof & Bovendeur 1990, sea water, 24 C"),
    /** Concentration at which half order meets saturation. */
    NITRIFICATION_CROSSOVER(NITRIFICATION, "mg N/L", 2, 0.05, 20, "assumed: half order meets saturation"),
    /** First-order rate of ammonia. */
    AMMONIA_FIRST_ORDER(NITRIFICATION, "m/day", 0.22, 0.01, 5, "Kinyage et al., fresh water"),
    /** First-order rate of nitrite. */
    NITRITE_FIRST_ORDER(NITRIFICATION, "m/day", 0.23, 0.01, 5, "Kinyage et al., fresh water"),
    /** Base of the temperature factor. */
    NITRIFICATION_THETA(NITRIFICATION, "per C", 1.05, 1, 1.15, "from memory: 1.03 to 1.06 for biofilms"),
    /** Oxygen at which nitrification runs at half. */
    NITRIFICATION_HALF_OXYGEN(NITRIFICATION, "mg/L", 0.8, 0, 5, "assumed"),
    /** Alkalinity at which the first step runs at half. */
    NITRIFICATION_HALF_ALKALINITY(NITRIFICATION, "meq/L", 0.2, 0, 2, "assumed"),
    /** Work of media under water against media in the trickle. */
    DROWNED_MEDIA_WORTH(NITRIFICATION, "", 0.5, 0, 1, "assumed: media under water against media in the trickle"),
    /** Work of media while no water flows. */
    STOPPED_MEDIA_WORTH(NITRIFICATION, "", 0.1, 0, 1, "assumed: media without flow"),
    /** Growth of the ammonia oxidisers. */
    AMMONIA_COLONY_PER_DAY(COLONY_GROWTH, "1/day", 0.35, 0, 3, "assumed"),
    /** Growth of the nitrite oxidisers. */
    NITRITE_COLONY_PER_DAY(COLONY_GROWTH, "1/day", 0.25, 0, 3, "assumed"),
    /** Concentration at which a colony grows at half. */
    COLONY_HALF_CONCENTRATION(COLONY_GROWTH, "mg N/L", 0.3, 0.001, 10, "assumed"),
    /** Share of the nitrate that leaves as gas. */
    DENITRIFICATION_PER_DAY(DENITRIFICATION, "1/day", 0.01, 0, 1, "assumed: sand and rock"),

    /** Alkalinity that is kept up, and that of new sea water. */
    ALKALINITY_MEQ_PER_LITRE(
            ALKALINITY_DOSING, "meq/L", 2.5, 0.5, 6, "common practice: sea water has about 2.3 to 2.5"),
    /** How fast dosing closes a gap. */
    ALKALINITY_RETURN_DAYS(ALKALINITY_DOSING, "days", 2, 0.1, 60, "assumed"),
    /** Mean pH at the kept alkalinity, total scale; read by {@link TankConditions} only. */
    PH_TOTAL(NITRIFICATION, "", 8.0, 7, 8.6, "common practice, total scale, at the alkalinity above"),

    /** Transfer speed of oxygen through the surface. */
    SURFACE_OXYGEN_M_PER_HOUR(OXYGEN, "m/h", 0.05, 0, 1, "assumed: transfer speed of a rippled surface"),
    /** Share of the gap to saturation that a pass over the media closes. */
    TRICKLE_OXYGEN_SHARE(OXYGEN, "", 0.6, 0, 1, "assumed: share of the gap that one pass over the media closes"),
    /** Water brought to saturation by the skimmer's bubbles, by their volume. */
    SKIMMER_OXYGEN_SHARE(OXYGEN, "", 0.4, 0, 5, "assumed: litres brought to air balance by a litre of bubbles"),
    /** Oxygen that the animals use for each gram of feed. */
    OXYGEN_PER_FEED(OXYGEN, "g/g", 0.4, 0, 2, "from memory: animals use 0.3 to 0.5 g O2 a gram of feed"),
    /** Oxygen that a gram of decaying organics uses. */
    OXYGEN_PER_ORGANICS(OXYGEN, "g/g", 1.4, 0, 3, "from memory: oxygen demand of dry organics"),
    /** Fastest exchange that is followed without lag. */
    OXYGEN_FASTEST_PER_HOUR(OXYGEN, "1/h", 0.5, 0.05, 5, "numerical: faster exchange is followed with this lag"),

    /** Growth of the film in the neck at the wanted amount of skimmate. */
    NECK_PER_DAY(NECK_FOULING, "1/day", 0.08, 0, 1, "common practice: the neck wants washing about weekly"),
    /** Salt creep in the air line. */
    AIR_LINE_PER_DAY(AIR_LINE_CREEP, "1/day", 0.002, 0, 1, "assumed: a twentieth in about a month"),
    /** Scale in the injector's nozzle. */
    NOZZLE_PER_DAY(NOZZLE_SCALING, "1/day", 0.0007, 0, 1, "assumed"),
    /** Wear of the injector pump. */
    WEAR_PER_DAY(PUMP_WEAR, "1/day", 0.0003, 0, 1, "assumed: a tenth in the year after which it is replaced"),
    /** Clogging of the pad by what it catches. */
    PAD_PER_GRAM(PAD_CLOGGING, "m2/g", 0.01, 0, 1, "assumed: share of the open pad closed by a gram on a square metre"),
    /** Water standing on a clean pad at rated flow. */
    PAD_HEAD_MM(PAD_CLOGGING, "mm", 3, 0, 100, "assumed: water standing on a clean pad at rated flow"),
    /** Clogging of the return pump's strainer. */
    STRAINER_PER_DAY(STRAINER_CLOGGING, "1/day", 0.004, 0, 1, "assumed"),
    /** Share of the flow that a closed strainer takes. */
    STRAINER_WORST_LOSS(STRAINER_CLOGGING, "", 0.8, 0, 0.95, "assumed: share of flow lost at a closed strainer"),
    /** Time constant of the residues of new surfaces. */
    BREAK_IN_DAYS(BREAK_IN, "days", 4, 0.1, 60, "common practice: 3 to 14 days of break-in"),
    /** Foaming agent that new surfaces equal on the first day. */
    BREAK_IN_BOOST(BREAK_IN, "", 0.15, 0, 3, "assumed: foaming agent equal to new surfaces"),
    /** Time constant of oil and food films. */
    OIL_HOURS(FADING, "h", 10, 0.5, 240, "common practice: foam is back 12 to 24 h after oil or hands"),
    /** Time constant of foaming agents. */
    AGENT_DAYS(FADING, "days", 1.5, 0.1, 30, "common practice: 2 to 7 days after a conditioner or sealant"),
    /** Film breaker of a meal. */
    MEAL_OIL(FADING, "100 L/g", 0.02, 0, 1, "assumed: film breaker from a gram of food in 100 L"),

    /** Daily swing of the water, half of it. */
    TEMPERATURE_SWING_CELSIUS(DAY_SWING, "C", 0.3, 0, 3, "assumed: half of the swing from morning to evening"),
    /** Daily swing of pH, half of it; read by {@link TankConditions} only. */
    PH_SWING(DAY_SWING, "", 0.08, 0, 0.4, "assumed: half of the swing from morning to evening"),
    /** Size of the load's noise. */
    NOISE_SIGMA(LOAD_NOISE, "", 0, 0, 1, "off: standard deviation of the logarithm of the load"),
    /** How long a patch of water lasts. */
    NOISE_HOURS(LOAD_NOISE, "h", 8, 1, 168, "assumed: how long a patch of water lasts");

    private final TankProcess process;
    private final String unit;
    private final double byDefault;
    private final double low;
    private final double high;
    private final String source;

    TankParameter(TankProcess process, String unit, double byDefault, double low, double high, String source) {
        this.process = process;
        this.unit = unit;
        this.byDefault = byDefault;
        this.low = low;
        this.high = high;
        this.source = source;
    }

    /** The process that it drives. */
    public TankProcess process() {
        return process;
    }

    /** Unit symbol; empty for a ratio. */
    public String unit() {
        return unit;
    }

    /** Default value. */
    public double byDefault() {
        return byDefault;
    }

    /** Its limits, with the default as what to try; the unit is {@link #unit()}. */
    public Limit limit() {
        return new Limit(
                name(), low, high, Unit.PLAIN, Phrase.of("tank.try.theDefaultIs", Bounds.of(byDefault, Unit.PLAIN)));
    }

    /** Source of the default, or "assumed". */
    public String source() {
        return source;
    }
}
