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
 * @param homeMm where the crest stood before, and stands again afterwards
 * @param end when the last setting has been read
 * @param slopeNow answer to the weir as it was known before, natural logarithm a millimetre; 80 % range
 * @param slopeAfter the 80 % range to be expected afterwards
 * @param stages what is set, in order
 * @param over when it was ended, by hand or because something had to be made safe, or was through
 */
public record Learning(
        double homeMm, Instant end, Range slopeNow, Range slopeAfter, List<Stage> stages, Optional<Instant> over) {
    private static final String ENDED = "Learning plan ended";
    private static final String AT = "(\\S+Z)";
    private static final String NUMBER = "(-?[0-9.]+)";
    private static final Pattern HEAD = Pattern.compile("Learning plan until " + AT + ", then back to " + NUMBER
            + " mm; log a mm " + NUMBER + " to " + NUMBER + " before, " + NUMBER + " to " + NUMBER + " after: (.*)");
    private static final Pattern STAGE = Pattern.compile(
            AT + " to " + AT + " at " + NUMBER + " mm, " + NUMBER + " to " + NUMBER + " mL/day, flood " + NUMBER);

    /**
     * One setting that is held.
     *
     * @param from when it is set
     * @param until when it is read for the last time
     * @param crestMm where the crest stands
     * @param mlPerDay amount to be expected on its last day
     * @param floodChance greatest chance of a flood on any of its days, 0 to 1
     */
    public record Stage(Instant from, Instant until, double crestMm, Range mlPerDay, double floodChance) {}

    /** Copies the list; rejects nulls. */
    public Learning {
        Objects.requireNonNull(end, "end");
        Objects.requireNonNull(slopeNow, "slopeNow");
        Objects.requireNonNull(slopeAfter, "slopeAfter");
        Objects.requireNonNull(over, "over");
        stages = List.copyOf(stages);
    }

    /** A plan of the library, for a unit whose crest stands at {@code homeMm}. */
    public static Learning of(LearningPlan plan, double homeMm) {
        return new Learning(
                homeMm,
                plan.end(),
                plan.slopeNow(),
                plan.slopeAfter(),
                plan.stages().stream()
                        .map(stage -> new Stage(
                                stage.from(),
                                stage.until(),
                                stage.weirCrestMm(),
                                stage.skimmateMlPerDay(),
                                stage.floodChance()))
                        .toList(),
                Optional.empty());
    }

    /** Whether it is under way. */
    public boolean runs() {
        return over.isEmpty();
    }

    /** The number of the setting that is due at a moment, from 0; as many as there are once all are through. */
    public int stageAt(Instant moment) {
        int number = 0;
        while (number < stages.size() && !moment.isBefore(stages.get(number).until())) {
            number++;
        }
        return number;
    }

    /** The note with which it begins. */
    public Note begin(Instant at) {
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "Learning plan until %s, then back to %.1f mm; log a mm %.4f to %.4f before, %.4f to %.4f after: ",
                end,
                homeMm,
                slopeNow.low(),
                slopeNow.high(),
                slopeAfter.low(),
                slopeAfter.high()));
        for (Stage stage : stages) {
            text.append(String.format(
                    Locale.ROOT,
                    "%s to %s at %.1f mm, %.1f to %.1f mL/day, flood %.4f; ",
                    stage.from(),
                    stage.until(),
                    stage.crestMm(),
                    stage.mlPerDay().low(),
                    stage.mlPerDay().high(),
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
        return new Learning(homeMm, end, slopeNow, slopeAfter, stages, Optional.of(over.orElse(at)));
    }

    /** Whether a note is about a plan. */
    public static boolean is(Note note) {
        return note.text().strip().equals(ENDED) || read(note.text()).isPresent();
    }

    private static Optional<Learning> read(String text) {
        Matcher head = HEAD.matcher(text.strip());
        if (!head.matches()) {
            return Optional.empty();
        }
        try {
            List<Stage> stages = new ArrayList<>();
            Matcher stage = STAGE.matcher(head.group(7));
            while (stage.find()) {
                stages.add(new Stage(
                        Instant.parse(stage.group(1)),
                        Instant.parse(stage.group(2)),
                        number(stage, 3),
                        new Range(number(stage, 4), number(stage, 5)),
                        number(stage, 6)));
            }
            return stages.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Learning(
                            number(head, 2),
                            Instant.parse(head.group(1)),
                            new Range(number(head, 3), number(head, 4)),
                            new Range(number(head, 5), number(head, 6)),
                            stages,
                            Optional.empty()));
        } catch (DateTimeException | IllegalArgumentException e) {
            // Somebody wrote a note that only looks like one.
            return Optional.empty();
        }
    }

    private static double number(Matcher text, int group) {
        return Double.parseDouble(text.group(group));
    }
}
