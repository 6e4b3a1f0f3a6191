package io.github.weirwise.care;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.report.Work;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A care task was done.
 *
 * <p>A service in the journal counts for the tasks of its part, an emptied cup for that, a reading for the daily look. Tasks
 * that the journal has no part for - a replaced pad, a tested switch - are kept as a note whose text begins with
 * {@link #MARK} and the task's name; {@link #asNote} writes one. A larger task counts for the smaller ones in it.
 *
 * @param at when
 * @param task what
 * @since 0.1
 */
public record TaskDone(Instant at, CareTask task) {
    /** Begins the text of a note that tells of a task. */
    public static final String MARK = "Care done: ";

    /** Rejects nulls. */
    public TaskDone {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(task, "task");
    }

    /** All that a journal tells of, oldest first. */
    public static List<TaskDone> in(Journal journal) {
        List<TaskDone> done = new ArrayList<>();
        for (JournalEntry entry : journal.entries()) {
            Work.step();
            told(entry).stream()
                    .flatMap(task -> Stream.concat(Stream.of(task), task.includes().stream()))
                    .distinct()
                    .forEach(task -> done.add(new TaskDone(entry.at(), task)));
        }
        return List.copyOf(done);
    }

    /** The newest time that a journal tells of a task, if it does. */
    public static Optional<Instant> last(Journal journal, CareTask task) {
        List<Instant> times = times(journal, task);
        return times.isEmpty() ? Optional.empty() : Optional.of(times.get(times.size() - 1));
    }

    /** This as an entry for the journal. */
    public JournalEntry asNote() {
        return new Note(at, MARK + task.name());
    }

    /** When a task was done, oldest first. */
    static List<Instant> times(Journal journal, CareTask task) {
        return in(journal).stream()
                .filter(done -> done.task() == task)
                .map(TaskDone::at)
                .toList();
    }

    private static List<CareTask> told(JournalEntry entry) {
        if (entry instanceof Service service) {
            return CareTask.of(service.part());
        }
        if (entry instanceof Note note) {
            return Stream.of(CareTask.values())
                    .filter(task -> note.text().strip().equals(MARK + task.name()))
                    .toList();
        }
        if (entry instanceof Happening happening) {
            return happening.kind() == Happening.Kind.CUP_EMPTIED ? List.of(CareTask.EMPTY_CUP) : List.of();
        }
        return entry instanceof Reading ? List.of(CareTask.LOOK) : List.of();
    }
}
