package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Seeded journals of daily rounds on the middle first-round unit: amounts wander, things are looked at, done and happen. */
public final class RandomJournals {
    /** When the first day begins. */
    public static final Instant START = Instant.parse("2026-03-02T08:00:00Z");

    /** Crest before the first entry, mm. */
    public static final double CREST_MM = 205;

    private static final int MOST_DAYS = 14;

    private RandomJournals() {}

    /** One of 4 to 14 days, in order of time, no two entries at one moment. */
    public static Journal of(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<JournalEntry> entries = new ArrayList<>();
        double log = 0.8 * random.nextGaussian();
        double crest = CREST_MM;
        int days = random.nextInt(4, MOST_DAYS + 1);
        for (int day = 0; day < days; day++) {
            Instant at = START.plusSeconds(86400L * day + random.nextInt(7200));
            log = 0.9 * log + 0.3 * random.nextGaussian();
            entries.add(round(random, at, log, crest));
            switch (random.nextInt(6)) {
                case 0 -> {
                    double by = random.nextInt(-4, 5);
                    crest += by;
                    log += 0.15 * by;
                    entries.add(new WeirMove(at.plusSeconds(600), crest, false));
                }
                case 1 -> entries.add(new Service(at.plusSeconds(900), any(random, Part.values())));
                case 2 -> entries.add(new Happening(at.plusSeconds(1200), any(random, Happening.Kind.values())));
                default -> {
                    // Most days nothing is done.
                }
            }
        }
        return new Journal(entries);
    }

    private static Reading round(SplittableRandom random, Instant at, double log, double crest) {
        double ml = 250 * Math.exp(log + 0.2 * random.nextGaussian());
        List<Observation> seen = new ArrayList<>();
        seen.add(new Observation.FunnelLevel(Math.round(22 + crest - CREST_MM + 2 * random.nextGaussian())));
        seen.add(new Observation.CupVolume(Math.round(Math.min(1000, ml)), 24, ml > 1000));
        seen.add(new Observation.Darkness(DarknessWord.of(1870 * Math.exp(-0.5 * log + 0.3 * random.nextGaussian()))));
        seen.add(new Observation.FoamLook(look(log)));
        if (random.nextInt(3) == 0) {
            seen.add(new Observation.Inspection(any(random, Part.values()), any(random, Finding.values())));
        }
        if (random.nextInt(4) == 0) {
            seen.add(new Observation.AirFlow(Math.round(150 * Math.exp(0.1 * random.nextGaussian()))));
        }
        return new Reading(at, random.nextInt(4) == 0 ? "Second" : "First", seen);
    }

    private static FoamLookWord look(double log) {
        if (log < -0.85) {
            return FoamLookWord.STIFF;
        }
        return log < 0.85 ? FoamLookWord.CREAMY : FoamLookWord.RUNNY;
    }

    private static <T> T any(SplittableRandom random, T[] values) {
        return values[random.nextInt(values.length)];
    }
}
