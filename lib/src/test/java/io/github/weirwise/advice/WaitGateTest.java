package io.github.weirwise.advice;

import static io.github.weirwise.advice.Situations.NOW;
import static io.github.weirwise.advice.Situations.hours;
import static io.github.weirwise.advice.Situations.hoursAgo;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** How long nothing is judged after what; the hours are those of common practice. */
class WaitGateTest {
    private static final Instant AT = hoursAgo(10);
    private static final Map<Happening.Kind, Duration> AWAY = Map.of(
            Happening.Kind.FED_HEAVILY, hours(18),
            Happening.Kind.HANDS_IN_TANK, hours(18),
            Happening.Kind.CONDITIONER, Duration.ofDays(4),
            Happening.Kind.SEALANT, Duration.ofDays(4),
            Happening.Kind.MEDICATION, Duration.ofDays(4),
            Happening.Kind.FIRST_START, Duration.ofDays(3),
            Happening.Kind.PUMP_RESTARTED, hours(12));

    private static Step.Hold held(JournalEntry... entries) {
        return new WaitGate(Situations.of(entries)).hold().orElseThrow(() -> new AssertionError("nothing is held"));
    }

    private static boolean free(JournalEntry... entries) {
        return new WaitGate(Situations.of(entries)).hold().isEmpty();
    }

    @Test
    void aMovedWeirIsJudgedAfterADay() {
        assertThat(held(new WeirMove(AT, 207, false)))
                .isEqualTo(new Step.Hold(AT.plus(hours(24)), HoldReason.STILL_SETTLING));
        assertThat(free(new WeirMove(hoursAgo(24), 207, false))).isTrue();
        assertThat(free(new WeirMove(hoursAgo(23.9), 207, false))).isFalse();
    }

    @ParameterizedTest
    @EnumSource
    void aServiceIsJudgedAfterADayAndLongerWhereItTakesLonger(Part part) {
        Set<Part> known = EnumSet.of(Part.NECK_AND_CUP, Part.SALT_MIX);
        Duration wanted = !known.contains(part) ? hours(24) : part == Part.SALT_MIX ? hours(48) : hours(42);
        assertThat(held(new Service(AT, part))).isEqualTo(new Step.Hold(AT.plus(wanted), HoldReason.STILL_SETTLING));
    }

    @ParameterizedTest
    @EnumSource
    void whatHappenedIsWaitedForAsLongAsItUsuallyLasts(Happening.Kind kind) {
        Duration away = AWAY.get(kind);
        Happening happening = new Happening(AT, kind);
        if (away == null) {
            assertThat(free(happening)).isTrue();
        } else {
            HoldReason reason = switch (kind) {
                case FIRST_START -> HoldReason.BREAKING_IN;
                case PUMP_RESTARTED -> HoldReason.STILL_SETTLING;
                default -> HoldReason.PASSES_BY_ITSELF;
            };
            assertThat(held(happening)).isEqualTo(new Step.Hold(AT.plus(away), reason));
        }
    }

    @Test
    void theLongestWaitCounts() {
        Step.Hold hold = held(
                new Happening(AT, Happening.Kind.CONDITIONER),
                new WeirMove(hoursAgo(2), 206, false),
                new Happening(hoursAgo(1), Happening.Kind.FED_HEAVILY));
        assertThat(hold.until()).isEqualTo(AT.plus(Duration.ofDays(4)));
        assertThat(hold.reason()).isEqualTo(HoldReason.PASSES_BY_ITSELF);
    }

    @Test
    void readingsAloneHoldNothing() {
        assertThat(free(Situations.onTarget(NOW))).isTrue();
    }

    /** Four hours after a change most of what runs into the cup is of the new setting. */
    @Test
    void anAmountIsJudgeableWhenMostOfItRanAfterTheChange() {
        assertThat(judgeable(Situations.onTarget(NOW))).isTrue();
        assertThat(judgeable()).isFalse();
        assertThat(judgeable(Reading.of(NOW, new Observation.FunnelLevel(20)))).isFalse();
        WeirMove move = new WeirMove(hoursAgo(30), 206, false);
        assertThat(judgeable(move, cup(NOW, 24))).isTrue();
        assertThat(judgeable(move, cup(NOW, 54))).isFalse();
        assertThat(judgeable(move, cup(NOW, 52))).isTrue();
        assertThat(judgeable(new Service(hoursAgo(5), Part.AIR_LINE), cup(NOW, 24)))
                .isFalse();
    }

    private static Reading cup(Instant at, double hours) {
        return Reading.of(at, new Observation.CupVolume(200, hours, false));
    }

    private static boolean judgeable(JournalEntry... entries) {
        return new WaitGate(Situations.of(entries)).judgeable();
    }

    @Test
    void waitingTimesAreNotNegativeAndTheFirstTwoNotZero() {
        Duration some = hours(1);
        assertThatThrownBy(() -> new Clocks(some, some, some.negated(), some, some, some))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("negative");
        assertThatThrownBy(() -> new Clocks(some, some, some, some, some, some.negated()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Clocks(Duration.ZERO, some, some, some, some, some))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Clocks(some, Duration.ZERO, some, some, some, some))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new Clocks(some, some, Duration.ZERO, Duration.ZERO, Duration.ZERO, Duration.ZERO).breakIn())
                .isZero();
    }
}
