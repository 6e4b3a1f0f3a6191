package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The journal replayed: stretches of settings, services, happenings, and what each reading's cup gathered when. */
class TimelineTest {
    private static Timeline of(JournalEntry... entries) {
        return new Timeline(Journals.UNIT, Journals.SET, Journal.of(entries), Journals.NOW);
    }

    @Test
    void eachChangeBeginsAStretchOfItsOwn() {
        Timeline timeline = of(
                Journals.seen(100, 22, 250),
                new WeirMove(Journals.hoursAgo(72), 201, false),
                new SettingChange(Journals.hoursAgo(48), SettingChange.Knob.AIR, 140),
                new SettingChange(Journals.hoursAgo(24), SettingChange.Knob.FLOW, 2100));
        assertThat(timeline.startHours()).isEqualTo(-100);
        assertThat(timeline.segments()).hasSize(4);
        assertThat(timeline.segmentAt(-80)).isZero();
        assertThat(timeline.segmentAt(-72)).isEqualTo(1);
        assertThat(timeline.segmentAt(-30)).isEqualTo(2);
        assertThat(timeline.segmentAt(0)).isEqualTo(3);
        assertThat(timeline.segments().get(1).settings().weirCrestMm()).isEqualTo(201);
        assertThat(timeline.current().settings().weirCrestMm()).isEqualTo(201);
        assertThat(timeline.current().settings().airLitresPerHour()).isEqualTo(140);
        assertThat(timeline.current().settings().flowLitresPerHour()).isEqualTo(2100);
        assertThat(timeline.current().fromHours()).isEqualTo(-24);
    }

    @Test
    void aServiceCountsBetweenItsHours() {
        Timeline timeline = of(
                new Service(Journals.hoursAgo(50), Part.AIR_LINE),
                new Service(Journals.hoursAgo(20), Part.AIR_LINE),
                new Service(Journals.hoursAgo(10), Part.FILTER_PAD));
        assertThat(timeline.servicedBetween(Part.AIR_LINE, -100, 0)).isEqualTo(-20);
        assertThat(timeline.servicedBetween(Part.AIR_LINE, -100, -30)).isEqualTo(-50);
        assertThat(timeline.servicedBetween(Part.AIR_LINE, -20, 0)).isNaN();
        assertThat(timeline.servicedBetween(Part.AIR_LINE, -100, -50)).isEqualTo(-50);
        assertThat(timeline.servicedBetween(Part.SEATING, -100, 0)).isNaN();
    }

    @Test
    void theNewestHappeningOfAKindIsFound() {
        Timeline timeline = of(
                new Happening(Journals.hoursAgo(50), Happening.Kind.FED_HEAVILY),
                new Happening(Journals.hoursAgo(30), Happening.Kind.CONDITIONER),
                new Happening(Journals.hoursAgo(10), Happening.Kind.FED));
        EnumSet<Happening.Kind> kinds = EnumSet.of(Happening.Kind.FED_HEAVILY, Happening.Kind.CONDITIONER);
        assertThat(timeline.lastHappening(kinds, 0)).isEqualTo(-30);
        assertThat(timeline.lastHappening(kinds, -40)).isEqualTo(-50);
        assertThat(timeline.lastHappening(EnumSet.of(Happening.Kind.SEALANT), 0))
                .isNaN();
        assertThat(timeline.happenings()).hasSize(3);
    }

    @Test
    void aCupThatFilledOverAChangeIsSharedOut() {
        Evidence evidence = only(of(new WeirMove(Journals.hoursAgo(16), 210, false), Journals.seen(0, 25, 300)));
        assertThat(evidence.segment()).isEqualTo(1);
        assertThat(evidence.earlier()).singleElement().satisfies(part -> {
            assertThat(part.segment()).isZero();
            // 24 h in the cup, the change 16 h ago takes 0 to 6 h to show: 8 to 14 of 24 h belong to the time
            // before.
            assertThat(part.least()).isCloseTo(8.0 / 24, within(1e-9));
            assertThat(part.most()).isCloseTo(14.0 / 24, within(1e-9));
        });
    }

    @Test
    void aCupThatFilledAfterAChangeBelongsToItAlone() {
        assertThat(only(of(new WeirMove(Journals.hoursAgo(60), 210, false), Journals.seen(0, 25, 300)))
                        .earlier())
                .isEmpty();
    }

    @Test
    void whileTheFoamIsAwayACupSaysLittle() {
        Evidence washed = only(of(new Service(Journals.hoursAgo(20), Part.NECK_AND_CUP), Journals.seen(0, 22, 100)));
        assertThat(washed.unsettled()).isCloseTo(16 / 24.0, within(1e-9));
        Evidence elsewhere = only(of(new Service(Journals.hoursAgo(20), Part.AIR_LINE), Journals.seen(0, 22, 100)));
        assertThat(elsewhere.unsettled()).isCloseTo(4 / 24.0, within(1e-9));
        assertThat(elsewhere.saysNothingOfFoam()).isFalse();
        Evidence stopped = only(of(
                new Happening(Journals.hoursAgo(20), Happening.Kind.PUMP_STOPPED),
                new Happening(Journals.hoursAgo(8), Happening.Kind.PUMP_RESTARTED),
                Journals.seen(0, 22, 100)));
        assertThat(stopped.unsettled()).isCloseTo(18 / 24.0, within(1e-9));
        assertThat(stopped.saysNothingOfFoam()).isTrue();
        Evidence still =
                only(of(new Happening(Journals.hoursAgo(6), Happening.Kind.PUMP_STOPPED), Journals.seen(0, 22, 100)));
        assertThat(still.unsettled()).isCloseTo(6 / 24.0, within(1e-9));
    }

    @Test
    void theOneWhoReadsMostIsTheUsualReaderAndOldReadingsAreTrustedLess() {
        List<Evidence> all = Evidence.of(of(
                new Reading(Journals.hoursAgo(72), "ann", List.of(new Observation.FunnelLevel(22))),
                new Reading(Journals.hoursAgo(48), "ben", List.of(new Observation.FunnelLevel(22))),
                new Reading(Journals.hoursAgo(24), "ann", List.of(new Observation.FunnelLevel(22)))));
        assertThat(all).extracting(Evidence::usualReader).containsExactly(true, false, true);
        assertThat(all).extracting(Evidence::last).containsExactly(false, false, true);
        assertThat(all)
                .extracting(Evidence::trust)
                .isSorted()
                .allSatisfy(trust -> assertThat(trust).isBetween(0.3, 1.0));
    }

    private static Evidence only(Timeline timeline) {
        return Evidence.of(timeline).get(0);
    }
}
