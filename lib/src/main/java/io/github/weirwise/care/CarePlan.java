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
 * @since 0.1
 */
public record CarePlan(Instant now, List<CareItem> items) {
    /** Copies the list. */
    public CarePlan {
        Objects.requireNonNull(now, "now");
        items = List.copyOf(items);
    }

    /** The plan by what the journal tells up to a moment, the cup emptied at its usual interval. */
    public static CarePlan of(Journal journal, Instant now) {
        return of(journal, now, CareInterval.of(CareTask.EMPTY_CUP, journal.until(now)));
    }

    /**
     * The plan by what the journal tells up to a moment, with the cup emptied before it is full.
     *
     * @param vesselMl what the cup holds, or the container that it drains into, 10 to 1e6 mL
     * @throws io.github.weirwise.report.OutOfRangeException if the vessel is out of its range
     */
    public static CarePlan of(Journal journal, Instant now, double vesselMl) {
        return of(journal, now, CareInterval.ofEmptying(journal.until(now), vesselMl));
    }

    private static CarePlan of(Journal journal, Instant now, CareInterval emptying) {
        Journal known = journal.until(now);
        Instant begin = begin(known).orElse(now);
        List<CareItem> items = Stream.of(CareTask.values())
                .map(task -> task == CareTask.EMPTY_CUP ? emptying : CareInterval.of(task, known))
                .map(interval -> CareItem.of(interval, TaskDone.last(known, interval.task()), begin, now))
                .sorted(Comparator.comparing(CareItem::due).thenComparing(CareItem::task))
                .toList();
        return new CarePlan(now, items);
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
