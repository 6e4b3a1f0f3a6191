package io.github.weirwise.watch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A window's median is that of all its values, whether they are few, many, odd or even in number. */
class SensorWindowTest {
    private final SensorWindow window = new SensorWindow(Instant.EPOCH);

    @Test
    void theMedianOfAnOddNumberIsTheMiddleOneAndOfAnEvenNumberBetweenTheTwo() {
        add(5, 1, 9);
        assertThat(window.medians(1)).containsExactly(Map.entry(SensorKind.AIR_FLOW, 5.0));
        add(6);
        assertThat(window.medians(1)).containsExactly(Map.entry(SensorKind.AIR_FLOW, 5.5));
    }

    @Test
    void aKindNeedsItsFewestValues() {
        add(1, 2, 3);
        assertThat(window.medians(3)).hasSize(1);
        assertThat(window.medians(4)).isEmpty();
    }

    @Test
    void manyValuesAreThinnedEvenlyOverTheTime() {
        for (int i = 0; i <= 100_000; i++) {
            add(i);
        }
        assertThat(window.medians(100_001).get(SensorKind.AIR_FLOW)).isCloseTo(50_000, within(800.0));
    }

    @Test
    void aChangeInTheMiddleOfManyValuesIsSeenInItsShare() {
        for (int i = 0; i < 1_000; i++) {
            add(i < 400 ? 10 : 20);
        }
        assertThat(window.medians(1)).containsEntry(SensorKind.AIR_FLOW, 20.0);
    }

    private void add(double... values) {
        for (double value : values) {
            window.add(SensorKind.AIR_FLOW, value);
        }
    }
}
