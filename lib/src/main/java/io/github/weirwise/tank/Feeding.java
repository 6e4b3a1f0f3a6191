package io.github.weirwise.tank;

/**
 * The daily rhythm of feeding. Hour 0 of a tank's clock is a Monday's midnight.
 *
 * @param gramsPerDay dry feed on a working day, 0 to 1e5 g, in two meals at 9 and 15 o'clock
 * @param weekendFactor feed on Saturday and Sunday against a working day, 0 to 3
 */
public record Feeding(double gramsPerDay, double weekendFactor) {
    /** Crude protein in the feed, a share. */
    public static final double PROTEIN_SHARE = 0.45;

    private static final double DAY = 24;
    private static final int DAYS_IN_WEEK = 7;
    private static final int SATURDAY = 5;
    private static final double[] MEAL_HOURS = {9, 15};

    /** The hour of the first meal after the given hour. */
    public double nextMealAfter(double hours) {
        double day = Math.floor(hours / DAY) * DAY;
        for (double mealHour : MEAL_HOURS) {
            double at = day + mealHour;
            if (at > hours) {
                return at;
            }
        }
        return day + DAY + MEAL_HOURS[0];
    }

    /** Dry feed of a meal at the given hour, g. */
    public double mealGrams(double hours) {
        int day = Math.floorMod((long) Math.floor(hours / DAY), DAYS_IN_WEEK);
        double factor = day >= SATURDAY ? weekendFactor : 1;
        return gramsPerDay * factor / MEAL_HOURS.length;
    }
}
