package io.github.weirwise.sheet;

import io.github.weirwise.care.CareTask;
import io.github.weirwise.care.TaskDone;
import io.github.weirwise.reading.AdviceGiven;
import io.github.weirwise.reading.AdviceGiven.Followed;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Observation.CupVolume;
import io.github.weirwise.reading.Observation.FunnelLevel;
import io.github.weirwise.reading.Observation.Inspection;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** An invented journal of two months at the Lantern Quay, drawn from a seed. */
public final class SampleJournal {
    private static final double[] CRESTS = {214, 210, 207, 205.4};

    private SampleJournal() {}

    /** Two months that end at an instant: too wet at first, tuned down in four steps, washed once a week. */
    public static Journal twoMonths(Instant end) {
        Instant start = end.minus(Duration.ofDays(56));
        Random random = new Random(42);
        List<JournalEntry> entries = new ArrayList<>();
        entries.add(new Happening(start, Happening.Kind.FIRST_START));
        entries.add(new Note(start.plusSeconds(3600), "Filled with the class; no leaks after two hours."));
        entries.add(new TaskDone(start.plusSeconds(7200), CareTask.REHEARSE_POWER_CUT).asNote());
        for (int step = 0; step < CRESTS.length; step++) {
            Instant at = start.plus(Duration.ofDays(step == 0 ? 0 : 6 + 4L * step));
            if (step > 0) {
                String words =
                        "Lower the weir by " + Math.round(CRESTS[step - 1] - CRESTS[step]) + " mm, then wait a day.";
                entries.add(new AdviceGiven(at.minusSeconds(600), words, step == 2 ? Followed.NO : Followed.YES));
            }
            entries.add(new WeirMove(at, CRESTS[step], step == 1));
        }
        for (int day = 2; day < 56; day += 1 + random.nextInt(2)) {
            entries.add(reading(start.plus(Duration.ofDays(day)), day, random));
        }
        for (int day = 7; day < 50; day += 7) {
            Instant morning = start.plus(Duration.ofDays(day));
            entries.add(new Service(morning.plusSeconds(900), Part.NECK_AND_CUP));
            entries.add(new Service(morning.plusSeconds(1200), Part.FILTER_PAD));
            if (day % 14 == 0) {
                entries.add(new Service(morning.plusSeconds(1500), Part.AIR_LINE));
                entries.add(new Service(morning.plusSeconds(1600), Part.CUP_VENT));
            }
        }
        entries.add(new TaskDone(start.plus(Duration.ofDays(30)).plusSeconds(60), CareTask.TEST_SWITCH).asNote());
        entries.add(new TaskDone(start.plus(Duration.ofDays(31)), CareTask.REPLACE_PAD).asNote());
        entries.add(new Service(start.plus(Duration.ofDays(30)), Part.RETURN_PUMP));
        entries.add(new Service(start.plus(Duration.ofDays(30)), Part.INJECTOR_PUMP));
        entries.add(new Happening(start.plus(Duration.ofDays(38)), Happening.Kind.FED_HEAVILY));
        return new Journal(entries);
    }

    private static Reading reading(Instant at, int day, Random random) {
        double level = day < 10 ? 700 : day < 14 ? 520 : day < 18 ? 340 : 255;
        double fade = 1 - 0.05 * (day % 7);
        double ml = level * fade * Math.exp(0.12 * random.nextGaussian());
        boolean full = ml > 600;
        Finding neck = day % 7 >= 5 ? Finding.DOUBTFUL : Finding.GOOD;
        return new Reading(
                at,
                "trainee " + (1 + random.nextInt(3)),
                List.of(
                        new CupVolume(Math.min(ml, 1000), 24, full),
                        new FunnelLevel(22 + random.nextGaussian()),
                        new Inspection(Part.NECK_AND_CUP, neck)));
    }
}
