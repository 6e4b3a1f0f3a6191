package io.github.weirwise.advice;

import static io.github.weirwise.advice.Situations.NOW;
import static io.github.weirwise.advice.Situations.UNIT;
import static io.github.weirwise.advice.Situations.hoursAgo;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.Weirwise;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Common practice: no lowering cures a clogged pad, so once a flood was answered the pad is looked at where water stands too high. */
class AfterFloodTest {
    private static final double CREST_MM = 205;
    private static final double LOWERED_MM = 190;

    private static List<JournalEntry> floodOverHighLevel() {
        double high = UNIT.target().submergenceMm() + 40;
        return new ArrayList<>(List.of(
                Reading.of(hoursAgo(30), new Observation.FunnelLevel(high)),
                Reading.of(hoursAgo(20), new Observation.FunnelLevel(high)),
                Reading.of(
                        hoursAgo(0.2),
                        new Observation.FunnelLevel(high),
                        new Observation.FoamLook(FoamLookWord.STREAMING)),
                new WeirMove(hoursAgo(0.1), LOWERED_MM, false)));
    }

    private static Step step(List<JournalEntry> entries) {
        return Weirwise.advise(UNIT, UNIT.ratedSettings(CREST_MM), new Journal(entries), NOW)
                .step();
    }

    @Test
    void thePadIsLookedAtFirst() {
        assertThat(step(floodOverHighLevel())).isEqualTo(new Step.Look(LookKind.FILTER_PAD));
    }

    @Test
    void aPadSeenBadIsRinsedBeforeAnythingElseIsWaitedFor() {
        List<JournalEntry> entries = floodOverHighLevel();
        entries.add(Reading.of(hoursAgo(0.05), new Observation.Inspection(Part.FILTER_PAD, Finding.BAD)));
        assertThat(step(entries))
                .isInstanceOfSatisfying(
                        Step.ServicePart.class,
                        service -> assertThat(service.part()).isEqualTo(Part.FILTER_PAD));
    }

    @Test
    void whereThePadIsSoundTheFoamIsLookedAtAfterTwentyMinutes() {
        List<JournalEntry> entries = floodOverHighLevel();
        entries.add(Reading.of(hoursAgo(0.05), new Observation.Inspection(Part.FILTER_PAD, Finding.GOOD)));
        assertThat(step(entries)).isInstanceOf(Step.Hold.class);
    }

    private static List<JournalEntry> rinsedAndStreaming(double levelMm) {
        return List.of(
                new Service(hoursAgo(1), Part.FILTER_PAD),
                Reading.of(
                        hoursAgo(0.1),
                        new Observation.FunnelLevel(levelMm),
                        new Observation.FoamLook(FoamLookWord.STREAMING)));
    }

    @Test
    void aRinsedPadIsNoReasonToLeaveAFloodAlone() {
        double wanted = UNIT.target().submergenceMm();
        assertThat(step(rinsedAndStreaming(wanted))).isInstanceOf(Step.MakeSafe.class);
        assertThat(step(rinsedAndStreaming(wanted + 10))).isInstanceOf(Step.MakeSafe.class);
    }

    @Test
    void aLevelThatTheRinseLeftFarTooLowIsNotLoweredFurtherButTheAirIsTurnedDown() {
        assertThat(step(rinsedAndStreaming(UNIT.target().submergenceMm() - 8)))
                .isInstanceOfSatisfying(
                        Step.MakeSafe.class, safe -> assertThat(safe.how()).isEqualTo(SafeWay.LESS_AIR));
    }

    /** A flood that goes on is acted on again in the same answer; over water that is held up by turning the air down. */
    @Test
    void whatStreamsAfterTheLoweringIsMadeSafeAgain() {
        List<JournalEntry> high = floodOverHighLevel();
        high.add(Reading.of(hoursAgo(0), new Observation.FoamLook(FoamLookWord.STREAMING)));
        assertThat(step(high))
                .isInstanceOfSatisfying(
                        Step.MakeSafe.class, safe -> assertThat(safe.how()).isEqualTo(SafeWay.LESS_AIR));
        List<JournalEntry> plain = List.of(
                Reading.of(hoursAgo(0.5), new Observation.FoamLook(FoamLookWord.STREAMING)),
                new WeirMove(hoursAgo(0.4), LOWERED_MM, false),
                Reading.of(hoursAgo(0), new Observation.FoamLook(FoamLookWord.STREAMING)));
        assertThat(step(plain))
                .isInstanceOfSatisfying(
                        Step.MakeSafe.class, safe -> assertThat(safe.how()).isEqualTo(SafeWay.LOWER_WEIR));
    }

    /** What holds the water up is looked for while the air rests; when its time is over the air comes back whatever is not known. */
    @Test
    void thePadIsLookedAtWhileTheAirRestsAndNeverInItsPlace() {
        List<JournalEntry> entries = floodOverHighLevel();
        entries.removeIf(entry -> entry instanceof WeirMove);
        entries.add(new SettingChange(hoursAgo(0.1), SettingChange.Knob.AIR, 0));
        assertThat(step(entries)).isEqualTo(new Step.Look(LookKind.FILTER_PAD));
        assertThat(Weirwise.advise(UNIT, UNIT.ratedSettings(CREST_MM), new Journal(entries), hoursAgo(-2))
                        .step())
                .isInstanceOfSatisfying(
                        Step.MakeSafe.class, safe -> assertThat(safe.how()).isEqualTo(SafeWay.START_THE_AIR));
    }
}
