package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Sum;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** The two staircases end where the belief says that level and amount are. */
class LedgersTest {
    private static final SkimmerUnit UNIT = FirstRoundUnits.middle();
    private static final Settings START = UNIT.ratedSettings(RandomJournals.CREST_MM);
    private static final int JOURNALS = 20;

    private static Bank bank(long seed) {
        Bank bank = new Bank(UNIT, START);
        for (JournalEntry entry : RandomJournals.of(seed).entries()) {
            bank.take(entry, true);
        }
        return bank;
    }

    private static double mean(Bank bank, ToDoubleFunction<double[]> value) {
        double sum = 0;
        double[] weights = bank.branches().weights();
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * value.applyAsDouble(bank.branches().moments(i).mean());
        }
        return sum;
    }

    private static double total(List<Ledgers.Term> terms) {
        return terms.stream().mapToDouble(Ledgers.Term::value).sum();
    }

    /** Air or flow lost have a term of their own; whatever else lifts or drops the level must have one too. */
    @Test
    void aPartThatMovesTheLevelByItselfHasItsOwnTerm() {
        assertThat(Part.SERVICEABLE)
                .filteredOn(part -> part.worst().levelMm() != 0)
                .isNotEmpty()
                .allSatisfy(
                        part -> assertThat(Ledgers.Topic.ofLevel(part)).isNotIn(Ledgers.Topic.FLOW, Ledgers.Topic.AIR));
    }

    @Test
    void theTermsOfTheLevelAddUpToTheLevel() {
        for (long seed = 0; seed < JOURNALS; seed++) {
            Bank bank = bank(seed);
            double level = mean(bank, state -> bank.model().value(Sum.LEVEL, state));
            assertThat(total(Ledgers.of(bank).level())).as("seed %d, mm", seed).isCloseTo(level, within(1e-6));
        }
    }

    @Test
    void theTermsOfTheAmountAddUpToTheAmountBeforeItIsBent() {
        for (long seed = 0; seed < JOURNALS; seed++) {
            Bank bank = bank(seed);
            double amount = mean(bank, state -> bank.model().rawAmount(state));
            assertThat(total(Ledgers.of(bank).amount())).as("seed %d", seed).isCloseTo(amount, within(1e-6));
        }
    }

    @Test
    void everyTermLiesInItsOrderedRange() {
        for (long seed = 0; seed < JOURNALS; seed++) {
            Ledgers ledgers = Ledgers.of(bank(seed));
            assertThat(ledgers.level()).allSatisfy(LedgersTest::ordered);
            assertThat(ledgers.amount()).allSatisfy(LedgersTest::ordered);
            assertThat(ledgers.amount())
                    .extracting(Ledgers.Term::topic)
                    .doesNotHaveDuplicates()
                    .contains(Ledgers.Topic.LEVEL, Ledgers.Topic.AIR, Ledgers.Topic.FILM, Ledgers.Topic.SALT);
            assertThat(ledgers.slopePerMm().low())
                    .isPositive()
                    .isLessThan(ledgers.slopePerMm().high());
            assertThat(ledgers.airExponent().low())
                    .isLessThan(ledgers.airExponent().high());
        }
    }

    private static void ordered(Ledgers.Term term) {
        assertThat(term.value())
                .isFinite()
                .isBetween(term.range().low(), term.range().high());
    }

    @Test
    void whatIsSetIsKnownAndWhatIsGuessedIsNot() {
        Ledgers ledgers = Ledgers.of(bank(1));
        for (Ledgers.Term term : ledgers.level()) {
            double width = term.range().high() - term.range().low();
            if (term.topic() == Ledgers.Topic.SETTING) {
                assertThat(width).isZero();
            } else {
                assertThat(width).as(term.topic().name()).isPositive();
            }
        }
    }
}
