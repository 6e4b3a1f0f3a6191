package io.github.weirwise.advice;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.diagnosis.CauseShare;
import io.github.weirwise.diagnosis.Diagnosis;
import io.github.weirwise.diagnosis.Ledgers;
import io.github.weirwise.diagnosis.Verdict;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Reason;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LikelyCausesTest {
    private static final PhraseBook BOOK = PhraseBook.ENGLISH_METRIC;
    private static final Step HOLD = new Step.Hold(Situations.NOW, HoldReason.WITHIN_NOISE);

    @Test
    void oneLikelyCauseIsNamedWithItsChance() {
        LikelyCauses causes = of(Verdict.TOO_DRY, share(Cause.NECK_DIRTY, 0.82), share(Cause.SALINITY_LOW, 0.31));
        assertThat(BOOK.say(causes.headline(HOLD)))
                .isEqualTo("The foam is too dry; most likely: the neck is dirty (80 %).");
    }

    @Test
    void closeCausesAreAllNamed() {
        LikelyCauses causes = of(
                Verdict.TOO_DRY,
                share(Cause.NECK_DIRTY, 0.6),
                share(Cause.SALINITY_LOW, 0.5),
                share(Cause.RETURN_FLOW_DOWN, 0.4),
                share(Cause.CUP_VENT_BLOCKED, 0.1));
        assertThat(BOOK.say(causes.headline(HOLD)))
                .isEqualTo("The foam is too dry; still possible: the neck is dirty, the salinity is too low, "
                        + "the return flow is down.");
    }

    @Test
    void onTargetWithNoLikelyFaultSaysSo() {
        LikelyCauses causes = of(Verdict.ON_TARGET, share(Cause.NOTHING_WRONG, 0.6), share(Cause.NECK_DIRTY, 0.45));
        assertThat(BOOK.say(causes.headline(HOLD))).isEqualTo("The foam is on target, and no part is likely at fault.");
        LikelyCauses fouled = of(Verdict.ON_TARGET, share(Cause.HIGH_LOAD, 0.8), share(Cause.NECK_DIRTY, 0.55));
        assertThat(BOOK.say(fouled.headline(HOLD)))
                .isEqualTo("The foam is on target; likely due for service: neck and cup.");
    }

    @Test
    void aWeirThatMovesOnTargetMovesToItsMiddle() {
        LikelyCauses causes = of(Verdict.ON_TARGET, share(Cause.NOTHING_WRONG, 0.6));
        assertThat(BOOK.say(causes.headline(new Step.MoveWeir(4, 209, false)))).contains("to the dry side");
        assertThat(BOOK.say(causes.headline(new Step.MoveWeir(-4, 201, false)))).contains("to the wet side");
    }

    @Test
    void theCauseThatTheStepIsAboutIsAlwaysTold() {
        LikelyCauses causes = of(
                Verdict.TOO_DRY,
                share(Cause.NECK_DIRTY, 0.8),
                share(Cause.SALINITY_LOW, 0.7),
                share(Cause.RETURN_FLOW_DOWN, 0.6),
                share(Cause.CUP_VENT_BLOCKED, 0.5),
                share(Cause.AIR_LINE_RESTRICTED, 0.4));
        assertThat(BOOK.say(causes.reason(new Step.Look(LookKind.AIR_LINE)).orElseThrow()))
                .contains("the air line is narrowed by salt or a kink: 40 %")
                .doesNotContain("vent");
    }

    @Test
    void whatMakesFoamWetterIsNoReasonForDryFoam() {
        LikelyCauses dry = of(Verdict.TOO_DRY, share(Cause.PAD_CLOGGED, 0.9), share(Cause.HIGH_LOAD, 0.6));
        assertThat(BOOK.say(dry.headline(HOLD))).isEqualTo("The foam is too dry; no cause stands out yet.");
        assertThat(dry.reason(HOLD)).isEmpty();
        LikelyCauses wet = of(Verdict.TOO_WET, share(Cause.PAD_CLOGGED, 0.9), share(Cause.NECK_DIRTY, 0.9));
        assertThat(BOOK.say(wet.headline(HOLD)))
                .contains("the filter pad is clogged")
                .doesNotContain("neck");
    }

    @Test
    void whatSpeaksForItStandsFirstAndWeakEvidenceOnlyWhereThereIsNoStrong() {
        CauseShare mixed = share(
                Cause.NECK_DIRTY,
                0.7,
                "diagnosis.against.strongly",
                "diagnosis.for.weakly",
                "diagnosis.for.strongly",
                "diagnosis.against.weakly");
        assertThat(lines(mixed)).containsExactly("Strong evidence for: the cup", "Strong evidence against: the cup");
        CauseShare weak = share(
                Cause.NECK_DIRTY, 0.7, "diagnosis.against.weakly", "diagnosis.since.nothing", "diagnosis.for.weakly");
        assertThat(lines(weak))
                .containsExactly(
                        "Weak evidence for: the cup", "No service of it is noted.", "Weak evidence against: the cup");
    }

    @Test
    void aChanceIsNeverCertain() {
        LikelyCauses causes = of(Verdict.TOO_DRY, share(Cause.NECK_DIRTY, 0.999));
        assertThat(BOOK.say(causes.headline(HOLD))).endsWith("(over 95 %).");
    }

    private static List<String> lines(CauseShare cause) {
        Reason likely = of(Verdict.TOO_DRY, cause).reason(HOLD).orElseThrow();
        return likely.because().get(0).because().stream()
                .map(each -> BOOK.say(each.line()))
                .toList();
    }

    private static LikelyCauses of(Verdict verdict, CauseShare... causes) {
        Range none = new Range(0, 0);
        Ledgers ledgers = new Ledgers(List.of(), List.of(), none, none);
        return new LikelyCauses(
                new Diagnosis(verdict, Map.of(), List.of(causes), none, none, ledgers, 0, 0, List.of()));
    }

    private static CauseShare share(Cause cause, double chance, String... evidence) {
        List<Reason> lines = List.of(evidence).stream()
                .map(key -> Reason.of(Phrase.of(key, "the cup")))
                .toList();
        return new CauseShare(cause, chance, new Range(0, 1), new Reason(Phrase.of(cause.nameKey()), lines));
    }
}
