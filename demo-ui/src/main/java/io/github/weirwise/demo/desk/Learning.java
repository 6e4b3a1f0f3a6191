package io.github.weirwise.demo.desk;

import io.github.weirwise.diagnosis.LearningPlan;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Note;
import io.github.weirwise.report.Range;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A plan to learn a unit, kept in its journal as a note from its beginning on, so that it outlives the window. Whether it runs is
 * for the newest such note to say.
 *
 * @param plan what is set, and what it will tell
 * @param over when it was ended, by hand or because something had to be made safe, or was through
 */
public record Learning(LearningPlan plan, Optional<Instant> over) {
    private static final String ENDED = "Learning plan ended";
    private static final Range NO_AIR = new Range(0, 0);
    private static final String AT = "(\\S+Z)";
    private static final String NUMBER = "(-?[0-9.]+)";
    private static final Pattern HEAD = Pattern.compile("Learning plan until " + AT + ", then back to " + NUMBER
            + " mm; log a mm " + NUMBER + " to " + NUMBER + " before, " + NUMBER + " to " + NUMBER + " after: (.*)");
    private static final Pattern STAGE = Pattern.compile(
            AT + " to " + AT + " at " + NUMBER + " mm, " + NUMBER + " to " + NUMBER + " mL/day, flood " + NUMBER);

    /** Rejects nulls. */
    public Learning {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(over, "over");
    }

    /** A plan that begins. */
    public static Learning of(LearningPlan plan) {
        return new Learning(plan, Optional.empty());
    }

    /** What is set, in order. */
    public List<LearningPlan.Stage> stages() {
        return plan.stages();
    }

    /** Whether it is under way. */
    public boolean runs() {
        return over.isEmpty();
    }

    /** The note with which it begins. */
    public Note begin(Instant at) {
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "Learning plan until %s, then back to %.1f mm; log a mm %.4f to %.4f before, %.4f to %.4f after: ",
                plan.end(),
                plan.homeCrestMm(),
                plan.slopeNow().low(),
                plan.slopeNow().high(),
                plan.slopeAfter().low(),
                plan.slopeAfter().high()));
        for (LearningPlan.Stage stage : stages()) {
            text.append(String.format(
                    Locale.ROOT,
                    "%s to %s at %.1f mm, %.1f to %.1f mL/day, flood %.4f; ",
                    stage.from(),
                    stage.until(),
                    stage.weirCrestMm(),
                    stage.skimmateMlPerDay().low(),
                    stage.skimmateMlPerDay().high(),
                    stage.floodChance()));
        }
        return new Note(at, text.toString().strip());
    }

    /** The note with which whatever plan runs is ended. */
    public static Note end(Instant at) {
        return new Note(at, ENDED);
    }

    /** The newest plan in a journal. */
    public static Optional<Learning> in(Journal journal) {
        Optional<Learning> newest = Optional.empty();
        for (Note note : journal.all(Note.class)) {
            Optional<Learning> begun = read(note.text());
            if (begun.isPresent()) {
                newest = begun;
            } else if (note.text().strip().equals(ENDED)) {
                newest = newest.map(plan -> plan.ended(note.at()));
            }
        }
        return newest;
    }

    private Learning ended(Instant at) {
        return new Learning(plan, Optional.of(over.orElse(at)));
    }

    private static Optional<Learning> read(String text) {
        Matcher head = HEAD.matcher(text.strip());
        if (!head.matches()) {
            return Optional.empty();
        }
        try {
            List<LearningPlan.Stage> stages = new ArrayList<>();
            Matcher stage = STAGE.matcher(head.group(7));
            while (stage.find()) {
                stages.add(new LearningPlan.Stage(
                        Instant.parse(stage.group(1)),
                        Instant.parse(stage.group(2)),
                        number(stage, 3),
                        // The plan sets the weir alone; air and days out are not asked for again.
                        0,
                        new Range(number(stage, 4), number(stage, 5)),
                        number(stage, 6)));
            }
            return stages.isEmpty()
                    ? Optional.empty()
                    : Optional.of(of(new LearningPlan(
                            stages,
                            Instant.parse(head.group(1)),
                            number(head, 2),
                            0,
                            0,
                            new Range(number(head, 3), number(head, 4)),
                            new Range(number(head, 5), number(head, 6)),
                            NO_AIR,
                            NO_AIR)));
        } catch (DateTimeException | IllegalArgumentException e) {
            // Somebody wrote a note that only looks like one.
            return Optional.empty();
        }
    }

    private static double number(Matcher text, int group) {
        return Double.parseDouble(text.group(group));
    }
}
