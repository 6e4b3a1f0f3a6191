package io.github.weirwise.practice;

import io.github.weirwise.report.Phrase;

/**
 * Which way something goes: a level down, none or up; foam drier, as it is or wetter.
 */
public enum Trend {
    /** Down; drier. */
    LESS,
    /** As it is. */
    SAME,
    /** Up; wetter. */
    MORE;

    /** Below this many millimetres a level counts as unchanged; a ruler shows no less. */
    public static final double SAME_LEVEL_MM = 0.7;
    /** Below this factor either way an amount counts as unchanged. */
    public static final double SAME_FACTOR = 1.2;

    /** The trend of a level that changed by so many millimetres. */
    public static Trend ofLevel(double byMm) {
        return byMm > SAME_LEVEL_MM ? MORE : byMm < -SAME_LEVEL_MM ? LESS : SAME;
    }

    /** The trend of an amount that changed by a factor, 0 or more. */
    public static Trend ofFactor(double factor) {
        return factor > SAME_FACTOR ? MORE : factor < 1 / SAME_FACTOR ? LESS : SAME;
    }

    /** A level's trend in words. */
    public Phrase levelWords() {
        return Phrase.of("practice.levelTrend." + name());
    }

    /** The foam's trend in words. */
    public Phrase foamWords() {
        return Phrase.of("practice.foamTrend." + name());
    }
}
