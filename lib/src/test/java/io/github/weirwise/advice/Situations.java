package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.diagnosis.BeliefOptions;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** Situations of the middle unit for tests of the adviser's parts; a small belief, because the parts do not hang on its size. */
final class Situations {
    static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");
    static final SkimmerUnit UNIT = FirstRoundUnits.middle();
    private static final double CREST_MM = 205;

    private Situations() {}

    static Instant hoursAgo(double hours) {
        return NOW.minusSeconds(Math.round(3600 * hours));
    }

    static Situation of(JournalEntry... entries) {
        return of(CREST_MM, entries);
    }

    static Situation of(double crestMm, JournalEntry... entries) {
        Journal journal = new Journal(List.of(entries));
        AdviserOptions usual = AdviserOptions.DEFAULT;
        AdviserOptions options = new AdviserOptions(new BeliefOptions(200, 1), usual.clocks(), usual.looks());
        Belief belief = Belief.of(UNIT, UNIT.ratedSettings(crestMm), journal, NOW, options.belief());
        return Situation.of(belief, journal, NOW, options);
    }

    /** What the guard sees of the same journal. */
    static GuardScene scene(double crestMm, JournalEntry... entries) {
        return GuardScene.of(
                UNIT, UNIT.ratedSettings(crestMm), new Journal(List.of(entries)), NOW, AdviserOptions.DEFAULT.looks());
    }

    /** A daily round that shows a unit on target. */
    static Reading onTarget(Instant at) {
        return round(at, 22, 255, DarknessWord.DARK_TEA, FoamLookWord.CREAMY);
    }

    static Reading round(Instant at, double levelMm, double mlPerDay, DarknessWord dark, FoamLookWord look) {
        return Reading.of(
                at,
                new Observation.FunnelLevel(levelMm),
                new Observation.CupVolume(mlPerDay, 24, false),
                new Observation.Darkness(dark),
                new Observation.FoamLook(look));
    }

    static Duration hours(long hours) {
        return Duration.ofHours(hours);
    }
}
