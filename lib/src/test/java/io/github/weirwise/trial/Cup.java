package io.github.weirwise.trial;

import io.github.weirwise.unit.SkimmerUnit;
import java.util.Arrays;

/** The cup, and what a perfect observer would have written down hour by hour. */
final class Cup {
    private static final int EARLIEST_HOUR = -24 * 10;
    private static final int HOURS = 24 * 26;

    private final double capacityMl;
    private final double targetMlPerDay;
    private final double[] mlByHour = new double[HOURS];
    private final double[] colourByHour = new double[HOURS];
    private final boolean[] floodByHour = new boolean[HOURS];
    private double ml;
    private double total;
    private double colour;
    private boolean ranOver;
    private int emptiedHour;

    Cup(SkimmerUnit sheet) {
        capacityMl = sheet.cupMl();
        targetMlPerDay = sheet.target().skimmateMlPerDay();
        Arrays.fill(mlByHour, Double.NaN);
    }

    void fill(int hour, double inflowMl, double darknessPtCo, boolean streaming) {
        int i = hour - EARLIEST_HOUR;
        boolean over = ml + inflowMl > capacityMl;
        mlByHour[i] = inflowMl;
        colourByHour[i] = inflowMl * darknessPtCo;
        floodByHour[i] = over || streaming;
        ranOver |= over;
        ml = Math.min(capacityMl, ml + inflowMl);
        colour += inflowMl * darknessPtCo;
        total += inflowMl;
    }

    void empty(int hour) {
        ml = 0;
        colour = 0;
        total = 0;
        ranOver = false;
        emptiedHour = hour;
    }

    double ml() {
        return ml;
    }

    boolean ranOver() {
        return ranOver;
    }

    int emptiedHour() {
        return emptiedHour;
    }

    /** Mean darkness of what is in the cup. */
    double darknessPtCo() {
        return total > 0 ? colour / total : 0;
    }

    /** True mean amount over some hours before an hour, over the target's. */
    double amountOver(int untilHour, int hours) {
        double sum = 0;
        for (int h = untilHour - hours; h < untilHour; h++) {
            sum += mlByHour[h - EARLIEST_HOUR];
        }
        return sum * 24 / hours / targetMlPerDay;
    }

    /** True mean darkness over some hours before an hour. */
    double darknessOver(int untilHour, int hours) {
        double sum = 0;
        double weight = 0;
        for (int h = untilHour - hours; h < untilHour; h++) {
            sum += colourByHour[h - EARLIEST_HOUR];
            weight += mlByHour[h - EARLIEST_HOUR];
        }
        return weight > 0 ? sum / weight : 0;
    }

    /** Whether water or foam ran over in the hours from (inclusive) to (exclusive). */
    boolean floodedBetween(int fromHour, int toHour) {
        for (int h = fromHour; h < toHour; h++) {
            if (floodByHour[h - EARLIEST_HOUR]) {
                return true;
            }
        }
        return false;
    }
}
