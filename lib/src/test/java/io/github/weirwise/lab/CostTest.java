package io.github.weirwise.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.unit.Part;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;

/** The cost of a play, worked by hand; frozen since the panel was made. */
class CostTest {
    private record Hour(double amount, boolean flood, boolean airOff, int fouled) {
        static Hour of(double amount) {
            return new Hour(amount, false, false, 0);
        }
    }

    /** A course of so many hours from a day before hour 0. */
    private static Cost cost(int hours, double work, IntFunction<Hour> what) {
        Course course = new Course(-24, hours);
        for (int hour = -24; hour < hours; hour++) {
            Hour each = what.apply(hour);
            course.note(hour, each.amount, each.flood, each.airOff, each.fouled);
        }
        return Cost.of(course, hours, work);
    }

    @Test
    void inBandAllTheTimeCostsTheWorkOnly() {
        // 4 days at the wanted amount, two moves at 0.1.
        assertThat(cost(96, 0.2, hour -> Hour.of(1)).total()).isEqualTo(0.2);
    }

    @Test
    void theFirstDayIsNotJudged() {
        // 4 days at a tenth of the wanted: out of band from hour 24 to 96, 3 days at 1 a day.
        Cost cost = cost(96, 0, hour -> Hour.of(0.1));
        assertThat(cost.total()).isCloseTo(3, within(1e-9));
        assertThat(cost.daysOut()).isCloseTo(3, within(1e-9));
    }

    @Test
    void theRunningMeanLags() {
        // 1.0 until hour 48, nothing after: the mean of 24 h falls under 0.4 when 15 of its hours are empty (9/24 =
        // 0.375),
        // that is with the hour that ends at 63; out from there to 96: 34 hours.
        Cost cost = cost(96, 0, hour -> Hour.of(hour < 48 ? 1 : 0));
        assertThat(cost.total()).isCloseTo(34 / 24.0, within(1e-9));
    }

    @Test
    void aLongFloodCostsThreeADayInsteadOfBeingOut() {
        // 12 h of flood at 3 a day = 1.5; amounts in band besides.
        Cost cost = cost(96, 0, hour -> new Hour(1, hour >= 30 && hour < 42, false, 0));
        assertThat(cost.total()).isCloseTo(1.5, within(1e-9));
        assertThat(cost.floods()).isEqualTo(1);
    }

    @Test
    void floodHoursAreNotChargedAsOutToo() {
        // Out all of days 1 to 3 (72 h), 24 of them flooded: 48/24 * 1 + 24/24 * 3 = 5.
        Cost cost = cost(96, 0, hour -> new Hour(5, hour >= 48 && hour < 72, false, 0));
        assertThat(cost.total()).isCloseTo(5, within(1e-9));
        assertThat(cost.daysOut()).isCloseTo(3, within(1e-9));
    }

    @Test
    void aShortFloodCostsAHalfAtLeastAndTwoCostTwice() {
        // One hour of flood is 0.125, raised to 0.5; another a day later the same again.
        Cost cost = cost(96, 0, hour -> new Hour(1, hour == 30 || hour == 54, false, 0));
        assertThat(cost.total()).isCloseTo(1.0, within(1e-9));
        assertThat(cost.floods()).isEqualTo(2);
    }

    @Test
    void hoursOfOneEventCountTogether() {
        // Hours 30 and 33 are one event: 2 * 0.125 = 0.25, raised to 0.5.
        Cost cost = cost(96, 0, hour -> new Hour(1, hour == 30 || hour == 33, false, 0));
        assertThat(cost.total()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void airOffAndFouledPartsAreChargedBesides() {
        // Air off for 12 h: 0.25; two parts fouled by more than half for 2 days: 2 * 2 * 0.1 = 0.4.
        Cost cost = cost(96, 0, hour -> new Hour(1, false, hour >= 24 && hour < 36, hour >= 48 ? 2 : 0));
        assertThat(cost.total()).isCloseTo(0.25 + 0.4, within(1e-9));
        assertThat(cost.airOffHours()).isEqualTo(12);
    }

    @Test
    void workIsPricedAtHalfAndDouble() {
        // Three days out and work of 1.4.
        Cost cost = cost(96, 1.4, hour -> Hour.of(0.1));
        assertThat(cost.total(0.5)).isCloseTo(3.7, within(1e-9));
        assertThat(cost.total(2)).isCloseTo(5.8, within(1e-9));
    }

    @Test
    void servicesHaveThreePrices() {
        assertThat(Cost.ofService(Part.NECK_AND_CUP)).isEqualTo(0.2);
        assertThat(Cost.ofService(Part.FILTER_PAD)).isEqualTo(0.2);
        assertThat(Cost.ofService(Part.AIR_LINE)).isEqualTo(0.2);
        assertThat(Cost.ofService(Part.SALT_MIX)).isEqualTo(0.3);
        assertThat(Cost.ofService(Part.INJECTOR_PUMP)).isEqualTo(0.5);
        assertThat(Cost.ofService(Part.CUP_VENT)).isEqualTo(0.5);
    }
}
