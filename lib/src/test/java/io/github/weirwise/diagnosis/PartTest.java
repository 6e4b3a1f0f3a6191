package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.unit.Fouling;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.PartEffect;
import io.github.weirwise.unit.Work;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every row of the table of parts is sound by itself and read by the belief. */
class PartTest {
    @ParameterizedTest
    @EnumSource(Part.class)
    void whatCanBePutRightDoesSomethingWhenItIsBad(Part part) {
        assertThat(part.worst().equals(PartEffect.NONE)).isEqualTo(part.work() == Work.NONE);
        assertThat(part.fouling().kind() == Fouling.Kind.PASSES).isEqualTo(part.work() == Work.NONE);
        assertThat(Part.SERVICEABLE.contains(part)).isEqualTo(part.work() != Work.NONE);
        assertThat(State.of(part) >= 0).as("has a size").isEqualTo(part.work() != Work.NONE);
        assertThat(Cause.of(part).isPresent()).as("has a cause").isEqualTo(part.work() != Work.NONE);
    }

    @ParameterizedTest
    @EnumSource(Part.class)
    void numbersAreOfTheSizeOfTheTrade(Part part) {
        PartEffect worst = part.worst();
        assertThat(worst.airLog() + worst.gasLog()).isBetween(0.0, 1.0);
        assertThat(worst.flowLog()).isBetween(0.0, 1.0);
        assertThat(worst.levelMm()).isBetween(-20.0, 20.0);
        assertThat(worst.amountLog()).as("no dirt makes more foam").isBetween(-2.0, 0.0);
        assertThat(part.work().effortDays()).isBetween(0.0, 1.0);
        assertThat(part.work().foamAwayHours()).isBetween(0.0, 24.0);
        assertThat(part.upkeepDays()).isBetween(0.0, 90.0);
    }

    /** Upkeep is due before the part is at its worst, and only what fouls or blocks has any. */
    @ParameterizedTest
    @EnumSource(Part.class)
    void upkeepComesBeforeTheWorst(Part part) {
        assertThat(part.upkeepDays()).isLessThan(part.fouling().daysToWorst());
        if (part.fouling().kind() == Fouling.Kind.GROWS && part != Part.SALT_MIX) {
            assertThat(part.upkeepDays()).as("what grows has upkeep").isPositive();
            assertThat(State.paceOf(part)).as("what grows has a pace").isNotNegative();
        }
        if (part.work() == Work.NONE) {
            assertThat(part.upkeepDays()).isZero();
        }
    }

    @Test
    void everyPositionOfTheStateIsTakenOnce() {
        Set<Integer> taken = new HashSet<>(Set.of(
                State.FOAM,
                State.SLOPE,
                State.AIR_EXPONENT,
                State.OFFSET,
                State.PASSING,
                State.TONE,
                State.EYE,
                State.EYE + 1));
        for (Part part : Part.SERVICEABLE) {
            assertThat(taken.add(State.of(part))).as(part.name()).isTrue();
        }
        for (Part part : State.PACED) {
            assertThat(taken.add(State.paceOf(part))).as(part.name()).isTrue();
        }
        assertThat(taken).hasSize(State.SIZE).allMatch(at -> at >= 0 && at < State.SIZE);
        assertThat(EnumSet.copyOf(Part.SERVICEABLE)).containsAll(State.PACED);
    }

    @Test
    void everyPartHasWordsOfItsOwn() {
        PhraseBook book = PhraseBook.ENGLISH_METRIC;
        Set<String> said = new HashSet<>();
        for (Part part : Part.values()) {
            String look = book.say(ObservationWords.of(new Observation.Inspection(part, Finding.BAD)));
            assertThat(look).isNotBlank().doesNotContain(part.name());
            assertThat(said.add(look)).as(look).isTrue();
            Cause.of(part)
                    .ifPresent(cause -> assertThat(book.say(Phrase.of(cause.nameKey())))
                            .isNotBlank()
                            .doesNotContain(cause.name()));
        }
    }
}
