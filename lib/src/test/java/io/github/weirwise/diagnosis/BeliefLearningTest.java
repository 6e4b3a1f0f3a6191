package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a belief makes of a journal as it grows. */
class BeliefLearningTest {
    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");
    private static final double START_CREST_MM = 202;
    private static final int MONTH_DAYS = 30;
    private static final BeliefOptions OPTIONS = BeliefOptions.DEFAULT;

    private final SkimmerUnit unit = FirstRoundUnits.middle();

    private static Instant day(int day) {
        return START.plus(Duration.ofDays(day));
    }

    private static Reading reading(Instant at, double levelMm, double mlPerDay) {
        boolean dry = mlPerDay < 120;
        return Reading.of(
                at,
                new Observation.FunnelLevel(levelMm),
                new Observation.CupVolume(mlPerDay, 24, false),
                new Observation.Darkness(dry ? DarknessWord.COFFEE : DarknessWord.DARK_TEA),
                new Observation.FoamLook(dry ? FoamLookWord.STIFF : FoamLookWord.CREAMY));
    }

    /** A month of a sound unit, read each day with a person's scatter, its weir set to three heights. */
    private Journal month(long seed) {
        Random random = new Random(seed);
        List<JournalEntry> entries = new ArrayList<>();
        double crestMm = START_CREST_MM;
        for (int day = 0; day < MONTH_DAYS; day++) {
            if (day == 10 || day == 20) {
                crestMm += 2;
                entries.add(new WeirMove(day(day - 1).plusSeconds(600), crestMm, false));
            }
            OperatingPoint point = OperatingPoint.of(unit, unit.ratedSettings(crestMm));
            entries.add(reading(
                    day(day),
                    point.submergenceMm() + 1.5 * random.nextGaussian(),
                    point.skimmateMlPerDay() * Math.exp(0.2 * random.nextGaussian())));
        }
        return new Journal(entries);
    }

    private Belief belief(double crestMm, Journal journal, Instant now, BeliefOptions options) {
        return Belief.of(unit, unit.ratedSettings(crestMm), journal, now, options);
    }

    /** Width of the 80 % range of the logarithm of the amount after a raise by 3 mm. */
    private static double forecastWidth(Belief belief) {
        WeightedSpread spread = WeightedSpread.of(
                belief.possibilities(),
                i -> belief.possibilities()
                        .get(i)
                        .ahead(belief.crestMm() + 3, 24, null)
                        .logAmount(),
                i -> true);
        return spread.quantile(0.9) - spread.quantile(0.1);
    }

    private static double lifeWidth(Belief belief) {
        return Math.log(belief.diagnosis().meanLifeSeconds().high()
                / belief.diagnosis().meanLifeSeconds().low());
    }

    /** After a month the ranges are at most 0.95 (life) and 0.7 (forecast) as wide as after a day, averaged over journals. */
    @Test
    void aMonthOfJournalSharpensWhatIsPredicted() {
        double life = 0;
        double forecast = 0;
        int journals = 4;
        for (int seed = 1; seed <= journals; seed++) {
            Journal journal = month(seed);
            Belief early = belief(START_CREST_MM, journal, day(0), OPTIONS);
            Belief late = belief(START_CREST_MM, journal, day(MONTH_DAYS), OPTIONS);
            life += lifeWidth(late) / lifeWidth(early) / journals;
            forecast += forecastWidth(late) / forecastWidth(early) / journals;
        }

        assertThat(life).as("range of the mean life").isLessThan(0.95);
        assertThat(forecast).as("range of the amount after a raise by 3 mm").isLessThan(0.7);
    }

    private Journal crusted() {
        return Journal.of(
                reading(day(0), 22, 250),
                reading(day(1), 22, 240),
                reading(day(3), 20, 40),
                reading(day(4), 20, 30),
                Reading.of(
                        day(4), new Observation.AirFlow(95), new Observation.Inspection(Part.AIR_LINE, Finding.BAD)));
    }

    @Test
    void aServiceResetsItsCause() {
        Belief before = belief(205, crusted(), day(4).plusSeconds(60), OPTIONS);
        assertThat(before.diagnosis().probability(Cause.AIR_LINE_RESTRICTED)).isGreaterThan(0.5);
        Journal served = crusted().with(new Service(day(4).plusSeconds(600), Part.AIR_LINE));
        Belief at = belief(205, served, day(4).plusSeconds(700), OPTIONS);
        assertThat(at.diagnosis().probability(Cause.AIR_LINE_RESTRICTED)).isLessThan(0.05);
        Belief after = belief(205, served.with(reading(day(6), 22, 245)), day(6), OPTIONS);
        assertThat(after.diagnosis().verdict()).isEqualTo(Verdict.ON_TARGET);
    }

    @Test
    void foulingThatIsNotServicedIsExpectedToGrow() {
        Belief belief = belief(205, crusted(), day(4), OPTIONS);
        for (Possibility each : belief.possibilities()) {
            if (each.cause().growth() == Cause.Growth.DAYS && each.sizeNow() > 0) {
                assertThat(each.firstSizeAt(48)).isGreaterThanOrEqualTo(each.sizeNow());
            }
        }
        assertThat(belief.possibilities().stream().anyMatch(each -> each.firstSizeAt(48) > each.sizeNow()))
                .isTrue();
    }

    @Test
    void readingsThatDoNotFitTogetherAreToldSo() {
        Journal good = Journal.of(reading(day(0), 22, 250), reading(day(1), 22, 260), reading(day(2), 22, 240));
        Reading contradictory = Reading.of(day(3), new Observation.FunnelLevel(120));
        assertThat(keys(belief(205, good, day(2), OPTIONS))).doesNotContain("diagnosis.doNotFit");
        assertThat(keys(belief(205, good.with(contradictory), day(3), OPTIONS))).contains("diagnosis.doNotFit");
    }

    private static List<String> keys(Belief belief) {
        return belief.diagnosis().warnings().stream()
                .map(Warning::text)
                .map(each -> each.key())
                .toList();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 7, 2026})
    void theSameSeedGivesTheSameBelief(long seed) {
        BeliefOptions options = new BeliefOptions(300, seed);
        Diagnosis one = belief(205, crusted(), day(4), options).diagnosis();
        assertThat(belief(205, crusted(), day(4), options).diagnosis()).isEqualTo(one);
        assertThat(belief(205, crusted(), day(4), new BeliefOptions(300, seed + 1))
                        .diagnosis())
                .isNotEqualTo(one);
    }

    /** A weak relation: sixteen times the possibilities bring the shares of the causes closer to those of many more. */
    @Test
    void morePossibilitiesComeCloserToMany() {
        Journal open = Journal.of(reading(day(0), 22, 250), reading(day(1), 21, 90), reading(day(2), 21, 80));
        Diagnosis reference =
                belief(205, open, day(2), new BeliefOptions(20000, 99)).diagnosis();
        assertThat(meanDistance(open, 3200, reference)).isLessThan(meanDistance(open, 200, reference));
    }

    private double meanDistance(Journal journal, int possibilities, Diagnosis reference) {
        return IntStream.rangeClosed(1, 4)
                .mapToDouble(seed -> distance(
                        belief(205, journal, day(2), new BeliefOptions(possibilities, seed))
                                .diagnosis(),
                        reference))
                .average()
                .orElseThrow();
    }

    private static double distance(Diagnosis one, Diagnosis other) {
        double sum = 0;
        for (Cause cause : Cause.values()) {
            sum += Math.abs(one.probability(cause) - other.probability(cause));
        }
        return sum;
    }
}
