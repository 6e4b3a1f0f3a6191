package io.github.weirwise.practice;

import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.WrongValueException;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;

/**
 * How likely a trainee holds each cause, as shares of one.
 *
 * @param shares 0 to 1 for each cause held possible; together 1
 */
public record FaultSheet(Map<Cause, Double> shares) {
    private static final double SLACK = 0.011;

    /**
     * Copies the table.
     *
     * @throws io.github.weirwise.report.OutOfRangeException if a share is out of its range
     * @throws IllegalArgumentException if the shares do not add up to 1
     */
    public FaultSheet {
        EnumMap<Cause, Double> copy = new EnumMap<>(Cause.class);
        copy.putAll(shares);
        double sum = 0;
        for (Map.Entry<Cause, Double> each : copy.entrySet()) {
            Limit share = Limit.of(each.getKey().name(), 0, 1, Unit.PLAIN, "practice.try.giveShares");
            sum += share.check(each.getValue());
        }
        if (!(Math.abs(sum - 1) <= SLACK)) {
            throw new WrongValueException(
                    "shares",
                    Phrase.of("practice.wrong.shares", String.valueOf(sum)),
                    Phrase.of("practice.try.shareOut"));
        }
        shares = Collections.unmodifiableMap(copy);
    }

    /** Certain of one cause. */
    public static FaultSheet certain(Cause cause) {
        return new FaultSheet(Map.of(cause, 1.0));
    }

    /** The share of a cause, 0 when it was not named. */
    public double share(Cause cause) {
        return shares.getOrDefault(cause, 0.0);
    }

    /** The share that was given to what was really the matter; no causes at work means {@link Cause#NOTHING_WRONG}. */
    public double onTruth(Set<Cause> truth) {
        return (truth.isEmpty() ? Set.of(Cause.NOTHING_WRONG) : truth)
                .stream().mapToDouble(this::share).sum();
    }
}
