package io.github.weirwise.lab;

import io.github.weirwise.lab.rival.Visit;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Changes of a journal so small that the answer should not change. */
enum SmallChange {
    /** The newest level read a tenth of a millimetre higher. */
    LEVEL {
        @Override
        Visit of(Visit visit) {
            return inNewest(
                    visit,
                    Observation.FunnelLevel.class,
                    seen -> new Observation.FunnelLevel(((Observation.FunnelLevel) seen).mm() + 0.1));
        }
    },
    /** The newest cup read a millilitre fuller. */
    CUP {
        @Override
        Visit of(Visit visit) {
            return inNewest(visit, Observation.CupVolume.class, seen -> {
                Observation.CupVolume cup = (Observation.CupVolume) seen;
                return new Observation.CupVolume(cup.ml() + 1, cup.hours(), cup.full());
            });
        }
    },
    /** All readers under other names. */
    READERS {
        @Override
        Visit of(Visit visit) {
            return with(
                    visit,
                    visit.journal().entries().stream()
                            .map(entry -> entry instanceof Reading reading
                                    ? new Reading(reading.at(), "x " + reading.by(), reading.observations())
                                    : entry)
                            .toList());
        }
    },
    /** The last entry twice. */
    TWICE {
        @Override
        Visit of(Visit visit) {
            List<JournalEntry> entries = new ArrayList<>(visit.journal().entries());
            entries.add(entries.get(entries.size() - 1));
            return with(visit, entries);
        }
    },
    /** Asked three hours later. */
    LATER {
        @Override
        Visit of(Visit visit) {
            return new Visit(
                    visit.sheet(), visit.start(), visit.journal(), visit.now().plus(Duration.ofHours(3)));
        }
    };

    /** The visit with this change alone. */
    abstract Visit of(Visit visit);

    private static Visit with(Visit visit, List<JournalEntry> entries) {
        return new Visit(visit.sheet(), visit.start(), new Journal(entries), visit.now());
    }

    private static Visit inNewest(Visit visit, Class<? extends Observation> kind, UnaryOperator<Observation> change) {
        List<JournalEntry> entries = new ArrayList<>(visit.journal().entries());
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (entries.get(i) instanceof Reading reading && reading.find(kind).isPresent()) {
                List<Observation> seen = reading.observations().stream()
                        .map(each -> kind.isInstance(each) ? change.apply(each) : each)
                        .toList();
                entries.set(i, new Reading(reading.at(), reading.by(), seen));
                break;
            }
        }
        return with(visit, entries);
    }
}
