package io.github.weirwise.internal.physics.bubbles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.weirwise.report.OutOfRangeException;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** What the formulas refuse, and branches that a tank seldom meets. */
class BubblesLimitsTest {
    @Test
    void whatLiesOutsideTheLimitsIsRefusedByName() {
        Map<String, ThrowingCallable> refused = Map.ofEntries(
                Map.entry("gasFluxMPerS", () -> RivalHoldup.wallis(-0.001, 0, 0.1)),
                Map.entry("liquidFluxMPerS", () -> RivalHoldup.wallis(0.001, -11, 0.1)),
                Map.entry("terminalSpeedMPerS", () -> RivalHoldup.wallis(0.001, 0, 0)),
                Map.entry("exponent", () -> GasHoldup.richardsonZaki(0.001, 0, 0.1, 1)),
                Map.entry("diameterM", () -> TerminalSpeed.contaminated(0.1, 1000, 1e-3)),
                Map.entry("sauterDiameterM", () -> InterfacialArea.perVolume(0.1, 0)),
                Map.entry("sauterDiameterM ", () -> InterfacialArea.perSecond(1e-5, 1)));
        refused.forEach((name, call) -> assertThatThrownBy(call)
                .as(name)
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith(name.strip()));
    }

    /** Richardson and Zaki 1954, branches worked by hand. */
    @Test
    void theExponentFollowsItsFourBranches() {
        assertThat(RivalHoldup.richardsonZakiExponent(0.1)).isEqualTo(4.65);
        assertThat(RivalHoldup.richardsonZakiExponent(0.2)).isCloseTo(4.35 * Math.pow(0.2, -0.03), within(1e-12));
        assertThat(RivalHoldup.richardsonZakiExponent(0.5)).isCloseTo(4.441, within(0.001));
        assertThat(RivalHoldup.richardsonZakiExponent(1)).isEqualTo(4.45);
        assertThat(RivalHoldup.richardsonZakiExponent(100)).isCloseTo(2.808, within(0.001));
        assertThat(RivalHoldup.richardsonZakiExponent(500)).isEqualTo(2.39);
    }

    /** At the greatest gas flux the two roots of U e (1 - e) = jg meet at a half. */
    @Test
    void justBelowTheGreatestGasFluxThereIsARootAndJustAboveThereIsNone() {
        for (double exponent : new double[] {1.6, 2, 2.4, 3.5}) {
            for (double down : new double[] {0, 0.01, 0.03}) {
                double limit = RivalHoldup.floodingGasFlux(-down, 0.1, exponent);
                assertThat(GasHoldup.richardsonZaki(0.9999 * limit, -down, 0.1, exponent))
                        .isBetween(0.0, 1.0);
                assertThat(GasHoldup.richardsonZaki(1.0001 * limit, -down, 0.1, exponent))
                        .isNaN();
            }
        }
        assertThat(RivalHoldup.wallis(0.024999999, 0, 0.1)).isCloseTo(0.5, within(0.001));
    }

    /** Flow of air by half the opening: suction left to the pump, friction with the square of the flow; solved by hand. */
    @Test
    void airDrawSolvesItsOwnBalance() {
        AirDraw draw = new AirDraw(4e-5, 0.2, 0.8, 0.3);
        assertThat(draw.airFlow(1, 1, 0.2)).isCloseTo(4e-5, withinPercentage(1e-9));
        for (double opening : new double[] {0.3, 0.5, 0.8}) {
            for (double depth : new double[] {0.1, 0.2, 0.5}) {
                double q = draw.airFlow(0.9, opening, depth) / 4e-5;
                double rated = 1 - 0.25;
                double line = 0.3 * rated * Math.pow(q / opening, 2);
                double pump = 0.7 * rated * q;
                assertThat(line + pump).isCloseTo(0.81 - depth / 0.8, within(1e-9));
            }
        }
        assertThat(draw.airFlow(0.5, 1, 0.2)).isZero();
    }
}
