package io.github.weirwise.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class NumericsRefereeTest {
    @Test
    void generalSolversAgreeWithTheClosedForms() {
        assertThat(NumericsReferee.compare(25, 7))
                .hasSizeGreaterThanOrEqualTo(10)
                .allSatisfy((name, worst) -> {
                    assertThat(worst.points()).as(name).isEqualTo(25);
                    assertThat(worst.percent()).as(name).isLessThan(1e-5);
                });
    }
}
