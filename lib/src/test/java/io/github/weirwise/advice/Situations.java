package io.github.weirwise.advice;

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

/** Situations of the middle unit for tests of the adviser's parts. */
final class Situations {
    static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");
    static final SkimmerUnit UNIT = FirstRoundUnits.middle();

    private Situations() {}

    static Instant hoursAgo(double hours) {
        return NOW.minusSeconds(Math.round(3600 * hours));
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
