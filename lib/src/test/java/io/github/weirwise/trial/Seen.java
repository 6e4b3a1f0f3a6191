package io.github.weirwise.trial;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Target;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;

/** What a rule reads in a journal: the newest amount, where the mark stands, when something was last changed. */
record Seen(SkimmerUnit unit, Settings start, Journal journal, Instant now) {

    /** The newest cup over the target's amount, if it stood for at least some hours. */
    OptionalDouble amount(double leastHours) {
        List<JournalEntry> entries = journal.entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (entries.get(i) instanceof Reading reading) {
                var cup = reading.find(Observation.CupVolume.class);
                if (cup.isPresent()) {
                    return cup.get().hours() < leastHours
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(
                                    cup.get().mlPerDay() / unit.target().skimmateMlPerDay());
                }
            }
        }
        return OptionalDouble.empty();
    }

    OptionalDouble levelMm() {
        List<JournalEntry> entries = journal.entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (entries.get(i) instanceof Reading reading) {
                var level = reading.find(Observation.FunnelLevel.class);
                if (level.isPresent()) {
                    return OptionalDouble.of(level.get().mm());
                }
            }
        }
        return OptionalDouble.empty();
    }

    double markMm() {
        return journal.last(WeirMove.class).map(WeirMove::toCrestMm).orElse(start.weirCrestMm());
    }

    /** Hours since a weir move or a service; very many when there was none. */
    double hoursSinceChange() {
        double hours = 1e6;
        for (JournalEntry entry : journal.entries()) {
            if (entry instanceof WeirMove || entry instanceof Service) {
                hours = Duration.between(entry.at(), now).toMinutes() / 60.0;
            }
        }
        return hours;
    }

    /** 1 for too dry, -1 for too wet, 0 for in band. */
    static int wantedWay(double amount) {
        return amount < Target.AMOUNT_BAND.low() ? 1 : amount > Target.AMOUNT_BAND.high() ? -1 : 0;
    }
}
