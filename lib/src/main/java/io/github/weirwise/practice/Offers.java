package io.github.weirwise.practice;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Part;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What can be looked at and done, the minutes that each takes, and how shaky readings are. An empty table offers everything
 * at its usual minutes.
 *
 * @param looks minutes of each look
 * @param acts minutes of each kind of act; for services the next table counts
 * @param services minutes of the service of each part
 * @param readingError scale of the errors of reading, 0 (none) to 4; 1 is a careful person
 */
public record Offers(
        Map<Look, Double> looks, Map<Act.Kind, Double> acts, Map<Part, Double> services, double readingError) {
    private static final Limit READING_ERROR = Limit.of("readingError", 0, 4, Unit.PLAIN, "practice.try.1IsACareful");

    /** Everything, as usual. */
    public static final Offers EVERYTHING = new Offers(Map.of(), Map.of(), Map.of(), 1);

    private static final double MOST_MINUTES = 600;

    /**
     * Copies the tables.
     *
     * @throws io.github.weirwise.report.OutOfRangeException if a number is out of its range
     */
    public Offers {
        looks = checked(Look.class, looks);
        acts = checked(Act.Kind.class, acts);
        services = checked(Part.class, services);
        READING_ERROR.check(readingError);
    }

    private static <E extends Enum<E>> Map<E, Double> checked(Class<E> words, Map<E, Double> minutes) {
        EnumMap<E, Double> copy = new EnumMap<>(words);
        minutes.forEach((each, value) -> copy.put(
                each,
                Limit.of(each.name(), 0.5, MOST_MINUTES, Unit.MINUTE, "practice.try.giveTheMinutes")
                        .check(value)));
        return Collections.unmodifiableMap(copy);
    }

    /** Whether a look is offered. */
    public boolean has(Look look) {
        return looks.isEmpty() || looks.containsKey(look);
    }

    /** Whether an act is offered. */
    public boolean has(Act act) {
        boolean kind = acts.isEmpty() || acts.containsKey(act.kind());
        boolean part =
                !(act instanceof Act.ServicePart service) || services.isEmpty() || services.containsKey(service.part());
        return kind && part;
    }

    /** Minutes of a look. */
    public double minutes(Look look) {
        return looks.getOrDefault(look, (double) look.minutes());
    }

    /** Minutes of an act. */
    public double minutes(Act act) {
        double usual = acts.getOrDefault(act.kind(), (double) act.kind().minutes());
        return act instanceof Act.ServicePart service
                ? services.getOrDefault(
                        service.part(),
                        acts.getOrDefault(act.kind(), service.part().work().minutes()))
                : usual;
    }
}
