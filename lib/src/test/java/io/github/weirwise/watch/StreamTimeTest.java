package io.github.weirwise.watch;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.watch.StreamTime.Passage;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A clock may jump; the stream goes on, and no single wrong stamp carries it away. */
class StreamTimeTest {
    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");

    private final StreamTime time = new StreamTime(Duration.ofMinutes(20), Duration.ofHours(2));

    @Test
    void valuesInOrderPassAtOnce() {
        for (int minute = 0; minute < 600; minute += 30) {
            assertThat(pass(minute).values()).hasSize(1);
        }
        assertThat(time.newest()).isEqualTo(at(570));
    }

    @Test
    void aValueALittleLateStillCountsAndDoesNotTurnTimeBack() {
        pass(100);
        assertThat(pass(85).values()).hasSize(1);
        assertThat(time.newest()).isEqualTo(at(100));
    }

    @Test
    void oneWrongStampIsPassedOver() {
        pass(0);
        assertThat(pass(1_000_000).values()).isEmpty();
        assertThat(pass(1).values()).hasSize(1);
        assertThat(pass(-1_000_000).values()).isEmpty();
        Passage after = pass(2);
        assertThat(after.values()).hasSize(1);
        assertThat(after.jump()).isEmpty();
        assertThat(time.passedOver()).isEqualTo(2);
    }

    @Test
    void aStepOfTheClockIsBelievedOnceThreeValuesTellIt() {
        pass(0);
        assertThat(pass(-500).values()).isEmpty();
        assertThat(pass(-499).values()).isEmpty();
        Passage third = pass(-498);
        assertThat(third.values()).extracting(SensorValue::at).containsExactly(at(-500), at(-499), at(-498));
        assertThat(third.jump()).hasValueSatisfying(jump -> {
            assertThat(jump.isBack()).isTrue();
            assertThat(jump.from()).isEqualTo(at(0));
            assertThat(jump.to()).isEqualTo(at(-500));
        });
        assertThat(pass(-497).values()).hasSize(1);
    }

    @Test
    void afterAGapNothingIsLost() {
        pass(0);
        pass(600);
        pass(601);
        assertThat(pass(602).values()).hasSize(3);
        assertThat(time.passedOver()).isZero();
    }

    @Test
    void wrongStampsThatDisagreeWithEachOtherAreNeverBelieved() {
        pass(0);
        for (int i = 1; i < 50; i++) {
            assertThat(pass(10_000 * i).values()).isEmpty();
        }
        assertThat(pass(5).values()).hasSize(1);
    }

    /** Whatever comes: values that pass follow each other within the limits, or a jump is told. */
    @Test
    void whatPassesFollowsOrIsToldAsAJump() {
        Random random = new Random(7);
        long minute = 0;
        List<Instant> passed = new ArrayList<>();
        long in = 0;
        for (int i = 0; i < 20_000; i++) {
            minute += random.nextInt(10);
            minute += random.nextInt(500) == 0 ? random.nextInt(20_000) - 10_000 : 0;
            long stamp = random.nextInt(50) == 0 ? random.nextInt(1_000_000) - 500_000 : minute - random.nextInt(15);
            Passage passage = pass(stamp);
            in++;
            for (int k = 0; k < passage.values().size(); k++) {
                Instant each = passage.values().get(k).at();
                boolean jumped = k == 0 && passage.jump().isPresent();
                if (!jumped && !passed.isEmpty()) {
                    Instant before = passed.get(passed.size() - 1);
                    assertThat(Duration.between(before, each).abs()).isLessThanOrEqualTo(Duration.ofMinutes(140));
                }
                passed.add(each);
            }
        }
        assertThat(passed.size() + time.passedOver()).isBetween(in - 2, in);
        assertThat(passed.size()).isGreaterThan(18_000);
    }

    private Passage pass(long minute) {
        return time.pass(new SensorValue(at(minute), SensorKind.SALINITY, 35));
    }

    private static Instant at(long minute) {
        return START.plusSeconds(60 * minute);
    }
}
