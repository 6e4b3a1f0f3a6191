package io.github.weirwise.lab.rival;

import static io.github.weirwise.unit.Part.*;

import io.github.weirwise.advice.Step;
import io.github.weirwise.unit.Part;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The rival to beat, without any model; frozen (its vectors stand in {@code CarefulKeeperTest}). At the start neck, pad and air
 * line; neck and pad every 7 days, air line and both pumps every 30. If the last two amounts since the last move are both under
 * 0.4 or both over 2.4 of the wanted: 4 mm; both under 0.2 or over 5: 8 mm. Cup full and foam runny or streaming: 10 mm down at
 * once. Never beyond the weir's limits.
 *
 * @param upkeep false for the same keeper without any service
 */
public record CarefulKeeper(boolean upkeep) implements Policy {
    private static final List<Part> EVERY_WEEK = List.of(NECK_AND_CUP, FILTER_PAD);
    private static final List<Part> EVERY_MONTH = List.of(AIR_LINE, INJECTOR_PUMP, RETURN_PUMP);
    /** A calendar knows days: a visit a few hours early still counts as that day. */
    private static final Duration SAME_DAY = Duration.ofHours(12);

    /** Days between the keeper's services of a part; empty for parts that are not on the calendar. */
    public static Optional<Integer> intervalDays(Part part) {
        if (EVERY_WEEK.contains(part)) {
            return Optional.of(7);
        }
        return EVERY_MONTH.contains(part) ? Optional.of(30) : Optional.empty();
    }

    @Override
    public Decision next(Visit visit) {
        Log log = new Log(visit);
        double crest = log.crestMm();
        if (log.runsOver()) {
            return Decision.move(visit.sheet(), crest, -10, visit.now());
        }
        if (log.moved()) {
            return Decision.hold(visit.now());
        }
        if (upkeep) {
            for (Part part : Part.values()) {
                if (due(log, part)) {
                    return Decision.of(new Step.ServicePart(part));
                }
            }
        }
        List<Double> last = log.amounts(2);
        if (last.size() == 2) {
            double less = Math.min(last.get(0), last.get(1));
            double more = Math.max(last.get(0), last.get(1));
            if (more < 0.4) {
                return Decision.move(visit.sheet(), crest, more < 0.2 ? 8 : 4, visit.now());
            }
            if (less > 2.4) {
                return Decision.move(visit.sheet(), crest, less > 5 ? -8 : -4, visit.now());
            }
        }
        return Decision.hold(visit.now());
    }

    private static boolean due(Log log, Part part) {
        Optional<Integer> days = intervalDays(part);
        if (days.isEmpty()) {
            return false;
        }
        boolean atTheStart = EVERY_WEEK.contains(part) || part == AIR_LINE;
        Optional<Instant> last = log.serviced(part);
        if (last.isEmpty() && atTheStart) {
            return true;
        }
        Instant from = last.orElse(log.begins());
        return !log.visit()
                .now()
                .isBefore(from.plus(Duration.ofDays(days.get())).minus(SAME_DAY));
    }
}
