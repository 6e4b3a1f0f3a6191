package io.github.weirwise.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** The work of a request grows with its length and with nothing else; counted, not timed. */
class RequestTimeTest {
    private static final int FEW = 150;
    private static final int TIMES = 4;
    /** Steps that belong to no entry: the moves that are weighed for one answer. */
    private static final long ONCE = 2_000;

    @Test
    void fourTimesAsLongIsFourTimesTheWork() throws InterruptedException {
        Map<String, String> longer = DearRequests.of(TIMES * FEW);
        for (Map.Entry<String, String> each : DearRequests.of(FEW).entrySet()) {
            RequestTime.Took few = RequestTime.asked(each.getValue());
            RequestTime.Took many = RequestTime.asked(longer.get(each.getKey()));
            assertThat(many.answer()).as(each.getKey()).doesNotContain("\"error\":");
            assertThat(many.steps()).as(each.getKey()).isGreaterThan(TIMES * FEW - 2);
            assertThat(many.steps()).as(each.getKey()).isLessThan(Math.round(1.3 * TIMES * few.steps()) + ONCE);
        }
    }
}
