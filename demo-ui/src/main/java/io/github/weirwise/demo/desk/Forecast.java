package io.github.weirwise.demo.desk;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Note;
import io.github.weirwise.report.Range;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What was told to follow from a step, kept in the journal as a note, so that the next visit can hold what came against it
 * even if the adviser has changed meanwhile.
 *
 * @param given when it was told
 * @param until when it can be judged
 * @param levelMm level over the funnel base; holds with about 80 % chance
 * @param mlPerDay amount; holds with about 80 % chance
 */
public record Forecast(Instant given, Instant until, Range levelMm, Range mlPerDay) {
    private static final String NUMBER = "(-?[0-9.]+)";
    private static final Pattern TEXT = Pattern.compile("Expected by (\\S+): level " + NUMBER + " to " + NUMBER
            + " mm over the funnel base; " + NUMBER + " to " + NUMBER + " mL/day of skimmate");

    /** Rejects nulls. */
    public Forecast {
        Objects.requireNonNull(given, "given");
        Objects.requireNonNull(until, "until");
        Objects.requireNonNull(levelMm, "levelMm");
        Objects.requireNonNull(mlPerDay, "mlPerDay");
    }

    /** What an advice expects. */
    public static Forecast of(Advice advice, Instant now) {
        return new Forecast(
                now,
                advice.judgeAt(),
                advice.expectation().submergenceMm(),
                advice.expectation().skimmateMlPerDay());
    }

    /** This as an entry for the journal. */
    public Note asNote() {
        return new Note(
                given,
                String.format(
                        Locale.ROOT,
                        "Expected by %s: level %.1f to %.1f mm over the funnel base; %.1f to %.1f mL/day of skimmate",
                        until,
                        levelMm.low(),
                        levelMm.high(),
                        mlPerDay.low(),
                        mlPerDay.high()));
    }

    /** What an entry tells, if it is one of these notes. */
    public static Optional<Forecast> of(JournalEntry entry) {
        Matcher text = TEXT.matcher(entry instanceof Note note ? note.text().strip() : "");
        try {
            return text.matches()
                    ? Optional.of(
                            new Forecast(entry.at(), Instant.parse(text.group(1)), range(text, 2), range(text, 4)))
                    : Optional.empty();
        } catch (DateTimeException | IllegalArgumentException e) {
            // Somebody wrote a note that only looks like one.
            return Optional.empty();
        }
    }

    private static Range range(Matcher text, int group) {
        return new Range(Double.parseDouble(text.group(group)), Double.parseDouble(text.group(group + 1)));
    }

    /** The newest one in a journal. */
    public static Optional<Forecast> newest(Journal journal) {
        List<JournalEntry> entries = journal.entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            Optional<Forecast> found = of(entries.get(i));
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }
}
