package io.github.weirwise.care;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Each span between two services tells what it would tell if the rest of the journal were not there. */
class FoulingTest {
    private static final Instant START = Instant.parse("2026-03-01T09:00:00Z");

    @Test
    void aSpanTellsTheSameAloneAsAmongOthers() {
        Random random = new Random(5);
        int told = 0;
        for (int run = 0; run < 300; run++) {
            Journal journal = journal(random);
            for (CareTask task : CareTask.values()) {
                List<Fouling.Span> alone = alone(journal, task);
                assertThat(Fouling.of(journal, task).spans())
                        .as("%d %s", run, task)
                        .isEqualTo(alone);
                told += alone.size();
            }
        }
        assertThat(told).isGreaterThan(500);
    }

    /** From each service a journal of its own, with what comes before the next one. */
    private static List<Fouling.Span> alone(Journal journal, CareTask task) {
        List<Instant> services = TaskDone.times(journal, task);
        List<Fouling.Span> spans = new ArrayList<>();
        for (int i = 0; i < services.size() && task.part().isPresent(); i++) {
            Instant from = services.get(i);
            Instant to = i + 1 < services.size() ? services.get(i + 1) : Instant.MAX;
            List<JournalEntry> own =
                    new ArrayList<>(List.of(new Service(from, task.part().get())));
            journal.entries().stream()
                    .filter(each -> each.at().isAfter(from) && each.at().isBefore(to))
                    .forEach(own::add);
            spans.addAll(Fouling.of(Journal.of(own.toArray(JournalEntry[]::new)), task)
                    .spans());
        }
        return spans;
    }

    /** Stamps fall together often. */
    private static Journal journal(Random random) {
        List<JournalEntry> entries = new ArrayList<>();
        for (int i = random.nextInt(60); i > 0; i--) {
            Instant at = START.plus(Duration.ofHours(12L * random.nextInt(60)));
            Part part = Part.values()[random.nextInt(4)];
            switch (random.nextInt(5)) {
                case 0 -> entries.add(new Service(at, part));
                case 1 -> entries.add(new WeirMove(at, 200 + random.nextInt(9), false));
                case 2 -> entries.add(Reading.of(at, new Observation.CupVolume(50 + random.nextInt(300), 24, false)));
                default ->
                    entries.add(Reading.of(
                            at,
                            new Observation.Inspection(
                                    part, Finding.values()[random.nextInt(Finding.values().length)])));
            }
        }
        return Journal.of(entries.toArray(JournalEntry[]::new));
    }
}
