package io.github.weirwise.advice;

import static io.github.weirwise.advice.Situations.NOW;
import static io.github.weirwise.advice.Situations.hours;
import static io.github.weirwise.advice.Situations.hoursAgo;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Reason;
import io.github.weirwise.report.Severity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.Part;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever the step is, the advice says when to look, what to beware of, what to expect and what would prove it wrong. */
class AdviceWriterTest {
    private static final Map<Part, String> PART_CAUTIONS = Map.of(
            Part.NECK_AND_CUP, "advice.caution.noDetergent",
            Part.AIR_LINE, "advice.caution.siphon",
            Part.SALT_MIX, "advice.caution.saltSlowly",
            Part.FILTER_PAD, "advice.caution.notAllAtOnce",
            Part.INJECTOR_PUMP, "advice.caution.aeration",
            Part.INJECTOR_NOZZLE, "advice.caution.aeration",
            Part.RETURN_PUMP, "advice.caution.aeration");

    private final Situation situation = Situations.of(205, Situations.onTarget(hoursAgo(24)), Situations.onTarget(NOW));
    private final AdviceWriter writer = new AdviceWriter(situation, new StepValues(situation), Situations.scene(205));

    private static List<String> keys(Advice advice) {
        return advice.cautions().stream().map(each -> each.text().key()).toList();
    }

    @Test
    void aMoveNeedsThePlugOutALookForAFloodAndADay() {
        Advice up = writer.write(new Step.MoveWeir(4, 209, false));
        assertThat(up.floodLookAt()).hasValue(NOW.plus(Duration.ofMinutes(20)));
        assertThat(up.judgeAt()).isEqualTo(NOW.plus(hours(24)));
        assertThat(keys(up))
                .contains("advice.caution.unplug", "advice.caution.flood", "advice.caution.noDevice")
                .doesNotContain("advice.caution.wetFloor");
        assertThat(up.cautions()).extracting(Warning::severity).isSortedAccordingTo((a, b) -> b.compareTo(a));
        Advice down = writer.write(new Step.MoveWeir(-4, 201, false));
        assertThat(keys(down)).contains("advice.caution.unplug").doesNotContain("advice.caution.flood");
    }

    @Test
    void aHigherWeirPromisesAHigherLevelAndMoreSkimmate() {
        Expectation stay = writer.write(new Step.Hold(NOW.plus(hours(24)), HoldReason.ON_TARGET))
                .expectation();
        Expectation up = writer.write(new Step.MoveWeir(4, 209, false)).expectation();
        Expectation down = writer.write(new Step.MoveWeir(-4, 201, false)).expectation();
        assertThat(up.submergenceMm().low()).isGreaterThan(stay.submergenceMm().low() + 2);
        assertThat(down.submergenceMm().high()).isLessThan(stay.submergenceMm().high() - 2);
        assertThat(up.skimmateMlPerDay().high())
                .isGreaterThan(1.2 * stay.skimmateMlPerDay().high());
        assertThat(down.skimmateMlPerDay().low())
                .isLessThan(0.85 * stay.skimmateMlPerDay().low());
        assertThat(down.darknessPtCo().high()).isGreaterThan(up.darknessPtCo().high());
        for (Expectation each : List.of(stay, up, down)) {
            assertThat(each.chanceOnTarget()).isBetween(0.0, 1.0);
            assertThat(each.skimmateMlPerDay().low())
                    .isPositive()
                    .isLessThan(each.skimmateMlPerDay().high());
        }
        assertThat(stay.chanceOnTarget()).isGreaterThan(0.6);
    }

    @ParameterizedTest
    @EnumSource
    void aServiceHasTheCautionsOfItsPart(Part part) {
        Advice advice = writer.write(new Step.ServicePart(part));
        assertThat(advice.floodLookAt()).hasValue(NOW.plus(Duration.ofMinutes(20)));
        assertThat(advice.judgeAt()).isEqualTo(NOW.plus(part == Part.NECK_AND_CUP ? hours(42) : hours(24)));
        boolean handsIn = part != Part.ADDITIVES && part != Part.SALT_MIX;
        assertThat(keys(advice).contains("advice.caution.unplug")).isEqualTo(handsIn);
        assertThat(keys(advice)).doesNotContain("advice.caution.flood");
        String own = PART_CAUTIONS.get(part);
        List<String> others = new ArrayList<>(PART_CAUTIONS.values());
        others.removeIf(key -> key.equals(own));
        assertThat(keys(advice)).doesNotContainAnyElementsOf(others);
        if (own != null) {
            assertThat(keys(advice)).contains(own);
        }
        assertThat(reasons(advice)).contains("advice.why.partFirst");
    }

    @Test
    void makingSafeComesWithEveryDangerAndTheAirWithItsOwn() {
        Advice air = writer.write(new Step.MakeSafe(SafeWay.STOP_THE_AIR, 0, 205, 0));
        assertThat(keys(air)).contains("advice.caution.wetFloor", "advice.caution.container", "advice.caution.airOff");
        assertThat(air.cautions().get(0).severity()).isEqualTo(Severity.DANGER);
        assertThat(air.floodLookAt()).hasValue(NOW.plus(Duration.ofMinutes(20)));
        assertThat(air.judgeAt()).isEqualTo(NOW.plus(Duration.ofMinutes(20)));
        assertThat(air.wouldChangeIt()).extracting(Phrase::key).containsExactly("advice.mind.flood");
        Advice weir = writer.write(new Step.MakeSafe(SafeWay.LOWER_WEIR, -10, 195, 150));
        assertThat(keys(weir))
                .contains("advice.caution.unplug", "advice.caution.wetFloor")
                .doesNotContain("advice.caution.airOff");
    }

    @Test
    void lookingAndWaitingPutNoHandsIn() {
        Advice look = writer.write(new Step.Look(LookKind.AIR_FLOW));
        assertThat(look.floodLookAt()).isEmpty();
        assertThat(look.judgeAt()).isEqualTo(NOW);
        assertThat(keys(look)).doesNotContain("advice.caution.unplug");
        assertThat(look.wouldChangeIt()).extracting(Phrase::key).containsExactly("advice.mind.look.AIR_FLOW");
        assertThat(reasons(look)).contains("advice.why.lookPays");
        Advice hold = writer.write(new Step.Hold(NOW.plus(hours(7)), HoldReason.STILL_SETTLING));
        assertThat(hold.floodLookAt()).isEmpty();
        assertThat(hold.judgeAt()).isEqualTo(NOW.plus(hours(7)));
        assertThat(hold.wouldChangeIt())
                .extracting(Phrase::key)
                .containsExactly("advice.mind.hold", "advice.mind.flood");
        assertThat(hold.wouldChangeIt().get(0).values())
                .containsExactly(Quantity.of(100, Unit.MILLILITRE_PER_DAY), Quantity.of(600, Unit.MILLILITRE_PER_DAY));
    }

    @Test
    void theReasonsNameWhatWasSeenTheStateTheCausesAndTheNextBestStep() {
        Advice advice = writer.write(new Step.MoveWeir(2, 207, true));
        List<String> keys = reasons(advice);
        assertThat(keys)
                .contains(
                        "advice.why.seen",
                        "advice.why.state",
                        "advice.why.level",
                        "advice.why.amount",
                        "advice.why.likely",
                        "advice.why.cause",
                        "advice.why.choice",
                        "advice.why.chance",
                        "advice.why.size",
                        "advice.why.probe",
                        "advice.why.rival");
        assertThat(reasons(writer.write(new Step.MoveWeir(5, 210, false)))).doesNotContain("advice.why.probe");
        Situation unseen = Situations.of();
        assertThat(reasons(new AdviceWriter(unseen, new StepValues(unseen), Situations.scene(205))
                        .write(new Step.Look(LookKind.CUP_VOLUME))))
                .contains("advice.why.nothingSeen")
                .doesNotContain("advice.why.seen");
    }

    private static List<String> reasons(Advice advice) {
        List<String> keys = new ArrayList<>();
        collect(advice.why(), keys);
        return keys;
    }

    private static void collect(Reason reason, List<String> keys) {
        keys.add(reason.line().key());
        reason.because().forEach(each -> collect(each, keys));
    }

    @Test
    void stepsSayTheirDirectionSizeAndTime() {
        assertThat(say(new Step.MoveWeir(3.5, 208.5, false))).contains("Raise").contains("3.5 mm", "209 mm");
        assertThat(say(new Step.MoveWeir(-3.5, 201.5, false))).contains("Lower").contains("3.5 mm", "202 mm");
        assertThat(StepWords.of(new Step.MoveWeir(1, 206, true), NOW).key()).isEqualTo("advice.step.raiseProbe");
        assertThat(StepWords.of(new Step.MoveWeir(-1, 204, true), NOW).key()).isEqualTo("advice.step.lowerProbe");
        assertThat(say(new Step.Hold(NOW.plus(hours(18)), HoldReason.ON_TARGET)))
                .contains("18 h");
        assertThat(say(new Step.Hold(hoursAgo(2), HoldReason.ON_TARGET))).contains("0 h");
        assertThat(say(new Step.Look(LookKind.INJECTOR_NOZZLE))).contains("8 min");
        for (SafeWay way : SafeWay.values()) {
            assertThat(say(new Step.MakeSafe(way, 0, 205, 75))).isNotBlank();
        }
    }

    private static String say(Step step) {
        return PhraseBook.ENGLISH_METRIC.say(StepWords.of(step, NOW));
    }

    @Test
    void stepsThatAreNoneAreRefused() {
        assertThatThrownBy(() -> new Step.MoveWeir(0, 205, false))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("hold instead");
        assertThatThrownBy(() -> new Step.MoveWeir(50.1, 255.1, false)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Step.Hold(null, HoldReason.ON_TARGET)).isInstanceOf(NullPointerException.class);
        assertThatThrownBy(() -> new Step.Hold(NOW, null)).isInstanceOf(NullPointerException.class);
        assertThatThrownBy(() -> new Step.Look(null)).isInstanceOf(NullPointerException.class);
        assertThatThrownBy(() -> new Step.ServicePart(null)).isInstanceOf(NullPointerException.class);
        assertThatThrownBy(() -> new Step.MakeSafe(null, 0, 205, 150)).isInstanceOf(NullPointerException.class);
        assertThatThrownBy(() -> new Expectation(null, null, null, 1)).isInstanceOf(NullPointerException.class);
    }
}
