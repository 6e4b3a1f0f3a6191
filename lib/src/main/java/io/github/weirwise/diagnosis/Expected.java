package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Sheet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What an instrument was expected to read before it was read: a number in the unit of the reading, in platinum-cobalt units for a
 * colour, and the amount's logarithm for a look at the foam.
 */
final class Expected {
    private Expected() {}

    /**
     * What is expected of an instrument; empty for one that shows no sum.
     *
     * @param state mean of the belief just before the reading
     */
    static Optional<Double> of(Instrument row, SumModel model, double[] state) {
        return row.sum().map(sum -> number(row, row.factor() * model.value(sum, state), model.sheet()));
    }

    private static double number(Instrument row, double scaled, Sheet sheet) {
        return switch (row) {
            case FUNNEL_LEVEL, HEAD_OVER_CREST, CREST_AGAINST_MARK, OUTSIDE_LEVEL, FOAM_LOOK -> scaled;
            case CUP_VOLUME -> Math.exp(scaled) * sheet.wantedMlPerDay();
            case AIR_FLOW -> Math.exp(scaled) * sheet.airLitresPerHour();
            case RETURN_FLOW -> Math.exp(scaled) * sheet.flowLitresPerHour();
            case FOAM_CREEP -> Math.exp(scaled) * sheet.wantedCreepMmPerMin();
            case DARKNESS, DARKNESS_MATCH -> Math.exp(scaled) * sheet.wantedPtCo();
            case FOAM_COLLAPSE, LEVEL_BEYOND_WEIR, SALINITY, WATER_TEMPERATURE, INSPECTION ->
                throw new IllegalStateException(row + " shows no sum");
        };
    }

    /** What was seen, in words, with what was expected. */
    static Phrase line(Phrase words, Observation seen, double expected) {
        return switch (Instrument.of(seen)) {
            case FUNNEL_LEVEL, HEAD_OVER_CREST, CREST_AGAINST_MARK, OUTSIDE_LEVEL ->
                line(words, Quantity.of(expected, Unit.MILLIMETRE));
            case CUP_VOLUME -> line(words, Quantity.of(expected, Unit.MILLILITRE_PER_DAY));
            case AIR_FLOW, RETURN_FLOW -> line(words, Quantity.of(expected, Unit.LITRE_PER_HOUR));
            case FOAM_CREEP -> line(words, Quantity.of(expected, Unit.MILLIMETRE_PER_MINUTE));
            case DARKNESS_MATCH -> line(words, Quantity.of(expected, Unit.PLATINUM_COBALT));
            case DARKNESS -> {
                DarknessWord word = DarknessWord.of(expected);
                yield word == ((Observation.Darkness) seen).word()
                        ? Phrase.of("diagnosis.expected.same", words)
                        : line(words, Phrase.of("diagnosis.darkness." + word));
            }
            case FOAM_LOOK -> {
                FoamLookWord look = look(expected);
                yield look == ((Observation.FoamLook) seen).look()
                        ? Phrase.of("diagnosis.expected.same", words)
                        : line(words, Phrase.of("diagnosis.look." + look));
            }
            case FOAM_COLLAPSE, LEVEL_BEYOND_WEIR, SALINITY, WATER_TEMPERATURE, INSPECTION -> words;
        };
    }

    private static Phrase line(Phrase words, Object expected) {
        return Phrase.of("diagnosis.expected", words, expected);
    }

    private static FoamLookWord look(double amountLog) {
        return List.of(FoamLookWord.values()).stream()
                .min(Comparator.comparingDouble(
                        word -> Math.abs(word.amountLog().middle() - amountLog)
                                - word.amountLog().width() / 2))
                .orElseThrow();
    }
}
