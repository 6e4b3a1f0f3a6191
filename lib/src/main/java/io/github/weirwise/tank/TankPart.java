package io.github.weirwise.tank;

/**
 * Parts that get dirty, full or worn, and that people service.
 */
public enum TankPart {
    /** Neck and cup, washed together with hot water: the film is gone and foam needs hours to come back. */
    NECK,
    /** The cup, emptied only. */
    CUP,
    /** The waste container, emptied. */
    CONTAINER,
    /** The air line with its end, rinsed of salt. */
    AIR_LINE,
    /** The injector's nozzle, descaled. */
    NOZZLE,
    /** The injector pump, with a new impeller. */
    INJECTOR_PUMP,
    /** The filter pad, rinsed or replaced: what it holds leaves the tank. */
    PAD,
    /** The return pump's strainer. */
    STRAINER,
    /** The media, a part at a time in tank water; some of the bacteria go with the dirt. */
    MEDIA,
    /** The top-off reservoir, filled with fresh water. */
    RESERVOIR;
}
