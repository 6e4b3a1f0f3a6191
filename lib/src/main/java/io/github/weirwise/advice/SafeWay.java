package io.github.weirwise.advice;

/**
 * How floor and animals are kept safe. Air is kept on as long as anything else helps: the animals breathe it.
 *
 * @since 0.1
 */
public enum SafeWay {
    /** Lower the weir, empty the cup, lead its drain to a container with room. */
    LOWER_WEIR,
    /** A lower weir would not help, or there is none: turn the air down. */
    LESS_AIR,
    /** Nothing milder is left: stop the air for at most a few hours. */
    STOP_THE_AIR,
    /** The way back: start the air again, in steps and watched. */
    START_THE_AIR,
    /** Start pumps and heater that stand, and watch the surge. */
    START_PUMPS
}
