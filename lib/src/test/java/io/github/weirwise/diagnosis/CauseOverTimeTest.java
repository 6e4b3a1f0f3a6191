package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Service;
import io.github.weirwise.unit.Part;
import org.junit.jupiter.api.Test;

/** A cause over time: it begins, grows or fades, and ends with its service. */
class CauseOverTimeTest {
    private final Timeline quiet = new Timeline(Journals.UNIT, Journals.SET, Journal.EMPTY, Journals.NOW);

    @Test
    void beforeItsOnsetItIsNotThere() {
        CauseCourse slipped = new CauseCourse(Cause.WEIR_SLIPPED_DOWN, 0.5, -10, 100);
        assertThat(slipped.sizeAt(-10.1, quiet)).isZero();
        assertThat(slipped.sizeAt(-10, quiet)).isEqualTo(0.5);
        assertThat(slipped.sizeAt(0, quiet)).isEqualTo(0.5);
    }

    @Test
    void whatGrowsReachesItsFullSizeInItsTimeAndNotMore() {
        CauseCourse creep = new CauseCourse(Cause.AIR_LINE_RESTRICTED, 0.6, -120, 120);
        assertThat(creep.sizeAt(-120, quiet)).isZero();
        assertThat(creep.sizeAt(-60, quiet)).isCloseTo(0.3, within(1e-9));
        assertThat(creep.sizeAt(0, quiet)).isCloseTo(0.6, within(1e-9));
        assertThat(creep.sizeAt(500, quiet)).isCloseTo(0.6, within(1e-9));
        double before = 0;
        for (double hours = -120; hours <= 0; hours += 5) {
            double size = creep.sizeAt(hours, quiet);
            assertThat(size).isGreaterThanOrEqualTo(before);
            before = size;
        }
    }

    @Test
    void whatPassesFadesToNothing() {
        CauseCourse oil = new CauseCourse(Cause.FILM_BREAKER, 0.8, -48, 100);
        assertThat(oil.sizeAt(-48, quiet)).isCloseTo(0.8, within(1e-9));
        assertThat(oil.sizeAt(-24, quiet)).isBetween(0.05, 0.2);
        assertThat(oil.sizeAt(24, quiet)).isZero();
        assertThat(oil.influence(oil.sizeAt(-48, quiet)).lifeFactor())
                .isCloseTo(Cause.FILM_BREAKER.effect().at(0.8).lifeFactor(), within(1e-9));
        assertThat(oil.influence(0.1).lifeFactor())
                .isGreaterThan(oil.influence(0.8).lifeFactor())
                .isLessThan(1);
        assertThat(oil.influence(0)).isEqualTo(Influence.NONE);
    }

    @Test
    void theServiceOfItsPartEndsItAndNoOther() {
        CauseCourse creep = new CauseCourse(Cause.AIR_LINE_RESTRICTED, 0.6, -240, 120);
        assertThat(creep.sizeAt(0, with(new Service(Journals.hoursAgo(5), Part.AIR_LINE))))
                .isZero();
        assertThat(creep.sizeAt(-6, with(new Service(Journals.hoursAgo(5), Part.AIR_LINE))))
                .isCloseTo(0.6, within(1e-9));
        assertThat(creep.sizeAt(0, with(new Service(Journals.hoursAgo(5), Part.FILTER_PAD))))
                .isCloseTo(0.6, within(1e-9));
        assertThat(creep.sizeAt(0, with(new Service(Journals.hoursAgo(300), Part.AIR_LINE))))
                .as("it began after that")
                .isCloseTo(0.6, within(1e-9));
    }

    @Test
    void nothingIsNothingAtAnyTime() {
        assertThat(CauseCourse.NONE.sizeAt(0, quiet)).isZero();
        assertThat(CauseCourse.NONE.influence(0)).isEqualTo(Influence.NONE);
    }

    private static Timeline with(Service service) {
        return new Timeline(Journals.UNIT, Journals.SET, Journal.of(service), Journals.NOW);
    }
}
