package io.github.weirwise.demo.panel;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A key that is held down counts once, and no press is lost. */
class HeldKeyTest {
    private final HeldKey key = new HeldKey();

    @Test
    void repetitionsAreNoPresses() {
        assertThat(key.pressed(10_000)).isTrue();
        assertThat(key.pressed(10_500)).isFalse();
        assertThat(key.pressed(10_530)).isFalse();
        key.released();
        assertThat(key.pressed(10_540)).isTrue();
    }

    @Test
    void aReleaseThatWasToldToAnotherWindowLosesNothing() {
        assertThat(key.pressed(10_000)).isTrue();
        assertThat(key.pressed(12_000)).isTrue();
    }

    @Test
    void pressesWithoutATimeAllCount() {
        assertThat(key.pressed(0)).isTrue();
        assertThat(key.pressed(0)).isTrue();
    }
}
