package io.github.weirwise.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.diagnosis.Outlook;
import org.junit.jupiter.api.Test;

/** On target, off target by how much, and how comfortably, on the logarithm of the amount over the wanted one. */
class BandTest {
    private final Band band = Band.of(Situations.UNIT);

    private static Outlook amount(double timesWanted) {
        return new Outlook(22, 10, 22, Math.log(timesWanted), 1500, 150, false);
    }

    private static Outlook flood(double timesWanted) {
        return new Outlook(22, 10, 22, Math.log(timesWanted), 1500, 150, true);
    }

    @Test
    void theBandIsTheTargetsAndAFloodIsNeverInIt() {
        assertThat(band.holds(amount(0.401))).isTrue();
        assertThat(band.holds(amount(2.399))).isTrue();
        assertThat(band.holds(amount(0.399))).isFalse();
        assertThat(band.holds(amount(2.401))).isFalse();
        assertThat(band.holds(flood(1))).isFalse();
    }

    @Test
    void theDistanceIsCountedFromTheNearerEdge() {
        assertThat(band.distance(amount(1))).isZero();
        assertThat(band.distance(amount(0.2))).isCloseTo(Math.log(2), within(1e-9));
        assertThat(band.distance(amount(4.8))).isCloseTo(Math.log(2), within(1e-9));
    }

    @Test
    void comfortIsGreatestInsideFallsToTheEdgesAndIsNothingOutside() {
        assertThat(band.comfort(amount(1.1))).isGreaterThan(0.99);
        assertThat(band.comfort(amount(0.45))).isBetween(0.69, 0.75);
        assertThat(band.comfort(amount(2.35))).isBetween(0.69, 0.75);
        assertThat(band.comfort(amount(0.7))).isBetween(band.comfort(amount(0.5)), band.comfort(amount(1)));
        assertThat(band.comfort(amount(1.9))).isBetween(band.comfort(amount(2.2)), band.comfort(amount(1.3)));
        assertThat(band.comfort(amount(0.3))).isZero();
        assertThat(band.comfort(amount(3))).isZero();
    }

    /** The cup of the middle unit holds a litre, wanted are 250 mL a day: nine tenths of it are 3.6 times the wanted. */
    @Test
    void theCupRunsOverWithinADayFromNineTenthsOfItsRoom() {
        assertThat(band.overflows(amount(3.55))).isFalse();
        assertThat(band.overflows(amount(3.65))).isTrue();
        assertThat(band.overflows(flood(0.1))).isTrue();
    }
}
