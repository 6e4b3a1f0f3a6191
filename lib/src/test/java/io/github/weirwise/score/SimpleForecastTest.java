package io.github.weirwise.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SimpleForecastTest {
    @Test
    void asLastTimeIsTheLastValueAndLearnsItsScatter() {
        SimpleForecast last = new SimpleForecast(1, 0.6);
        assertThat(last.next()).isEmpty();
        last.see(1);
        assertThat(last.next().orElseThrow()).isEqualTo(new Bell(1, 0.6));
        last.see(2);
        // Three times 0.36 and one miss of 1, over four.
        assertThat(last.next().orElseThrow().mean()).isEqualTo(2);
        assertThat(last.next().orElseThrow().deviation()).isCloseTo(Math.sqrt(2.08 / 4), within(1e-12));
        SimpleForecast mean = new SimpleForecast(5, 0.6);
        for (int i = 1; i <= 7; i++) {
            mean.see(i);
        }
        assertThat(mean.next().orElseThrow().mean()).isEqualTo(5);
    }
}
