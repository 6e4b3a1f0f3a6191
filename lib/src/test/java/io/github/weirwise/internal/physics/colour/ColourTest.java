package io.github.weirwise.internal.physics.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ColourTest {
    /** CIE 15:2004 table T.3 (from memory): x = 0.31272, y = 0.32903; ASTM E308: 95.047, 100, 108.883. */
    @Test
    void daylightIsD65() {
        Tristimulus white = Chromaticity.daylight();
        assertThat(white.y()).isCloseTo(100, within(1e-9));
        assertThat(white.x()).isCloseTo(95.047, within(0.01));
        assertThat(white.z()).isCloseTo(108.883, within(0.02));
        assertThat(Chromaticity.x(white)).isCloseTo(0.31272, within(3e-5));
        assertThat(Chromaticity.y(white)).isCloseTo(0.32903, within(3e-5));
    }

    /** Every colour that a screen shows comes back from its tristimulus values; 20,000 seeded points. */
    @Test
    void thereAndBackThroughTristimulus() {
        SplittableRandom random = new SplittableRandom(51);
        for (int i = 0; i < 20_000; i++) {
            Srgb colour = new Srgb(random.nextInt(256), random.nextInt(256), random.nextInt(256), false);
            assertThat(Srgb.of(Chromaticity.tristimulus(colour))).isEqualTo(colour);
        }
    }

    @Test
    void encodingUndoesDecoding() {
        SplittableRandom random = new SplittableRandom(52);
        for (int i = 0; i < 20_000; i++) {
            double v = random.nextDouble();
            assertThat(Srgb.encode(Chromaticity.decode(v))).isCloseTo(v, within(1e-6));
        }
    }

    /** Longer path, stronger colour: darker; and the path and the strength are interchangeable. */
    @Test
    void deeperIsDarkerAndBrowner() {
        SplittableRandom random = new SplittableRandom(53);
        for (int i = 0; i < 2_000; i++) {
            double a = Math.exp(random.nextDouble(-3, 5));
            double slope = random.nextDouble(0.010, 0.025);
            double path = random.nextDouble(0.005, 0.5);
            Tristimulus seen = new DissolvedColour(a, slope).through(path);
            assertThat(new DissolvedColour(2 * a, slope).through(path).y()).isLessThan(seen.y());
            assertThat(new DissolvedColour(2 * a, slope).through(path / 2).y()).isCloseTo(seen.y(), within(1e-9));
            assertThat(Chromaticity.x(seen)).isGreaterThanOrEqualTo(Chromaticity.x(Chromaticity.daylight()) - 1e-9);
        }
    }

    @Test
    void darkSkimmateInAVialIsBrownAndTankWaterIsClear() {
        Srgb tank = DissolvedColour.ofPlatinumCobalt(10).colourThrough(0.02);
        assertThat(tank.blue()).isGreaterThan(250);
        Srgb skimmate = DissolvedColour.ofPlatinumCobalt(2000).colourThrough(0.02);
        assertThat(skimmate.red()).isGreaterThan(skimmate.green());
        assertThat(skimmate.green()).isGreaterThan(skimmate.blue());
        assertThat(skimmate.packed()).isEqualTo(skimmate.red() << 16 | skimmate.green() << 8 | skimmate.blue());
    }

    @Test
    void aChannelOf256IsRefused() {
        assertThatThrownBy(() -> new Srgb(256, 0, 0, false)).hasMessageContaining("256");
    }
}
