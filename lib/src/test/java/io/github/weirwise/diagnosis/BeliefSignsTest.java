package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which way each thing that is read, done or happens moves the belief: signs of common practice and of the sums themselves. */
class BeliefSignsTest {
    private static final SkimmerUnit UNIT = FirstRoundUnits.middle();
    private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");
    private static final double CREST_MM = 205;
    private static final double WORN = 0.3;

    private static Instant hoursAgo(double hours) {
        return NOW.minusSeconds(Math.round(3600 * hours));
    }

    private static Belief belief(JournalEntry... entries) {
        return Belief.of(UNIT, UNIT.ratedSettings(CREST_MM), new Journal(List.of(entries)), NOW);
    }

    /** Two days of rounds, and after them what was seen at the second. */
    private static Belief seen(Observation... more) {
        return belief(round("A", 24), round("A", 0.5), Reading.of(NOW, more));
    }

    private static Reading round(String by, double hoursAgo) {
        return new Reading(
                hoursAgo(hoursAgo),
                by,
                List.of(
                        new Observation.FunnelLevel(22),
                        new Observation.CupVolume(240, 24, false),
                        new Observation.Darkness(DarknessWord.DARK_TEA),
                        new Observation.FoamLook(FoamLookWord.CREAMY)));
    }

    private static double tomorrow(Belief belief) {
        return belief.prospects().after(0, Set.of()).tomorrow().mean();
    }

    @Test
    void theLessAirIsReadTheLikelierThePartsThatTakeIt() {
        for (Part part : List.of(Part.AIR_LINE, Part.INJECTOR_PUMP, Part.INJECTOR_NOZZLE)) {
            double before = 0;
            for (double air : new double[] {150, 135, 120, 105}) {
                double chance = seen(new Observation.AirFlow(air)).chanceOver(part, WORN);
                assertThat(chance).as("%s at %s L/h", part, air).isGreaterThan(before);
                before = chance;
            }
        }
    }

    @Test
    void theLessFlowIsReadTheLikelierTheReturnPump() {
        double before = 0;
        for (double flow : new double[] {2200, 1950, 1700, 1500}) {
            double chance = seen(new Observation.ReturnFlow(flow)).chanceOver(Part.RETURN_PUMP, WORN);
            assertThat(chance).as("%s L/h", flow).isGreaterThan(before);
            before = chance;
        }
    }

    @Test
    void aCrestUnderItsMarkSpeaksForASlippedPlate() {
        double at = seen(new Observation.CrestAgainstMark(0)).chanceOver(Part.WEIR_PLATE, WORN);
        double under = seen(new Observation.CrestAgainstMark(-6)).chanceOver(Part.WEIR_PLATE, WORN);
        assertThat(under).isGreaterThan(0.5).isGreaterThan(5 * at);
    }

    @ParameterizedTest
    @EnumSource(Part.class)
    void whatALookFindsMovesItsPart(Part part) {
        if (!Part.SERVICEABLE.contains(part)) {
            double good = seen(new Observation.Inspection(part, Finding.GOOD))
                    .passing()
                    .mean();
            double bad = seen(new Observation.Inspection(part, Finding.BAD))
                    .passing()
                    .mean();
            if (part == Part.WATER_SURFACE) {
                assertThat(bad).as("oil breaks foam").isLessThan(good);
            } else if (part == Part.ADDITIVES) {
                assertThat(bad).as("additives make foam").isGreaterThan(good);
            } else {
                assertThat(bad).as("the sump's level is for the guard").isEqualTo(good);
            }
            return;
        }
        double none = seen().chanceOver(part, WORN);
        double good = seen(new Observation.Inspection(part, Finding.GOOD)).chanceOver(part, WORN);
        double doubtful =
                seen(new Observation.Inspection(part, Finding.DOUBTFUL)).chanceOver(part, WORN);
        double bad = seen(new Observation.Inspection(part, Finding.BAD)).chanceOver(part, WORN);
        assertThat(good).isLessThan(none);
        assertThat(doubtful).isGreaterThan(good);
        assertThat(bad).isGreaterThan(doubtful).isGreaterThan(2 * none).isGreaterThan(5 * good);
    }

    @Test
    void theLowerTheLevelIsReadTheLessIsForecast() {
        double before = Double.POSITIVE_INFINITY;
        for (double mm : new double[] {28, 25, 22, 19, 16}) {
            double log = tomorrow(belief(Reading.of(NOW, new Observation.FunnelLevel(mm))));
            assertThat(log).as("level %s mm", mm).isLessThan(before);
            before = log;
        }
    }

    static List<Part> serviceable() {
        return Part.SERVICEABLE;
    }

    @ParameterizedTest
    @MethodSource("serviceable")
    void aServiceMakesItsPartClean(Part part) {
        Reading bad = Reading.of(hoursAgo(2), new Observation.Inspection(part, Finding.BAD));
        assertThat(belief(bad).chanceOver(part, WORN)).isGreaterThan(0.5);
        Belief cleaned = belief(bad, new Service(hoursAgo(1), part));
        assertThat(cleaned.chanceOver(part, WORN)).isLessThan(0.01);
        assertThat(cleaned.size(part).mean()).isBetween(0.0, 0.08);
        assertThat(tomorrow(cleaned))
                .as("a clean part skims more, but for a pad that backed water up")
                .satisfies(log -> {
                    double dirty = tomorrow(belief(bad));
                    assertThat(part == Part.FILTER_PAD ? dirty : log)
                            .isGreaterThan(part == Part.FILTER_PAD ? log : dirty);
                });
    }

    @ParameterizedTest
    @ValueSource(doubles = {-4, -2, -1, 1, 2, 4})
    void aMoveChangesTheForecastByTheSlope(double mm) {
        Belief still = belief(round("A", 24), round("A", 1));
        double slope = still.prospects().slopePerMm();
        double foretold = still.prospects().after(mm, Set.of()).tomorrow().mean() - tomorrow(still);
        // The slope is that at the wanted amount; drier foam answers more, wetter foam less.
        assertThat(foretold).as("as foretold").isCloseTo(slope * mm, within(0.3 * Math.abs(slope * mm)));
        Belief moved = belief(round("A", 24), round("A", 1), new WeirMove(hoursAgo(0.5), CREST_MM + mm, false));
        double done = tomorrow(moved) - tomorrow(still);
        assertThat(done).as("as done").isCloseTo(foretold, within(0.06 * Math.abs(slope * mm)));
    }

    @Test
    void aFullCupRaisesAndAnEmptyOneLowersWhatIsForecast() {
        Belief still = belief(round("A", 24));
        Belief full = belief(round("A", 24), Reading.of(NOW, new Observation.CupVolume(1000, 24, true)));
        Belief empty = belief(round("A", 24), Reading.of(NOW, new Observation.CupVolume(0, 24, false)));
        assertThat(tomorrow(full)).isGreaterThan(tomorrow(still) + 0.2);
        assertThat(tomorrow(empty)).isLessThan(tomorrow(still) - 0.2);
    }

    /** A full cup tells that at least this much came: it must not pull a wetter belief down. */
    @Test
    void aSmallFullCupTellsALowerBoundOnly() {
        Belief wet = belief(Reading.of(hoursAgo(24), new Observation.CupVolume(900, 24, false)));
        Belief full = belief(
                Reading.of(hoursAgo(24), new Observation.CupVolume(900, 24, false)),
                Reading.of(NOW, new Observation.CupVolume(100, 24, true)));
        Belief measured = belief(
                Reading.of(hoursAgo(24), new Observation.CupVolume(900, 24, false)),
                Reading.of(NOW, new Observation.CupVolume(100, 24, false)));
        assertThat(tomorrow(full)).isGreaterThan(tomorrow(wet) - 0.02);
        assertThat(tomorrow(measured)).isLessThan(tomorrow(wet) - 0.3);
    }

    @Test
    void theReadersNamesDoNotMatter() {
        Belief one = belief(round("A", 24), round("B", 12), round("A", 1));
        Belief other = belief(round("Ada", 24), round("Ben", 12), round("Ada", 1));
        assertThat(BeliefNumbers.of(other)).isEqualTo(BeliefNumbers.of(one));
    }

    /** One eye's habit is shared by all its readings, so two people who agree tell more of the level. */
    @Test
    void twoReadersWhoAgreeTellMoreThanOneReaderTwice() {
        Belief one = belief(round("A", 24), round("A", 1));
        Belief two = belief(round("A", 24), round("B", 1));
        assertThat(two.sum(io.github.weirwise.unit.Sum.LEVEL, 0).sd())
                .isLessThan(one.sum(io.github.weirwise.unit.Sum.LEVEL, 0).sd());
    }

    @Test
    void rangesWidenWhileNobodyLooks() {
        Belief now = belief(round("A", 24), round("A", 1));
        double before = 0;
        for (int days : new int[] {0, 1, 3, 7, 14}) {
            Belief later = now.extended(List.of(), NOW.plus(Duration.ofDays(days)));
            double sd = later.amountNow().sd();
            assertThat(sd).as("after %d days", days).isGreaterThan(before);
            assertThat(later.prospects().branches())
                    .hasSameSizeAs(now.prospects().branches());
            before = sd;
        }
    }

    @Test
    void whatPassesIsGoneToAThirdInItsTime() {
        Belief now = belief(round("A", 24), round("A", 1), new Happening(hoursAgo(0), Happening.Kind.CONDITIONER));
        double stirred = now.passing().mean();
        assertThat(stirred).isGreaterThan(1);
        Belief later = now.extended(List.of(), NOW.plusSeconds(Math.round(86400 * Prior.PASSING_DAYS)));
        assertThat(later.passing().mean()).isCloseTo(stirred / Math.E, within(1e-6));
        assertThat(now.extended(List.of(), NOW.plus(Duration.ofDays(12)))
                        .passing()
                        .mean())
                .isCloseTo(0, within(1e-3));
    }

    @Test
    void fedHeavilyLowersAndAConditionerRaisesWhatIsForecast() {
        double still = tomorrow(belief(round("A", 1)));
        assertThat(tomorrow(belief(round("A", 1), new Happening(NOW, Happening.Kind.FED_HEAVILY))))
                .isLessThan(still);
        assertThat(tomorrow(belief(round("A", 1), new Happening(NOW, Happening.Kind.CONDITIONER))))
                .isGreaterThan(still);
    }

    @Test
    void aFirstStartFindsEveryPartClean() {
        List<JournalEntry> entries = new ArrayList<>();
        for (Part part : Part.SERVICEABLE) {
            entries.add(Reading.of(hoursAgo(3), new Observation.Inspection(part, Finding.BAD)));
        }
        entries.add(new Happening(hoursAgo(1), Happening.Kind.FIRST_START));
        Belief belief = belief(entries.toArray(JournalEntry[]::new));
        for (Part part : Part.SERVICEABLE) {
            assertThat(belief.chanceOver(part, WORN)).as(part.name()).isLessThan(0.01);
        }
    }

    @Test
    void theOutcomesOfALookAreAllOfThemAndNoneIsLikelierThanTheOneBefore() {
        Foresight look =
                belief(round("A", 24), round("A", 1)).foresee(Part.AIR_LINE).orElseThrow();
        double all = 0;
        double before = 1;
        for (int i : look.likeliestFirst()) {
            assertThat(look.chance(i)).isLessThanOrEqualTo(before);
            before = look.chance(i);
            all += look.chance(i);
        }
        assertThat(look.likeliestFirst()).hasSize(look.outcomes());
        assertThat(all).isCloseTo(1, within(1e-5));
    }
}
