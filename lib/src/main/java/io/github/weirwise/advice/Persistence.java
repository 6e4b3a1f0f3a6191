package io.github.weirwise.advice;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import java.util.List;

/**
 * Whether what is seen was seen before. Much that disturbs foam is gone the next day, so one reading off target after none
 * or a good one is a reason to read again, not to change something (common practice).
 */
final class Persistence {
    private static final int LONG = 3;

    private final Situation situation;

    Persistence(Situation situation) {
        this.situation = situation;
    }

    /** True when only the newest measured amount since the last change is off target. */
    boolean firstSign() {
        int off = 0;
        boolean changed = false;
        for (JournalEntry entry : situation.journal().entries()) {
            if (entry instanceof WeirMove || entry instanceof SettingChange || entry instanceof Service) {
                changed |= !(entry instanceof Service) || off > 0;
                off = changed ? 1 : off;
            } else if (entry instanceof Reading reading) {
                off = count(reading, off);
            }
        }
        return off == 1 && !changed;
    }

    /** True when three amounts in a row were off target since the last change or happening: waiting longer teaches nothing. */
    boolean waitedLong() {
        int off = 0;
        for (JournalEntry entry : situation.journal().entries()) {
            boolean starts = entry instanceof WeirMove
                    || entry instanceof SettingChange
                    || entry instanceof Service
                    || entry instanceof Happening happening && restDays(happening.kind()) > 0;
            off = starts ? 0 : entry instanceof Reading reading ? count(reading, off) : off;
        }
        return off >= LONG;
    }

    /** True when at least three amounts were measured since the last change or happening. */
    boolean longSeen() {
        int seen = 0;
        for (JournalEntry entry : situation.journal().entries()) {
            if (entry instanceof Reading reading) {
                seen += reading.find(Observation.CupVolume.class).isPresent() ? 1 : 0;
            } else if (entry instanceof Happening happening) {
                seen = Math.min(seen, -restDays(happening.kind()));
            } else {
                seen = 0;
            }
        }
        return seen >= LONG;
    }

    /** Days after which a happening no longer moves the foam, about; a reading a day is taken for granted. */
    private static int restDays(Happening.Kind kind) {
        return switch (kind) {
            case FIRST_START -> 10;
            case CONDITIONER, SEALANT, MEDICATION -> 5;
            case FED_HEAVILY, HANDS_IN_TANK -> 2;
            case PUMP_RESTARTED -> 0;
            default -> -LONG;
        };
    }

    private int count(Reading reading, int off) {
        List<Observation.CupVolume> cups = reading.observations().stream()
                .filter(Observation.CupVolume.class::isInstance)
                .map(Observation.CupVolume.class::cast)
                .toList();
        if (cups.isEmpty()) {
            return off;
        }
        boolean onTarget = !cups.get(0).full()
                && situation
                        .unit()
                        .target()
                        .skimmateBandMlPerDay()
                        .contains(cups.get(0).mlPerDay());
        return onTarget ? 0 : off + 1;
    }
}
