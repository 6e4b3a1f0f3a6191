package io.github.weirwise.tank;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

/**
 * The daily rhythm of feeding. Hour 0 of a tank's clock is a Monday's midnight.
 *
 * @param gramsPerDay dry feed on a working day, 0 to 1e5 g
 * @param proteinShare crude protein, 0 to 1
 * @param mealsPerDay 1 to 12, spread over twelve hours
 * @param firstMealHour hour of the day of the first meal, 0 to 12
 * @param weekendFactor feed on Saturday and Sunday against a working day, 0 to 3
 */
public record Feeding(
        double gramsPerDay, double proteinShare, int mealsPerDay, double firstMealHour, double weekendFactor) {
    private static final Limit GRAMS_PER_DAY = Limit.of("gramsPerDay", 0, 1e5, Unit.GRAM, "tank.try.giveDryFeedBy");
    private static final Limit PROTEIN_SHARE = Limit.of("proteinShare", 0, 1, Unit.PLAIN, "tank.try.giveDryFeedBy");
    private static final Limit MEALS_PER_DAY = Limit.of("mealsPerDay", 1, 12, Unit.PLAIN, "tank.try.giveDryFeedBy");
    private static final Limit FIRST_MEAL_HOUR = Limit.of("firstMealHour", 0, 12, Unit.HOUR, "tank.try.giveDryFeedBy");
    private static final Limit WEEKEND_FACTOR = Limit.of("weekendFactor", 0, 3, Unit.PLAIN, "tank.try.giveDryFeedBy");

    private static final double DAY = 24;
    private static final int DAYS_IN_WEEK = 7;
    private static final int SATURDAY = 5;
    private static final double SPREAD_HOURS = 12;

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public Feeding {
        GRAMS_PER_DAY.check(gramsPerDay);
        PROTEIN_SHARE.check(proteinShare);
        MEALS_PER_DAY.check(mealsPerDay);
        FIRST_MEAL_HOUR.check(firstMealHour);
        WEEKEND_FACTOR.check(weekendFactor);
    }

    /** Two meals a day, at 9 and 15 o'clock, the same every day, of feed with 45 % protein. */
    public static Feeding daily(double gramsPerDay) {
        return new Feeding(gramsPerDay, 0.45, 2, 9, 1);
    }

    /** The same with another amount on Saturday and Sunday. */
    public Feeding withWeekendFactor(double factor) {
        return new Feeding(gramsPerDay, proteinShare, mealsPerDay, firstMealHour, factor);
    }

    /** The same rhythm with another amount. */
    public Feeding withGramsPerDay(double grams) {
        return new Feeding(grams, proteinShare, mealsPerDay, firstMealHour, weekendFactor);
    }

    /** The hour of the first meal after the given hour. */
    public double nextMealAfter(double hours) {
        double day = Math.floor(hours / DAY) * DAY;
        for (int meal = 0; meal < mealsPerDay; meal++) {
            double at = day + mealHour(meal);
            if (at > hours) {
                return at;
            }
        }
        return day + DAY + mealHour(0);
    }

    /** Dry feed of a meal at the given hour, g. */
    public double mealGrams(double hours) {
        int day = Math.floorMod((long) Math.floor(hours / DAY), DAYS_IN_WEEK);
        double factor = day >= SATURDAY ? weekendFactor : 1;
        return gramsPerDay * factor / mealsPerDay;
    }

    private double mealHour(int meal) {
        return firstMealHour + meal * SPREAD_HOURS / mealsPerDay;
    }
}
