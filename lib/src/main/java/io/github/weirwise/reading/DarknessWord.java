package io.github.weirwise.reading;

import io.github.weirwise.report.Range;

/**
 * Darkness of skimmate in a 20 mm white vial, palest first. The platinum-cobalt limits are our own reading of the words,
 * a factor of about three a step; "dark tea" as the wanted look is common practice.
 *
 * @since 0.1
 */
public enum DarknessWord {
    /** Like tank water. */
    CLEAR(0, 90),
    /** Faint yellow. */
    STRAW(90, 270),
    /** Weak tea. */
    LIGHT_TEA(270, 800),
    /** Dark tea: what is wanted. */
    DARK_TEA(800, 3500),
    /** Like black coffee. */
    COFFEE(3500, 30000);

    private final Range ptCo;

    DarknessWord(double low, double high) {
        this.ptCo = new Range(low, high);
    }

    /** Platinum-cobalt units that the word stands for. */
    public Range ptCo() {
        return ptCo;
    }

    /** The word for a darkness; the last one above its upper end. */
    public static DarknessWord of(double ptCo) {
        for (DarknessWord word : values()) {
            if (ptCo < word.ptCo.high()) {
                return word;
            }
        }
        return COFFEE;
    }
}
