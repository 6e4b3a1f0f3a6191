package io.github.weirwise.advice;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.Weirwise;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the trade does before it takes a part out: looks; and what it does when the cup runs over. */
class LookBeforeServiceTest {
    private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");
    private final SkimmerUnit unit = FirstRoundUnits.middle();
    private final Settings atTarget = unit.ratedSettings(205);

    private static Reading routine(int daysAgo, double levelMm, double ml, boolean full, FoamLookWord look) {
        return Reading.of(
                NOW.minus(Duration.ofDays(daysAgo)),
                new Observation.FunnelLevel(levelMm),
                new Observation.CupVolume(ml, 24, full),
                new Observation.Darkness(DarknessWord.DARK_TEA),
                new Observation.FoamLook(look));
    }

    private Step step(List<JournalEntry> entries) {
        return Weirwise.advise(unit, atTarget, new Journal(entries), NOW).step();
    }

    private static List<JournalEntry> collapsed() {
        List<JournalEntry> entries = new ArrayList<>();
        entries.add(routine(4, 22, 250, false, FoamLookWord.CREAMY));
        entries.add(routine(3, 21, 230, false, FoamLookWord.CREAMY));
        entries.add(routine(1, 20, 9, false, FoamLookWord.LOW_IN_NECK));
        entries.add(routine(0, 20, 2, false, FoamLookWord.NONE));
        return entries;
    }

    @Test
    void noPartIsTakenOutThatNobodyHasLookedAt() {
        assertThat(step(collapsed())).isInstanceOf(Step.Look.class);
    }

    @Test
    void aPartFoundBadIsServicedAndTheWeirLeftAlone() {
        List<JournalEntry> entries = collapsed();
        entries.add(Reading.of(NOW, new Observation.Inspection(Part.NECK_AND_CUP, Finding.BAD)));
        assertThat(step(entries)).isInstanceOfAny(Step.Look.class, Step.ServicePart.class);
        entries.add(Reading.of(
                NOW,
                new Observation.AirFlow(150),
                new Observation.Salinity(35),
                new Observation.Inspection(Part.AIR_LINE, Finding.GOOD)));
        assertThat(step(entries)).isEqualTo(new Step.ServicePart(Part.NECK_AND_CUP));
    }

    @Test
    void afterSaltWasMixedTwoDaysPassBeforeTheWeirIsTouched() {
        List<JournalEntry> entries = collapsed();
        entries.add(new Service(NOW.minus(Duration.ofHours(30)), Part.SALT_MIX));
        assertThat(step(entries)).isInstanceOfSatisfying(Step.Hold.class, hold -> {
            assertThat(hold.reason()).isEqualTo(HoldReason.STILL_SETTLING);
            assertThat(hold.until()).isEqualTo(NOW.plus(Duration.ofHours(18)));
        });
    }

    @Test
    void theAirIsNotStoppedAgainForFearOfWhatWasSeenBeforeTheStop() {
        List<JournalEntry> entries = new ArrayList<>();
        entries.add(new Happening(NOW.minus(Duration.ofHours(40)), Happening.Kind.CONDITIONER));
        entries.add(routine(1, 26, 1000, true, FoamLookWord.STREAMING));
        entries.add(new Happening(NOW.minus(Duration.ofHours(23)), Happening.Kind.PUMP_STOPPED));
        entries.add(new Happening(NOW.minus(Duration.ofHours(1)), Happening.Kind.PUMP_RESTARTED));
        assertThat(step(entries)).isEqualTo(new Step.Look(LookKind.FOAM_LOOK));
    }

    @Test
    void aFullCupWithoutAnyAdditiveLowersTheWeirOrLooksButNeverRaisesIt() {
        List<JournalEntry> entries = new ArrayList<>();
        entries.add(routine(1, 42, 1000, true, FoamLookWord.RUNNY));
        entries.add(routine(0, 43, 1000, true, FoamLookWord.STREAMING));
        Step step = step(entries);
        assertThat(step).isInstanceOfAny(Step.Look.class, Step.MoveWeir.class, Step.MakeSafe.class);
        if (step instanceof Step.MoveWeir move) {
            assertThat(move.byMm()).isNegative();
        }
    }
}
