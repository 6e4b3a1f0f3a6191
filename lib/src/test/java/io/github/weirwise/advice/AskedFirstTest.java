package io.github.weirwise.advice;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is asked before the weir goes up, and what a full cup says after a flood (common practice). */
class AskedFirstTest {
    private static final Settings START = Situations.UNIT.ratedSettings(205);

    private static Step step(List<JournalEntry> entries) {
        return new Adviser(AdviserOptions.DEFAULT)
                .advise(Situations.UNIT, START, new Journal(entries), Situations.NOW)
                .step();
    }

    private static Reading dry(double hoursAgo, double levelMm) {
        return Situations.round(Situations.hoursAgo(hoursAgo), levelMm, 40, DarknessWord.COFFEE, FoamLookWord.STIFF);
    }

    private static List<JournalEntry> history(double nowMm) {
        List<JournalEntry> entries = new ArrayList<>();
        for (int day = 6; day >= 3; day--) {
            entries.add(Situations.onTarget(Situations.hoursAgo(24.0 * day)));
        }
        entries.add(dry(48, nowMm));
        entries.add(dry(24, nowMm));
        entries.add(new Reading(Situations.hoursAgo(0.2), "", looks()));
        entries.add(dry(0, nowMm));
        return entries;
    }

    private static List<Observation> looks() {
        List<Observation> good = new ArrayList<>();
        for (Part part : Part.values()) {
            if (part != Part.RETURN_PUMP) {
                good.add(new Observation.Inspection(part, Finding.GOOD));
            }
        }
        good.add(new Observation.CrestAgainstMark(0));
        good.add(new Observation.AirFlow(150));
        good.add(new Observation.Salinity(35));
        return good;
    }

    @Test
    void aLevelThatFellByItselfIsAskedAfterTheFlow() {
        assertThat(step(history(12)))
                .isInstanceOfSatisfying(
                        Step.Look.class,
                        look -> assertThat(look.what())
                                .isIn(LookKind.HEAD_OVER_CREST, LookKind.RETURN_FLOW, LookKind.RETURN_PUMP));
    }

    @Test
    void theHeadOnceReadIsNotAskedAgain() {
        List<JournalEntry> entries = history(12);
        entries.add(new Reading(Situations.NOW, "", List.of(new Observation.HeadOverCrest(21))));
        assertThat(step(entries)).isNotEqualTo(new Step.Look(LookKind.HEAD_OVER_CREST));
    }

    @Test
    void aCupFoundFullAfterAFloodWasNotedIsThatFlood() {
        Instant flood = Situations.hoursAgo(13);
        Reading full = Reading.of(
                Situations.NOW,
                new Observation.CupVolume(Situations.UNIT.cupMl(), 72, true),
                new Observation.FoamLook(FoamLookWord.CREAMY));
        List<JournalEntry> before = List.of(Situations.onTarget(Situations.hoursAgo(72)));
        List<JournalEntry> noted = new ArrayList<>(before);
        noted.add(new Happening(flood, Happening.Kind.FLOOD));
        noted.add(full);
        assertThat(step(noted)).isInstanceOf(Step.MakeSafe.class);
        List<JournalEntry> days = new ArrayList<>(before);
        days.add(full);
        assertThat(step(days)).isNotInstanceOf(Step.MakeSafe.class);
        List<JournalEntry> longAgo = new ArrayList<>(before);
        longAgo.add(new Happening(Situations.NOW.minus(Duration.ofHours(60)), Happening.Kind.FLOOD));
        longAgo.add(full);
        assertThat(step(longAgo)).isNotInstanceOf(Step.MakeSafe.class);
    }
}
