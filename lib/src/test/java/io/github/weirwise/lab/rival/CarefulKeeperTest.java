package io.github.weirwise.lab.rival;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.advice.Step;
import io.github.weirwise.lab.LabUnits;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The careful keeper's ten vectors, journal to step; frozen since the panel was made. The unit wants 300 mL a day, its cup holds
 * 1200 mL, its crest goes from 120 to 235 mm and stands at 170.
 */
class CarefulKeeperTest {
    private static final Instant START = Instant.parse("2026-03-02T09:00:00Z");
    private static final double CREST = 170;

    private final SkimmerUnit unit = LabUnits.ALL.get(2);
    private final List<JournalEntry> entries = new ArrayList<>();

    private static Instant day(double days) {
        return START.plus(Duration.ofHours(Math.round(24 * days)));
    }

    private CarefulKeeperTest cup(double day, double ml) {
        entries.add(Reading.of(day(day), new Observation.CupVolume(ml, 24, false)));
        return this;
    }

    private CarefulKeeperTest serviced(double day, Part... parts) {
        for (Part part : parts) {
            entries.add(new Service(day(day), part));
        }
        return this;
    }

    private CarefulKeeperTest started() {
        return serviced(0, Part.NECK_AND_CUP, Part.FILTER_PAD, Part.AIR_LINE);
    }

    private CarefulKeeperTest fullAndRunny(double day) {
        entries.add(Reading.of(
                day(day), new Observation.CupVolume(1200, 24, true), new Observation.FoamLook(FoamLookWord.RUNNY)));
        return this;
    }

    private Step at(double day) {
        return new CarefulKeeper(true)
                .next(new Visit(unit, unit.ratedSettings(CREST), new Journal(entries), day(day)))
                .step();
    }

    private static void moves(Step step, double byMm) {
        assertThat(step).isEqualTo(new Step.MoveWeir(byMm, CREST + byMm, false));
    }

    @Test
    void oneAtTheStartTheFirstOfThreeParts() {
        assertThat(cup(0, 300).at(0)).isEqualTo(new Step.ServicePart(Part.AIR_LINE));
    }

    @Test
    void twoWhenTheThreeAreDoneItWaits() {
        assertThat(cup(0, 30).started().at(0)).isInstanceOf(Step.Hold.class);
    }

    @Test
    void threeTwoAmountsUnderTheBandUpByFour() {
        moves(cup(0, 110).started().cup(1, 100).at(1), 4);
    }

    @Test
    void fourTwoAmountsUnderAFifthUpByEight() {
        moves(cup(0, 50).started().cup(1, 55).at(1), 8);
    }

    @Test
    void fiveTwoAmountsOverTheBandDownByFour() {
        moves(cup(0, 800).started().cup(1, 1600).at(1), -4);
    }

    @Test
    void sixTwoAmountsOverFiveTimesDownByEight() {
        moves(cup(0, 1600).started().cup(1, 1700).at(1), -8);
    }

    @Test
    void sevenOneAmountSinceTheMoveIsNotEnough() {
        cup(0, 100).started().cup(1, 100);
        entries.add(new WeirMove(day(1), CREST + 4, false));
        assertThat(cup(2, 100).at(2)).isInstanceOf(Step.Hold.class);
    }

    @Test
    void eightAFullCupOfRunnyFoamDownByTenBeforeAnyService() {
        moves(fullAndRunny(0).at(0), -10);
    }

    @Test
    void nineNeckAndPadAgainAfterAWeek() {
        assertThat(cup(0, 300).started().cup(7, 300).at(7)).isEqualTo(new Step.ServicePart(Part.NECK_AND_CUP));
    }

    @Test
    void tenBothPumpsAndAirLineAfterAMonthThoughThePumpsWereNeverDone() {
        cup(0, 300).started().cup(30, 300).serviced(28, Part.NECK_AND_CUP, Part.FILTER_PAD);
        assertThat(at(30)).isEqualTo(new Step.ServicePart(Part.AIR_LINE));
        assertThat(serviced(30, Part.AIR_LINE).at(30)).isEqualTo(new Step.ServicePart(Part.INJECTOR_PUMP));
        assertThat(serviced(30, Part.INJECTOR_PUMP).at(30)).isEqualTo(new Step.ServicePart(Part.RETURN_PUMP));
        assertThat(serviced(30, Part.RETURN_PUMP).at(30)).isInstanceOf(Step.Hold.class);
    }

    @Test
    void neverBeyondTheWeirsLimits() {
        entries.add(new WeirMove(day(0), 233, false));
        assertThat(started().cup(1, 20).cup(2, 20).at(2)).isEqualTo(new Step.MoveWeir(2, 235, false));
        entries.add(new WeirMove(day(2), 235, false));
        assertThat(cup(3, 20).cup(4, 20).at(4)).isInstanceOf(Step.Hold.class);
    }

    @Test
    void withoutUpkeepNothingIsServiced() {
        cup(0, 300);
        Visit visit = new Visit(unit, unit.ratedSettings(CREST), new Journal(entries), day(0));
        assertThat(new CarefulKeeper(false).next(visit).step()).isInstanceOf(Step.Hold.class);
    }
}
