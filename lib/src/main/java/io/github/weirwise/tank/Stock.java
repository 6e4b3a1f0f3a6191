package io.github.weirwise.tank;

/**
 * What a {@link TankState} holds: the place of each quantity in it. First what flows and is integrated, its last part the ledger of
 * what came in and went out since the clock's start, with which the balances close; then what hands and accidents set, which
 * changes only at an event. Masses are of the whole installation.
 */
public final class Stock {
    /** Fresh water part of all water, kg. */
    public static final int WATER_KG = 0;
    /** Salt part of it, kg. */
    public static final int SALT_KG = 1;
    /** Alkalinity, equivalents. */
    public static final int ALKALINITY_EQ = 2;
    /** Dissolved oxygen, mg/L. */
    public static final int OXYGEN_MG_PER_LITRE = 3;
    /** Dissolved organics that foam can take, g dry mass. */
    public static final int SKIMMABLE_G = 4;
    /** Dissolved organics that it cannot and that hardly decay, g. */
    public static final int REFRACTORY_G = 5;
    /** Solids in the water and on the bottom, g. */
    public static final int SOLIDS_G = 6;
    /** Solids held by the filter pad, g. */
    public static final int PAD_SOLIDS_G = 7;
    /** Nitrogen of food being digested, g N. */
    public static final int DIGESTING_G = 8;
    /** Total ammonia, g N. */
    public static final int AMMONIA_G = 9;
    /** Nitrite, g N. */
    public static final int NITRITE_G = 10;
    /** Nitrate, g N. */
    public static final int NITRATE_G = 11;
    /** Bacteria that oxidise ammonia, 0 to 1 of what the media can carry. */
    public static final int AMMONIA_COLONY = 12;
    /** Bacteria that oxidise nitrite, 0 to 1. */
    public static final int NITRITE_COLONY = 13;
    /** Fat and dirt in the neck, 0 (clean) to 1. */
    public static final int NECK_FILM = 14;
    /** Share of the air line closed by salt, 0 to 1. */
    public static final int AIR_LINE_CREEP = 15;
    /** Share of the air draw lost to scale, 0 to 1. */
    public static final int NOZZLE_SCALE = 16;
    /** Share of the air draw lost to a worn injector pump, 0 to 1. */
    public static final int PUMP_WEAR = 17;
    /** Share of the pad closed, 0 to 1. */
    public static final int PAD_CLOG = 18;
    /** Share of the return pump's strainer closed, 0 to 1. */
    public static final int STRAINER_CLOG = 19;
    /** Foaming residues of new surfaces that are left, 0 to 1. */
    public static final int BREAK_IN_LEFT = 20;
    /** Liquid that the foam gives now; follows the skimmer's law with a lag of hours. */
    public static final int SKIMMATE_ML_PER_DAY = 21;
    /** Share of the film on the neck still missing after washing or a stop, 0 to 1. */
    public static final int FILM_LOST = 22;
    /** Film-breaking oil or food, 0 (none) to 1 (foam nearly gone); fades. */
    public static final int OIL = 23;
    /** Foaming agent, 0 (none) to 3 (severe); fades. */
    public static final int AGENT = 24;
    /** Liquid in a cup that is not drained, mL. */
    public static final int CUP_ML = 25;
    /** Liquid in the container, mL. */
    public static final int CONTAINER_ML = 26;
    /** Organics in the liquid collected since the last emptying, g. */
    public static final int COLLECTED_G = 27;
    /** Water left in the top-off reservoir, L. */
    public static final int RESERVOIR_LITRES = 28;
    /** Fresh water part of all that was added since the clock's start, kg. */
    public static final int WATER_IN_KG = 29;
    /** Water that evaporated, kg. */
    public static final int EVAPORATED_KG = 30;
    /** Water that left with skimmate, kg. */
    public static final int WATER_SKIMMED_KG = 31;
    /** Water that left otherwise (changes, spills), kg. */
    public static final int WATER_OUT_KG = 32;
    /** Salt added, kg. */
    public static final int SALT_IN_KG = 33;
    /** Salt that left with skimmate, kg. */
    public static final int SALT_SKIMMED_KG = 34;
    /** Salt that left otherwise, kg. */
    public static final int SALT_OUT_KG = 35;
    /** Nitrogen of food and dead animals, g N. */
    public static final int NITROGEN_IN_G = 36;
    /** Nitrogen that left with skimmate, dissolved and organic, g N. */
    public static final int NITROGEN_SKIMMED_G = 37;
    /** Nitrogen kept by the animals, g N. */
    public static final int NITROGEN_RETAINED_G = 38;
    /** Nitrogen that left as gas, g N. */
    public static final int NITROGEN_GAS_G = 39;
    /** Nitrogen that left otherwise (changes, pad, spills), g N. */
    public static final int NITROGEN_OUT_G = 40;
    /** Dry organics from food and animals, g. */
    public static final int ORGANICS_IN_G = 41;
    /** Organics that left with skimmate, g. */
    public static final int ORGANICS_SKIMMED_G = 42;
    /** Organics that decayed, g. */
    public static final int ORGANICS_MINERALISED_G = 43;
    /** Organics that left otherwise, g. */
    public static final int ORGANICS_OUT_G = 44;
    /** Liquid that left with the foam, mL. */
    public static final int SKIMMATE_ML = 45;
    /** Water and skimmate on the floor, L. */
    public static final int SPILLED_LITRES = 46;
    /** Height of the weir's crest as its mark says, mm. */
    public static final int WEIR_CREST_MM = 47;
    /** How much higher the crest really is, mm. */
    public static final int WEIR_SLIP_MM = 48;
    /** Return flow with a clean strainer. */
    public static final int FLOW_LITRES_PER_HOUR = 49;
    /** Clean air draw. */
    public static final int AIR_LITRES_PER_HOUR = 50;
    /** Mean water temperature. */
    public static final int WATER_CELSIUS = 51;
    /** Pressure in the cup over the room. */
    public static final int BACK_PRESSURE_PA = 52;
    /** Practical salinity of the top-off water, 0 unless someone mixed it up. */
    public static final int RESERVOIR_SALINITY = 53;
    /** Whether the end of the air line hangs in water. */
    public static final int AIR_LINE_IN_WATER = 54;
    /** Whether the return pump has power. */
    public static final int RETURN_PUMP_ON = 55;
    /** Whether the injector pump has power. */
    public static final int INJECTOR_ON = 56;
    /** Whether the top-off works. */
    public static final int TOP_OFF_ON = 57;
    /** Whether the top-off runs without end. */
    public static final int TOP_OFF_STUCK = 58;
    /** When power comes back, infinity without a power cut. */
    public static final int POWER_BACK_AT_HOURS = 59;
    /** Whether the top-off reservoir ran empty. */
    public static final int RESERVOIR_EMPTY = 60;
    /** Whether the cup is full. */
    public static final int CUP_FULL = 61;
    /** Whether the container is full. */
    public static final int CONTAINER_FULL = 62;

    /** From here on they only count. */
    static final int FIRST_OF_LEDGER = WATER_IN_KG;
    /** How many flow. */
    static final int FLOWING = WEIR_CREST_MM;
    /** How many there are. */
    static final int ALL = 63;

    private Stock() {}
}
