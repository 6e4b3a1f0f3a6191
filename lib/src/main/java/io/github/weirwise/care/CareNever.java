package io.github.weirwise.care;

import io.github.weirwise.report.Phrase;

/**
 * What must never be done; common practice.
 *
 * @since 0.1
 */
public enum CareNever {
    /** Detergent, on any part. */
    DETERGENT,
    /** Media in fresh or hot water, or with a cleaning agent. */
    MEDIA_IN_FRESH_WATER,
    /** Media left to dry. */
    MEDIA_DRY,
    /** Media, pad and pumps on one day. */
    ALL_AT_ONCE,
    /** A valve or a plug in the drain. */
    THROTTLE_DRAIN,
    /** A taped or forgotten siphon-break hole. */
    CLOSE_SIPHON_BREAK,
    /** Hands in the water with the plugs in. */
    LIVE_HANDS,
    /** The weir moved to make up for a dirty part. */
    WEIR_OVER_DIRT,
    /** An air line or drain hose with its end under water. */
    ENDS_UNDER_WATER;

    /** It in words. */
    public Phrase words() {
        return Phrase.of("care.never." + name());
    }
}
