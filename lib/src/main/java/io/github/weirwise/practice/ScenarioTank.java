package io.github.weirwise.practice;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import io.github.weirwise.tank.TankParameter;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * The tank of a scenario, hidden truth included. Whatever is not said here is in proportion to the water, as
 * {@link io.github.weirwise.tank.TankPlan#around} has it.
 *
 * @param litres all water at running level, 40 to 1e5 L
 * @param feedGramsPerDay dry feed on a working day, 0 to 1e4 g
 * @param weekendFeed feed on Saturday and Sunday against a working day, 0 to 3
 * @param foamLifeFactor how much longer foam lives here than the unit's sheet says, 0.5 to 2; hidden
 * @param mediaUnderWater share of the media under water, 0 to 1; a third at most by common practice
 * @param containerLitres container that the cup drains to, 0.1 to 1e4 L; 0 for a cup that is emptied by hand
 * @param parameters numbers of the tank's processes that differ from their defaults
 */
public record ScenarioTank(
        double litres,
        double feedGramsPerDay,
        double weekendFeed,
        double foamLifeFactor,
        double mediaUnderWater,
        double containerLitres,
        Map<TankParameter, Double> parameters) {
    private static final Limit LITRES = Limit.of("litres", 40, 1e5, Unit.LITRE, "practice.try.giveTheWaterOf");
    private static final Limit FEED_GRAMS_PER_DAY =
            Limit.of("feedGramsPerDay", 0, 1e4, Unit.GRAM, "practice.try.giveDryFeedBy");
    private static final Limit WEEKEND_FEED = Limit.of("weekendFeed", 0, 3, Unit.PLAIN, "practice.try.1IsAsOn");
    private static final Limit FOAM_LIFE_FACTOR =
            Limit.of("foamLifeFactor", 0.5, 2, Unit.PLAIN, "practice.try.1IsAsThe");
    private static final Limit MEDIA_UNDER_WATER =
            Limit.of("mediaUnderWater", 0, 1, Unit.PLAIN, "practice.try.03IsUsual");
    private static final Limit CONTAINER_LITRES =
            Limit.of("containerLitres", 0, 1e4, Unit.LITRE, "practice.try.0ForACup");

    /**
     * Copies the table.
     *
     * @throws io.github.weirwise.report.OutOfRangeException if a number is out of its range
     */
    public ScenarioTank {
        LITRES.check(litres);
        FEED_GRAMS_PER_DAY.check(feedGramsPerDay);
        WEEKEND_FEED.check(weekendFeed);
        FOAM_LIFE_FACTOR.check(foamLifeFactor);
        MEDIA_UNDER_WATER.check(mediaUnderWater);
        CONTAINER_LITRES.check(containerLitres);
        EnumMap<TankParameter, Double> copy = new EnumMap<>(TankParameter.class);
        parameters.forEach((each, value) -> {
            copy.put(each, each.limit().check(value));
        });
        parameters = Collections.unmodifiableMap(copy);
    }
}
