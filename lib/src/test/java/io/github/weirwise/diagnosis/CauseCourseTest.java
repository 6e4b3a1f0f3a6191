package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Service;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A cause over time: it grows until it is serviced, or it fades. */
class CauseCourseTest {
    private static final Instant NOW = Instant.parse("2026-03-10T08:00:00Z");
    private static final double ONSET_HOURS = -200;
    private static final double GROWTH_HOURS = 150;
    private static final double SERVICE_HOURS = -60;

    private final SkimmerUnit unit = FirstRoundUnits.middle();

    static Stream<Cause> serviceable() {
        return Arrays.stream(Cause.values()).filter(Cause::serviceable);
    }

    static Stream<Cause> passing() {
        return Arrays.stream(Cause.values()).filter(Cause::passes);
    }

    private Timeline timeline(Journal journal) {
        return new Timeline(unit, unit.ratedSettings(205), journal, NOW);
    }

    private static Instant at(double hours) {
        return NOW.plus(Duration.ofMinutes(Math.round(60 * hours)));
    }

    private static CauseCourse course(Cause cause) {
        return new CauseCourse(cause, 0.8, ONSET_HOURS, GROWTH_HOURS);
    }

    @ParameterizedTest
    @MethodSource("serviceable")
    void isNotThereBeforeItBeginsAndNeverShrinksByItself(Cause cause) {
        Timeline nothingDone = timeline(Journal.EMPTY);
        CauseCourse course = course(cause);
        assertThat(course.sizeAt(ONSET_HOURS - 1, nothingDone)).isZero();
        double before = 0;
        for (double hours = ONSET_HOURS; hours <= 0; hours += 5) {
            double size = course.sizeAt(hours, nothingDone);
            assertThat(size).isBetween(before, 0.8);
            before = size;
        }
        assertThat(before).as("full size in the end").isEqualTo(0.8);
        assertThat(course.sizeAt(ONSET_HOURS + 0.3 * GROWTH_HOURS, nothingDone) < 0.8)
                .as("only what grows starts small")
                .isEqualTo(cause.growth() == Cause.Growth.DAYS);
    }

    @ParameterizedTest
    @MethodSource("serviceable")
    void aServiceOfItsPartEndsItAndOfAnotherPartDoesNot(Cause cause) {
        Part own = cause.servicePart().orElseThrow();
        Part other = own == Part.AIR_LINE ? Part.FILTER_PAD : Part.AIR_LINE;
        CauseCourse course = course(cause);
        Timeline served = timeline(Journal.of(new Service(at(SERVICE_HOURS), own)));
        Timeline otherServed = timeline(Journal.of(new Service(at(SERVICE_HOURS), other)));
        assertThat(course.sizeAt(SERVICE_HOURS - 1, served)).isPositive();
        assertThat(course.sizeAt(SERVICE_HOURS + 1, served)).isZero();
        assertThat(course.sizeAt(0, served)).isZero();
        assertThat(course.sizeAt(0, otherServed)).isPositive();
        Timeline tooEarly = timeline(Journal.of(new Service(at(ONSET_HOURS - 10), own)));
        assertThat(course.sizeAt(0, tooEarly)).as("a service before it began").isPositive();
    }

    @ParameterizedTest
    @MethodSource("passing")
    void whatPassesFadesToNothing(Cause cause) {
        Timeline nothingDone = timeline(Journal.EMPTY);
        CauseCourse course = course(cause);
        double before = 1;
        for (double hours = ONSET_HOURS; hours <= 400; hours += 5) {
            double size = course.sizeAt(hours, nothingDone);
            assertThat(size).isBetween(0.0, before);
            before = size;
        }
        assertThat(before).isZero();
        assertThat(course.influence(before)).isEqualTo(Influence.NONE);
    }
}
