package io.github.weirwise.reading;

/**
 * Parts and places that a person can look at, clean or put right.
 *
 * @since 0.1
 */
public enum Part {
    /** Air line from its open end to the injector: salt crust, kink, end under water. */
    AIR_LINE,
    /** Injector pump: noise, impeller, strainer. */
    INJECTOR_PUMP,
    /** Injector nozzle: scale. */
    INJECTOR_NOZZLE,
    /** Neck and cup: film of fat and dirt. */
    NECK_AND_CUP,
    /** Cup vent and drain hose: blocked, kinked, end under water. */
    CUP_VENT,
    /** Column, funnel and cup seating and seals: tilted, gap. */
    SEATING,
    /** The weir plate and its mark: slipped, leaking. */
    WEIR_PLATE,
    /** Filter pad after the weir: clogged, water stands on it. */
    FILTER_PAD,
    /** Return pump and its strainer: weak flow. */
    RETURN_PUMP,
    /** Water surface in the tank: oil film, food fat. */
    WATER_SURFACE,
    /** Fine bubbles in the water after the unit. */
    RETURN_WATER,
    /** Bottles and notes at the tank: additives, medicines, sealant used. */
    ADDITIVES,
    /** Salt in the water. */
    SALT_MIX,
    /** Level in the sump and media under water. */
    SUMP_LEVEL
}
