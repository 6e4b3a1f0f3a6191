package io.github.weirwise.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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

    /** Numbers that nothing goes into, but that are derived from others than the row's own: by geometry, units or a table. */
    private static final Set<String> DERIVED = Set.of(
            "ALKNGROWTH-1",
            "CRANEF-1",
            "CRANEO-1",
            "CRANERE-1",
            "D65X-1",
            "D65Z-1",
            "EVAPREST-1",
            "FRANCISUS-1",
            "KIRCH-1",
            "O2NGROWTH-1",
            "PBA-1",
            "PBDE-1",
            "PBK1-1",
            "RZN-0.1",
            "RZN-1000",
            "SHER-1",
            "WHITEX-1",
            "WHITEY-1");

    /** A formula that gives the same whatever goes in is a constant held against itself. */
    @Test
    void everyCountedRowAnswersToWhatGoesIn() {
        List<String> deaf = new ArrayList<>();
        for (CheckRow row : CheckRows.all()) {
            if (!row.isComputed() && row.inputs().keySet().stream().noneMatch(name -> answers(row, name))) {
                deaf.add(row.id());
            }
        }
        assertThat(deaf).containsExactlyInAnyOrderElementsOf(DERIVED);
    }

    private static boolean answers(CheckRow row, String input) {
        double at = row.inputs().get(input);
        double ours = FORMULAS.ours(row);
        for (double other : new double[] {0.97 * at - 0.01, 1.03 * at + 0.01}) {
            Map<String, Double> changed = new LinkedHashMap<>(row.inputs());
            changed.put(input, other);
            try {
                if (FORMULAS.ours(row.with(changed)) != ours) {
                    return true;
                }
            } catch (IllegalArgumentException outside) {
                return true;
            }
        }
        return false;
    }
}
