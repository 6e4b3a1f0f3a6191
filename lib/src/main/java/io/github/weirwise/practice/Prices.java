package io.github.weirwise.practice;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What each decision of a session cost: by how much the best that sound hands could still make of the tank grew worse from this
 * decision to the next, in days of a badly running unit ({@link Outcome#costDays()}). Prices add up to what lies between the
 * session and sound hands from its first decision on.
 *
 * @param daysByLine price by the number of the log's line
 */
record Prices(Map<Integer, Double> daysByLine) {
    static final Prices NONE = new Prices(Map.of());

    /**
     * Prices of reviewed decisions, oldest first.
     *
     * @param decisions with the end that sound hands reach from there on
     * @param end what the session came to
     */
    static Prices of(List<Decision> decisions, Outcome end) {
        Map<Integer, Double> days = new HashMap<>();
        for (int i = 0; i < decisions.size(); i++) {
            Outcome after = i + 1 < decisions.size() ? decisions.get(i + 1).whatIf() : end;
            days.put(
                    decisions.get(i).steps() + 1,
                    after.costDays() - decisions.get(i).whatIf().costDays());
        }
        return new Prices(days);
    }

    /** What some lines of the log cost together; never less than nothing. */
    double of(List<LogLine> lines) {
        return Math.max(
                0,
                lines.stream()
                        .mapToDouble(line -> daysByLine.getOrDefault(line.number(), 0.0))
                        .sum());
    }
}
