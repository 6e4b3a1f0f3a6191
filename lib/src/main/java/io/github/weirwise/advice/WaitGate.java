package io.github.weirwise.advice;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Times;
import io.github.weirwise.unit.Part;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Says how long nothing may be judged: after a change until the foam has settled, after washing, feeding, additives and
 * during break-in. A flood is never made to wait; that is the caller's business.
 */
final class WaitGate {
    private final Situation situation;
    private final Clocks clocks;

    WaitGate(Situation situation) {
        this.situation = situation;
        this.clocks = situation.options().clocks();
    }

    /** Until when to hold, and why; empty when a step may be taken now. */
    Optional<Step.Hold> hold() {
        Step.Hold latest = null;
        for (JournalEntry entry : situation.journal().entries()) {
            Step.Hold hold = holdAfter(entry);
            if (hold != null && (latest == null || hold.until().isAfter(latest.until()))) {
                latest = hold;
            }
        }
        return Optional.ofNullable(latest).filter(hold -> hold.until().isAfter(situation.now()));
    }

    private Step.Hold holdAfter(JournalEntry entry) {
        if (entry instanceof WeirMove || entry instanceof SettingChange) {
            return until(entry.at(), clocks.judge(), HoldReason.STILL_SETTLING);
        }
        if (entry instanceof Service service) {
            return until(entry.at(), clocks.judge().plus(extra(service.part())), HoldReason.STILL_SETTLING);
        }
        return entry instanceof Happening happening ? holdAfter(happening) : null;
    }

    private Step.Hold holdAfter(Happening happening) {
        return switch (happening.kind()) {
            case FED_HEAVILY, HANDS_IN_TANK ->
                until(happening.at(), clocks.afterFeeding(), HoldReason.PASSES_BY_ITSELF);
            case CONDITIONER, SEALANT, MEDICATION ->
                until(happening.at(), clocks.afterAdditive(), HoldReason.PASSES_BY_ITSELF);
            case FIRST_START -> until(happening.at(), clocks.breakIn(), HoldReason.BREAKING_IN);
            case PUMP_RESTARTED -> until(happening.at(), Duration.ofHours(12), HoldReason.STILL_SETTLING);
            default -> null;
        };
    }

    private static Step.Hold until(Instant from, Duration length, HoldReason reason) {
        return new Step.Hold(Times.later(from, length), reason);
    }

    /** Washed foam stays away for hours; salt takes a day to mix and to tell. */
    private Duration extra(Part part) {
        return switch (part) {
            case NECK_AND_CUP -> clocks.afterWashing();
            case SALT_MIX -> clocks.judge();
            default -> Duration.ZERO;
        };
    }

    /** Whether a measured amount exists whose whole time in the cup lies after the newest change has settled. */
    boolean judgeable() {
        Instant settled =
                newestChange().map(at -> Times.later(at, Duration.ofHours(4))).orElse(Instant.MIN);
        for (Reading reading : situation.journal().all(Reading.class)) {
            Optional<Observation.CupVolume> cup = reading.find(Observation.CupVolume.class);
            if (cup.isPresent()) {
                Instant from = Times.earlier(
                        reading.at(), Duration.ofSeconds((long) (cup.get().hours() * 3600)));
                Instant half =
                        Times.later(from, Duration.ofSeconds((long) (cup.get().hours() * 1800)));
                if (!half.isBefore(settled)) {
                    return true;
                }
            }
        }
        return false;
    }

    private Optional<Instant> newestChange() {
        Instant newest = null;
        for (JournalEntry entry : situation.journal().entries()) {
            if (entry instanceof WeirMove || entry instanceof SettingChange || entry instanceof Service) {
                newest = entry.at();
            }
        }
        return Optional.ofNullable(newest);
    }
}
