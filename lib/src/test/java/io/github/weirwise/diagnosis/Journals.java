package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Invented journals of the middle unit, whose weir stands where its data sheet wants it. */
final class Journals {
    static final Instant NOW = Instant.parse("2026-03-09T08:00:00Z");
    static final SkimmerUnit UNIT = FirstRoundUnits.middle();
    static final Settings SET = UNIT.ratedSettings(205);

    private Journals() {}

    static Instant hoursAgo(double hours) {
        return NOW.minus(Duration.ofMinutes(Math.round(60 * hours)));
    }

    /** A unit on target on some mornings up to now. */
    static List<JournalEntry> onTarget(int mornings) {
        List<JournalEntry> entries = new ArrayList<>();
        for (int i = mornings - 1; i >= 0; i--) {
            entries.add(seen(24 * i, 22, 250));
        }
        return entries;
    }

    static Reading seen(double hoursAgo, double levelMm, double mlPerDay) {
        return Reading.of(
                hoursAgo(hoursAgo),
                new Observation.FunnelLevel(levelMm),
                new Observation.CupVolume(mlPerDay, 24, false),
                new Observation.Darkness(DarknessWord.DARK_TEA),
                new Observation.FoamLook(mlPerDay < 60 ? FoamLookWord.STIFF : FoamLookWord.CREAMY));
    }

    /** On target for some mornings, then dry for two, with one more look at the unit now. */
    static Journal driedOut(Observation... looks) {
        List<JournalEntry> entries = new ArrayList<>();
        for (int day = 6; day > 2; day--) {
            entries.add(seen(24 * day, 22, 250));
        }
        entries.add(seen(24, 20, 40));
        entries.add(seen(0.5, 19.5, 25));
        entries.add(Reading.of(hoursAgo(0.2), looks));
        return new Journal(entries);
    }

    /** On target for some mornings, then dry for two with the level so much lower, with one more look at the unit now. */
    static Journal sank(double byMm, Observation... looks) {
        List<JournalEntry> entries = new ArrayList<>();
        for (int day = 6; day > 2; day--) {
            entries.add(seen(24 * day, 22, 250));
        }
        entries.add(seen(24, 22 - byMm, 60));
        entries.add(seen(0.5, 22 - byMm, 50));
        entries.add(Reading.of(hoursAgo(0.2), looks));
        return new Journal(entries);
    }

    static Belief belief(Journal journal) {
        return belief(journal, BeliefOptions.DEFAULT);
    }

    static Belief belief(Journal journal, BeliefOptions options) {
        return Belief.of(UNIT, SET, journal, NOW, options);
    }

    static Diagnosis diagnosis(Journal journal) {
        return belief(journal).diagnosis();
    }
}
