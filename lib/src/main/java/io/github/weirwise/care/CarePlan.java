package io.github.weirwise.care;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is due on one unit at one moment, by its journal.
 *
 * <p>A task that the journal does not tell of counts from the first start, or from the journal's first entry; in an empty
 * journal everything counts from now. A power cut and the protective switch are to be tried at the start already.
 *
 * @param now the moment
 * @param items all tasks, the one due first in front
 */
public record CarePlan(Instant now, List<CareItem> items) {
    /** Copies the list. */
    public CarePlan {
        Objects.requireNonNull(now, "now");
        items = List.copyOf(items);
    }

    /** The plan by what the journal tells up to a moment. */
    public static CarePlan of(Journal journal, Instant now) {
        Journal known = journal.until(now);
        Instant begin = begin(known).orElse(now);
        return new CarePlan(
                now,
                Stream.of(CareTask.values())
                        .map(task -> CareItem.of(CareInterval.of(task, known), TaskDone.last(known, task), begin, now))
                        .sorted(Comparator.comparing(CareItem::due).thenComparing(CareItem::task))
                        .toList());
    }

    /** The item of a task. */
    public CareItem item(CareTask task) {
        return items.stream().filter(item -> item.task() == task).findFirst().orElseThrow();
    }

    /** What is due or overdue, in order. */
    public List<CareItem> toDo() {
        return items.stream()
                .filter(item -> item.state().compareTo(CareState.DUE) >= 0)
                .toList();
    }

    private static Optional<Instant> begin(Journal journal) {
        Optional<Instant> start = journal.all(Happening.class).stream()
                .filter(happening -> happening.kind() == Happening.Kind.FIRST_START)
                .map(Happening::at)
                .reduce((earlier, later) -> later);
        return start.isPresent()
                ? start
                : journal.entries().stream().findFirst().map(entry -> entry.at());
    }
}
