package io.github.weirwise.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every check value of the data files against the library; each row names its published source. */
class ValidationTest {
    private static final Formulas FORMULAS = Formulas.all();

    static Stream<CheckRow> rows() {
        return CheckRows.all().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void meetsTheValue(CheckRow row) {
        assertThat(FORMULAS.ours(row))
                .as("%s: %s by %s", row.id(), row.quantity(), row.source())
                .isCloseTo(row.expected(), within(row.tolerance() * (1 + 1e-9)));
    }

    @Test
    void everyRowSaysWhereItIsFromAndHowItIsKnown() {
        List<CheckRow> rows = CheckRows.all();
        assertThat(rows).extracting(CheckRow::id).doesNotHaveDuplicates();
        assertThat(rows).allSatisfy(row -> {
            assertThat(row.source()).isNotBlank();
            assertThat(row.howKnown()).matches("(read|from memory|computed)(: .*)?");
            assertThat(row.tolerance()).isPositive();
        });
    }

    @Test
    void countsWhatMayBeCounted() {
        Checks.Tally tally = Checks.tally(CheckRows.all(), FORMULAS);
        assertThat(tally.rows()).isGreaterThanOrEqualTo(100);
        assertThat(tally.sources()).isGreaterThanOrEqualTo(25);
        assertThat(tally.rows() - tally.recalled()).as("rows that were read").isGreaterThanOrEqualTo(60);
    }

    /** A row that misses by a sixth and still passes, or that holds a constant against itself, proves nothing. */
    @Test
    void everyCountedRowCanFail() {
        for (CheckRow row : CheckRows.all()) {
            if (!row.isComputed() && row.expected() != 0) {
                assertThat(row.tolerance() / Math.abs(row.expected()))
                        .as("relative tolerance of %s", row.id())
                        .isLessThan(0.165);
            }
        }
    }
}
