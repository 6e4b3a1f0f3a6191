package io.github.weirwise.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every dangerous journal of the grid is acted on, with its caution and its way back; no near miss raises an alarm. */
class GuardGridTest {
    private static final List<GuardCase> ALL = GuardGrid.all();

    @Test
    void theGridIsLargeAndNoLineStandsTwice() {
        assertThat(ALL.stream().filter(GuardCase::danger)).hasSizeGreaterThanOrEqualTo(300);
        assertThat(ALL.stream().filter(each -> !each.danger())).hasSizeGreaterThanOrEqualTo(200);
        assertThat(ALL).extracting(GuardCase::line).doesNotHaveDuplicates();
    }

    @Test
    void everyLineGetsWhatATechnicianWouldDo() {
        List<String> wrong = new ArrayList<>();
        for (GuardCase each : ALL) {
            GuardCheck check = GuardCheck.of(each);
            if (!check.right(each.danger())) {
                wrong.add(each.line() + " -> " + check);
            }
        }
        assertThat(wrong).isEmpty();
    }
}
