package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Sheet;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every kind of observation has its row, and every row does what it says to the belief. */
class InstrumentTest {
    private static final SkimmerUnit UNIT = FirstRoundUnits.middle();
    private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");
    private static final Sheet SHEET = Sheet.of(UNIT, UNIT.ratedSettings(205));

    private static Belief after(Observation... seen) {
        return Belief.of(UNIT, UNIT.ratedSettings(205), Journal.of(Reading.of(NOW, seen)), NOW);
    }

    /** A low and a high reading that a keeper may write down. */
    private static List<Observation> lowAndHigh(Instrument row) {
        return switch (row) {
            case FUNNEL_LEVEL -> List.of(new Observation.FunnelLevel(12), new Observation.FunnelLevel(30));
            case CUP_VOLUME ->
                List.of(new Observation.CupVolume(60, 24, false), new Observation.CupVolume(700, 24, false));
            case DARKNESS ->
                List.of(new Observation.Darkness(DarknessWord.STRAW), new Observation.Darkness(DarknessWord.COFFEE));
            case DARKNESS_MATCH -> List.of(new Observation.DarknessMatch(400), new Observation.DarknessMatch(6000));
            case FOAM_LOOK ->
                List.of(new Observation.FoamLook(FoamLookWord.STIFF), new Observation.FoamLook(FoamLookWord.STREAMING));
            case HEAD_OVER_CREST -> List.of(new Observation.HeadOverCrest(15), new Observation.HeadOverCrest(40));
            case CREST_AGAINST_MARK ->
                List.of(new Observation.CrestAgainstMark(-8), new Observation.CrestAgainstMark(0));
            case OUTSIDE_LEVEL -> List.of(new Observation.OutsideLevel(-15), new Observation.OutsideLevel(10));
            case AIR_FLOW -> List.of(new Observation.AirFlow(90), new Observation.AirFlow(150));
            case FOAM_COLLAPSE -> List.of(new Observation.FoamCollapse(10), new Observation.FoamCollapse(600));
            case FOAM_CREEP -> List.of(new Observation.FoamCreep(2), new Observation.FoamCreep(200));
            case LEVEL_BEYOND_WEIR ->
                List.of(new Observation.LevelBeyondWeir(-40), new Observation.LevelBeyondWeir(10));
            case RETURN_FLOW -> List.of(new Observation.ReturnFlow(1300), new Observation.ReturnFlow(2200));
            case SALINITY -> List.of(new Observation.Salinity(29), new Observation.Salinity(35));
            case WATER_TEMPERATURE ->
                List.of(new Observation.WaterTemperature(18), new Observation.WaterTemperature(29));
            case INSPECTION ->
                List.of(
                        new Observation.Inspection(Part.AIR_LINE, Finding.GOOD),
                        new Observation.Inspection(Part.AIR_LINE, Finding.BAD));
        };
    }

    @Test
    void everyKindOfObservationHasOneRow() {
        List<String> rows = Arrays.stream(Instrument.values())
                .map(row -> row.kind().getName())
                .toList();
        List<String> kinds = Arrays.stream(Observation.class.getPermittedSubclasses())
                .map(Class::getName)
                .toList();
        assertThat(rows).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(kinds);
    }

    @ParameterizedTest
    @EnumSource(Instrument.class)
    void anObservationFindsItsRow(Instrument row) {
        assertThat(lowAndHigh(row))
                .allSatisfy(seen -> assertThat(Instrument.of(seen)).isEqualTo(row));
    }

    @ParameterizedTest
    @EnumSource(Instrument.class)
    void aReadingMovesTheBeliefOrTheRowSaysWhyNot(Instrument row) {
        List<Double> nothing = BeliefNumbers.of(after());
        List<Double> low = BeliefNumbers.of(after(lowAndHigh(row).get(0)));
        List<Double> high = BeliefNumbers.of(after(lowAndHigh(row).get(1)));
        if (row.noEffect().isEmpty()) {
            assertThat(low).isNotEqualTo(high).isNotEqualTo(nothing);
            assertThat(high).isNotEqualTo(nothing);
        } else {
            assertThat(row.noEffect().get())
                    .as("a reason in words")
                    .contains(" ")
                    .hasSizeGreaterThan(20);
        }
    }

    @Test
    void theHalfTimeOfStandingFoamMovesNoNumber() {
        assertThat(BeliefNumbers.of(after(new Observation.FoamCollapse(10)))).isEqualTo(BeliefNumbers.of(after()));
    }

    @Test
    void aTemperatureIsTakenAsThatOfTheSettings() {
        assertThat(after(new Observation.WaterTemperature(18)).settings().waterCelsius())
                .isEqualTo(18);
    }

    /** The row's number goes the way that its sum goes: more is more, but for darkness, which goes against the amount. */
    @ParameterizedTest
    @EnumSource(Instrument.class)
    void aHigherReadingMeansMoreOfTheRowsSum(Instrument row) {
        if (row.sum().isEmpty()) {
            assertThat(row.showsPart() ^ row.noEffect().isPresent()).isTrue();
            return;
        }
        double low = after(lowAndHigh(row).get(0)).sum(row.sum().get(), 0).mean();
        double high = after(lowAndHigh(row).get(1)).sum(row.sum().get(), 0).mean();
        assertThat((high - low) * row.factor())
                .as("%s by %s", row.sum().get(), row)
                .isPositive();
    }

    @ParameterizedTest
    @EnumSource(Instrument.class)
    void aRowsNumbersAreSoundAndItsScaleIsItsOwn(Instrument row) {
        assertThat(row.scatter()).isPositive();
        assertThat(row.minutes()).isBetween(1, 30);
        assertThat(row.isWord() && row.showsPart()).isFalse();
        if (row.noEffect().isPresent()) {
            return;
        }
        for (Observation seen : lowAndHigh(row)) {
            if (row.isWord()) {
                assertThat(row.range(seen, SHEET).low())
                        .isLessThan(row.range(seen, SHEET).high());
            } else {
                assertThat(row.value(seen, SHEET)).isFinite();
            }
        }
    }
}
