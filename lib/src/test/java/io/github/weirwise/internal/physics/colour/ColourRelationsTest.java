package io.github.weirwise.internal.physics.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** What must hold for the colour of any water, over seeded random waters. */
class ColourRelationsTest {
    private static final int POINTS = 20_000;

    private final Random random = new Random(20261125);

    @Test
    void moreInTheWaterOrALongerWayIsDarker() {
        for (int i = 0; i < POINTS; i++) {
            double absorption = Math.pow(10, -2 + 5 * random.nextDouble());
            double slope = 0.010 + 0.015 * random.nextDouble();
            double path = Math.pow(10, -3 + 2 * random.nextDouble());
            DissolvedColour water = new DissolvedColour(absorption, slope);
            Tristimulus seen = water.through(path);
            Tristimulus stronger = new DissolvedColour(1.1 * absorption, slope).through(path);
            Tristimulus further = water.through(1.1 * path);
            assertThat(stronger.y()).isLessThan(seen.y());
            assertThat(stronger.z()).isLessThan(seen.z());
            assertThat(further.y()).isCloseTo(stronger.y(), within(1e-9 * (1 + seen.y())));
            assertThat(seen.y()).isBetween(0.0, 100.001);
        }
    }

    @Test
    void blueGoesFirstAndEveryChannelStaysWithinAByte() {
        for (int i = 0; i < POINTS; i++) {
            double absorption = Math.pow(10, -2 + 5 * random.nextDouble());
            Srgb seen = new DissolvedColour(absorption, 0.014).colourThrough(0.04);
            assertThat(seen.red()).isBetween(0, 255);
            assertThat(seen.green()).isBetween(0, 255);
            assertThat(seen.blue()).isBetween(0, 255);
            assertThat(seen.blue()).isLessThanOrEqualTo(seen.green());
            assertThat(seen.green()).isLessThanOrEqualTo(seen.red());
        }
    }

    @Test
    void encodingAndUnitsUndoThemselves() {
        for (int i = 0; i < POINTS; i++) {
            double light = random.nextDouble();
            assertThat(Chromaticity.decode(Srgb.encode(light))).isCloseTo(light, within(1e-9));
            assertThat(Srgb.encode(light)).isBetween(light - 1e-12, 1.0);
            double units = Math.pow(10, 6 * random.nextDouble());
            assertThat(PlatinumCobalt.fromAbsorption(PlatinumCobalt.toAbsorption(units)) / units)
                    .isCloseTo(1, within(1e-9));
        }
    }

    @Test
    void betweenTwoRowsTheTablesGoStraightAndAtTheEndsTheyStop() {
        for (int i = 0; i < POINTS; i++) {
            double below = 360 + 5 * random.nextInt(94);
            double share = random.nextDouble();
            double expected = CieFunctions.daylight(below) * (1 - share) + CieFunctions.daylight(below + 5) * share;
            assertThat(CieFunctions.daylight(below + 5 * share)).isCloseTo(expected, within(1e-9));
            CieFunctions.Observer function = CieFunctions.Observer.values()[random.nextInt(3)];
            double seen = CieFunctions.observer(function, below) * (1 - share)
                    + CieFunctions.observer(function, below + 5) * share;
            assertThat(CieFunctions.observer(function, below + 5 * share)).isCloseTo(seen, within(1e-12));
        }
    }

    @Test
    void blackHasTheColourOfTheLightItLacks() {
        Tristimulus black = new Tristimulus(0, 0, 0);
        assertThat(Chromaticity.x(black)).isCloseTo(0.3127, within(1e-4));
        assertThat(Chromaticity.y(black)).isCloseTo(0.3290, within(1e-4));
    }
}
