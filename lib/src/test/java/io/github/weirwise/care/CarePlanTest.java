package io.github.weirwise.care;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation.CupVolume;
import io.github.weirwise.reading.Observation.Inspection;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CarePlanTest {
    private static final Instant START = Instant.parse("2026-03-01T09:00:00Z");

    @Test
    void aServiceSetsTheClockOfItsPart() {
        Journal journal = Journal.of(new Service(day(0), Part.NECK_AND_CUP));
        assertThat(CarePlan.of(journal, day(3)).item(CareTask.WASH_NECK_AND_CUP).state())
                .isEqualTo(CareState.FRESH);
        assertThat(CarePlan.of(journal, day(6.5))
                        .item(CareTask.WASH_NECK_AND_CUP)
                        .state())
                .isEqualTo(CareState.SOON);
        assertThat(CarePlan.of(journal, day(7)).item(CareTask.WASH_NECK_AND_CUP).state())
                .isEqualTo(CareState.DUE);
        CareItem late = CarePlan.of(journal, day(9)).item(CareTask.WASH_NECK_AND_CUP);
        assertThat(late.state()).isEqualTo(CareState.OVERDUE);
        assertThat(late.lateDays(day(9))).isCloseTo(2, within(1e-9));
    }

    @Test
    void washingTheCupCountsAsEmptyingIt() {
        Journal journal = Journal.of(new Service(day(2), Part.NECK_AND_CUP));
        assertThat(TaskDone.last(journal, CareTask.EMPTY_CUP)).contains(day(2));
    }

    @Test
    void aTaskWithoutAPartIsKeptAsANote() {
        Journal journal = Journal.EMPTY.with(new TaskDone(day(4), CareTask.TEST_SWITCH).asNote());
        assertThat(TaskDone.last(journal, CareTask.TEST_SWITCH)).contains(day(4));
        assertThat(TaskDone.last(journal, CareTask.REPLACE_PAD)).isEmpty();
    }

    @Test
    void whatWasNeverDoneCountsFromTheFirstStart() {
        Journal journal = Journal.of(new Happening(day(0), Happening.Kind.FIRST_START));
        CareItem media = CarePlan.of(journal, day(1)).item(CareTask.CLEAN_MEDIA);
        assertThat(media.due()).isEqualTo(day(90));
        assertThat(media.lastDone()).isEmpty();
    }

    /** Common practice: protective switch tested, a power cut rehearsed once. */
    @Test
    void aPowerCutIsRehearsedAtTheStartAndThenRests() {
        Journal journal = Journal.of(new Happening(day(0), Happening.Kind.FIRST_START));
        assertThat(CarePlan.of(journal, day(0))
                        .item(CareTask.REHEARSE_POWER_CUT)
                        .state())
                .isEqualTo(CareState.DUE);
        Journal done = journal.with(new TaskDone(day(0), CareTask.REHEARSE_POWER_CUT).asNote());
        assertThat(CarePlan.of(done, day(90)).item(CareTask.REHEARSE_POWER_CUT).state())
                .isEqualTo(CareState.FRESH);
    }

    @Test
    void whatComesLaterThanNowIsNotKnown() {
        Journal journal = Journal.of(new Service(day(0), Part.AIR_LINE), new Service(day(20), Part.AIR_LINE));
        assertThat(CarePlan.of(journal, day(15)).item(CareTask.CLEAR_AIR_LINE).lastDone())
                .contains(day(0));
    }

    @Test
    void aNeckThatFoulsFastIsWashedSooner() {
        Journal journal = Journal.EMPTY;
        for (int week = 0; week < 4; week++) {
            journal = journal.with(new Service(day(7 * week), Part.NECK_AND_CUP))
                    .with(look(7 * week + 4, Part.NECK_AND_CUP, Finding.DOUBTFUL));
        }
        CareInterval interval = CareInterval.of(CareTask.WASH_NECK_AND_CUP, journal);
        assertThat(interval.days()).isCloseTo(4, within(1e-9));
        assertThat(PhraseBook.ENGLISH_METRIC.say(interval.reason())).contains("sooner", "4 days");
    }

    @Test
    void aNeckFoundDirtyOnItsWashingDayKeepsItsInterval() {
        Journal journal = Journal.EMPTY;
        for (int week = 0; week < 6; week++) {
            journal = journal.with(new Service(day(7 * week), Part.NECK_AND_CUP))
                    .with(look(7 * week + 6.999, Part.NECK_AND_CUP, Finding.DOUBTFUL));
        }
        assertThat(CareInterval.of(CareTask.WASH_NECK_AND_CUP, journal).days()).isCloseTo(7, within(0.01));
    }

    @Test
    void aCleanSpellBringsTheUsualIntervalBack() {
        Journal journal = Journal.of(new Service(day(0), Part.NECK_AND_CUP), look(3, Part.NECK_AND_CUP, Finding.BAD));
        for (int span = 1; span < 4; span++) {
            journal = journal.with(new Service(day(3 * span), Part.NECK_AND_CUP))
                    .with(look(3 * span + 2.9, Part.NECK_AND_CUP, Finding.GOOD));
        }
        assertThat(CareInterval.of(CareTask.WASH_NECK_AND_CUP, journal).days()).isEqualTo(7);
    }

    @Test
    void skimmateThatFadesWithNothingElseChangedCountsAsAFoulNeck() {
        Journal journal =
                Journal.of(new Service(day(0), Part.NECK_AND_CUP), cup(2, 250), cup(3, 260), cup(4, 230), cup(5, 120));
        assertThat(CareInterval.of(CareTask.WASH_NECK_AND_CUP, journal).days()).isCloseTo(5, within(1e-9));
        Journal moved = journal.with(new WeirMove(day(4.5), 200, false));
        assertThat(CareInterval.of(CareTask.WASH_NECK_AND_CUP, moved).days())
                .as("a moved weir explains the fade")
                .isEqualTo(7);
    }

    /** Common practice: a drain from the cup to a waste container makes emptying rarer. */
    @Test
    void aContainerMakesEmptyingRarerAndWetFoamMakesItMoreFrequent() {
        Journal journal = Journal.of(cup(1, 250), cup(2, 240));
        double byCup = CareInterval.ofEmptying(journal, 1000).days();
        assertThat(byCup).isCloseTo(2.8, within(1e-9));
        assertThat(CareInterval.ofEmptying(journal, 4000).days()).isGreaterThan(byCup);
        assertThat(CareInterval.ofEmptying(journal.with(cup(3, 900)), 1000).days())
                .isLessThan(1);
        assertThat(CareInterval.ofEmptying(journal, 500_000).days())
                .isEqualTo(CareTask.EMPTY_CUP.limitDays().high());
        assertThat(CareInterval.ofEmptying(Journal.EMPTY, 1000).days()).isEqualTo(3);
    }

    @Test
    void aPartThatIsAlwaysFoundCleanComesLaterButNotEndlessly() {
        Journal journal = Journal.EMPTY;
        for (int span = 0; span < 4; span++) {
            journal = journal.with(new Service(day(60 * span), Part.AIR_LINE))
                    .with(look(60 * span + 55, Part.AIR_LINE, Finding.GOOD));
        }
        assertThat(CareInterval.of(CareTask.CLEAR_AIR_LINE, journal).days())
                .isEqualTo(CareTask.CLEAR_AIR_LINE.limitDays().high());
    }

    @Test
    void oneCleanSpanIsNotEnoughToWaitLonger() {
        Journal journal = Journal.of(new Service(day(0), Part.AIR_LINE), look(25, Part.AIR_LINE, Finding.GOOD));
        assertThat(CareInterval.of(CareTask.CLEAR_AIR_LINE, journal).days()).isEqualTo(14);
    }

    @Test
    void aJournalNeverMovesAnIntervalOutOfItsLimits() {
        Random random = new Random(4);
        for (int round = 0; round < 200; round++) {
            Journal journal = Journal.EMPTY;
            for (int i = 0; i < 12; i++) {
                Part part = Part.values()[random.nextInt(Part.values().length)];
                Finding finding = Finding.values()[random.nextInt(3)];
                journal = journal.with(new Service(day(random.nextDouble() * 200), part))
                        .with(look(random.nextDouble() * 200, part, finding));
            }
            for (CareTask task : CareTask.values()) {
                assertThat(task.limitDays()
                                .contains(CareInterval.of(task, journal).days()))
                        .as("%s by %s", task, journal)
                        .isTrue();
            }
        }
    }

    @Test
    void clearingTheAirLineRaisesTheLevelInTheColumn() {
        SkimmerUnit unit = FirstRoundUnits.middle();
        Settings crusted = unit.ratedSettings(205).withCondition(Condition.REFERENCE.withAirLineOpening(0.6));
        Settings cleared = crusted.withCondition(crusted.condition().withAirLineOpening(1));
        assertThat(OperatingPoint.of(unit, cleared).gasLiftMm())
                .isGreaterThan(OperatingPoint.of(unit, crusted).gasLiftMm());
    }

    @Test
    void theCalendarPutsWhatIsOverdueOnTheFirstDay() {
        Journal journal = Journal.of(new Service(day(0), Part.FILTER_PAD));
        CareCalendar calendar =
                CareCalendar.of(CarePlan.of(journal, day(20)), ZoneOffset.UTC, 15, EnumSet.of(CareTask.RINSE_PAD));
        assertThat(calendar.dates())
                .extracting(CareDate::day)
                .containsExactly(LocalDate.of(2026, 3, 21), LocalDate.of(2026, 3, 28), LocalDate.of(2026, 4, 4));
    }

    private static Reading look(double day, Part part, Finding finding) {
        return Reading.of(day(day), new Inspection(part, finding));
    }

    private static Reading cup(double day, double ml) {
        return Reading.of(day(day), new CupVolume(ml, 24, false));
    }

    private static Instant day(double days) {
        return START.plus(Duration.ofMinutes(Math.round(days * 1440)));
    }
}
