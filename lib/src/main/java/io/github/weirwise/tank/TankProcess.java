package io.github.weirwise.tank;

/**
 * What goes on in a tank. Each can be switched off alone, to see what it does or to test the others.
 */
public enum TankProcess {
    /** Water leaves to the room. */
    EVAPORATION,
    /** The float valve replaces what is gone from the sump. */
    TOP_OFF,
    /** Foam carries water and organics into the cup. */
    SKIMMING,
    /** Foam takes hours to follow a change; off, it follows at once (within minutes). */
    FOAM_LAG,
    /** Meals are given. */
    FEEDING,
    /** Food is digested, excreted and retained. */
    DIGESTION,
    /** Solids and dissolved organics decay. */
    DECAY,
    /** Solids are caught in the filter pad. */
    PAD_FILTRATION,
    /** Ammonia to nitrite to nitrate on the media. */
    NITRIFICATION,
    /** The colony on the media grows. */
    COLONY_GROWTH,
    /** Nitrate leaves as gas in sand and rock. */
    DENITRIFICATION,
    /** Alkalinity is kept up by dosing. */
    ALKALINITY_DOSING,
    /** Oxygen is exchanged with air and used up; off, it stays as it is. */
    OXYGEN,
    /** A film of fat and dirt grows in the neck. */
    NECK_FOULING,
    /** Salt creeps into the air line. */
    AIR_LINE_CREEP,
    /** Scale grows in the injector's nozzle. */
    NOZZLE_SCALING,
    /** The injector pump wears. */
    PUMP_WEAR,
    /** The pad clogs and backs the water up. */
    PAD_CLOGGING,
    /** The return pump's strainer clogs. */
    STRAINER_CLOGGING,
    /** New surfaces give off foaming residues. */
    BREAK_IN,
    /** Oil films and foaming agents fade. */
    FADING,
    /** Temperature and pH swing with the day. */
    DAY_SWING,
    /** What the skimmer meets fluctuates from hour to hour (seeded). */
    LOAD_NOISE
}
