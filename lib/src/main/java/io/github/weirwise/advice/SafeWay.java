package io.github.weirwise.advice;

/**
 * First things to do when the cup runs over or is about to.
 *
 * @since 0.1
 */
public enum SafeWay {
    /** Empty the cup, lead its drain to a container with room, and lower the weir well. */
    LOWER_WEIR_WELL,
    /** Stop the air until the foaming agent has gone; leave the weir. */
    STOP_THE_AIR
}
