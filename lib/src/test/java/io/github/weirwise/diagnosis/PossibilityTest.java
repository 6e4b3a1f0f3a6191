package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Part;
import java.util.List;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;

/** One possibility looked at closely: what it expects agrees with the unit's law, and readings that show it are likeliest. */
class PossibilityTest {
    private final Timeline timeline = new Timeline(Journals.UNIT, Journals.SET, Journal.EMPTY, Journals.NOW);
    private final Unknowns plain = new Unknowns(1, Journals.UNIT.traits().lifeShape(), 1, 1, 1, 0, 1, 0, 0, 0, 1);
    private final Possibility sound =
            new Possibility(new Foresight(Journals.UNIT, 205), timeline, CauseCourse.NONE, CauseCourse.NONE, plain, 1);

    @Test
    void withoutAFaultItExpectsTheUnitsOwnOperatingPoint() {
        for (double crest = 201; crest <= 209; crest += 2) {
            OperatingPoint point = OperatingPoint.of(Journals.UNIT, Journals.SET.withWeirCrestMm(crest));
            Outlook outlook = sound.now(crest);
            assertThat(outlook.submergenceMm()).isCloseTo(point.submergenceMm(), within(0.3));
            assertThat(outlook.headMm()).isCloseTo(point.headMm(), within(0.3));
            assertThat(outlook.airLitresPerHour()).isCloseTo(150, within(0.5));
            double amount =
                    Math.exp(outlook.logAmount()) * Journals.UNIT.target().skimmateMlPerDay();
            assertThat(amount / point.skimmateMlPerDay()).isBetween(0.85, 1.18);
            assertThat(outlook.flooding()).isFalse();
        }
    }

    @Test
    void aHigherWeirRaisesTheLevelAndTheAmount() {
        Outlook before = sound.now(190);
        for (double crest = 192; crest <= 220; crest += 2) {
            Outlook after = sound.now(crest);
            assertThat(after.submergenceMm()).isGreaterThan(before.submergenceMm());
            assertThat(after.logAmount()).isGreaterThan(before.logAmount());
            assertThat(after.outsideMm()).isGreaterThan(before.outsideMm());
            before = after;
        }
    }

    @Test
    void nothingIsFaultyAndTimeChangesNothing() {
        assertThat(sound.cause()).isEqualTo(Cause.NOTHING_WRONG);
        assertThat(sound.secondCause()).isEqualTo(Cause.NOTHING_WRONG);
        assertThat(sound.sizeNow()).isZero();
        assertThat(sound.faultyParts(0)).isEmpty();
        assertThat(sound.passing(0.01)).isFalse();
        assertThat(sound.slipMm()).isZero();
        assertThat(sound.drownedByMm()).isZero();
        assertThat(sound.salinityShift()).isZero();
        assertThat(sound.flowLitresPerHour()).isEqualTo(2200);
        assertThat(sound.meanLifeSeconds()).isEqualTo(Journals.UNIT.traits().meanLifeSeconds());
        assertThat(sound.ahead(205, 48, Part.AIR_LINE)).isEqualTo(sound.now(205));
    }

    @Test
    void theReadingThatShowsTheTruthIsTheLikeliest() {
        Outlook outlook = sound.now(205);
        double ml = Math.exp(outlook.logAmount()) * Journals.UNIT.target().skimmateMlPerDay();
        peaks(Observation.FunnelLevel::new, outlook.submergenceMm(), 2, 6);
        peaks(Observation.OutsideLevel::new, outlook.outsideMm(), 2, 6);
        peaks(Observation.HeadOverCrest::new, outlook.headMm(), 2, 6);
        peaks(Observation.CrestAgainstMark::new, 0, 1.5, 6);
        peaks(Observation.AirFlow::new, 150, 12, 40);
        peaks(Observation.ReturnFlow::new, 2200, 180, 600);
        peaks(Observation.Salinity::new, 35, 1, 3);
        peaks(Observation.FoamCollapse::new, sound.meanLifeSeconds(), 12, 22);
        peaks(Observation.DarknessMatch::new, outlook.darknessPtCo(), 500, 1400);
        peaks(value -> new Observation.CupVolume(value, 24, false), ml, 90, 220);
    }

    /** Likelier at the truth than near it, and near it than far from it, on both sides; far off it stops mattering. */
    private void peaks(DoubleFunction<Observation> observation, double truth, double near, double far) {
        double at = log(observation.apply(truth));
        for (int side : List.of(-1, 1)) {
            double nearby = log(observation.apply(truth + side * near));
            double away = log(observation.apply(truth + side * far));
            assertThat(nearby).as("%s", observation.apply(truth + side * near)).isLessThan(at);
            assertThat(away).as("%s", observation.apply(truth + side * far)).isLessThan(nearby);
            assertThat(at - away).isLessThan(12);
        }
    }

    @Test
    void aMisreadingCostsABoundedAmountHoweverFarOffItIs() {
        assertThat(log(new Observation.FunnelLevel(300)))
                .isCloseTo(log(new Observation.FunnelLevel(-200)), within(1e-9));
        assertThat(log(new Observation.AirFlow(19_000))).isCloseTo(log(new Observation.AirFlow(1)), within(1e-9));
    }

    @Test
    void wordsAreLikeliestWhereTheAmountPutsThem() {
        Possibility here = sound;
        double creamy = here.expectedNow().logLikelihood(new Observation.FoamLook(FoamLookWord.CREAMY));
        for (FoamLookWord look : FoamLookWord.values()) {
            assertThat(here.expectedNow().logLikelihood(new Observation.FoamLook(look)))
                    .isLessThanOrEqualTo(creamy);
        }
        double sum = 0;
        for (FoamLookWord look : FoamLookWord.values()) {
            sum += Math.exp(log(new Observation.FoamLook(look)));
        }
        assertThat(sum).as("the looks exclude each other").isCloseTo(1, within(0.02));
        double words = 0;
        for (DarknessWord word : DarknessWord.values()) {
            words += Math.exp(log(new Observation.Darkness(word)));
        }
        assertThat(words).as("the words exclude each other").isCloseTo(1, within(0.02));
    }

    @Test
    void aFullCupSaysAtLeastSoMuch() {
        double little = log(new Observation.CupVolume(20, 24, true));
        double much = log(new Observation.CupVolume(3000, 24, true));
        assertThat(little).isGreaterThan(much);
        assertThat(Math.exp(little)).isBetween(0.8, 1.0);
    }

    @Test
    void afreeWeirHasItsWaterBelowTheCrest() {
        assertThat(log(new Observation.LevelBeyondWeir(-40)))
                .isGreaterThan(log(new Observation.LevelBeyondWeir(15)) + 2);
        assertThat(log(new Observation.LevelBeyondWeir(-40))).isGreaterThan(log(new Observation.LevelBeyondWeir(-100)));
    }

    @Test
    void aSoundPartIsMostLikelyFoundGood() {
        double good = log(new Observation.Inspection(Part.AIR_LINE, Finding.GOOD));
        double doubtful = log(new Observation.Inspection(Part.AIR_LINE, Finding.DOUBTFUL));
        double bad = log(new Observation.Inspection(Part.AIR_LINE, Finding.BAD));
        assertThat(good).isGreaterThan(doubtful);
        assertThat(doubtful).isGreaterThan(bad);
        assertThat(Math.exp(good) + Math.exp(doubtful) + Math.exp(bad)).isCloseTo(1, within(0.01));
    }

    @Test
    void theTemperatureSaysNothing() {
        assertThat(log(new Observation.WaterTemperature(30))).isZero();
    }

    private double log(Observation observation) {
        return sound.expectedNow().logLikelihood(observation);
    }
}
