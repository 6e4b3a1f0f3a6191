package io.github.weirwise.lab.score;

import io.github.weirwise.Weirwise;
import io.github.weirwise.diagnosis.Diagnosis;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Forecasts of a journal's own readings. Before each reading the library is asked, with the entries before it, what the unit does at
 * that moment; the stated range is widened by the scatter that {@link Instrument} gives for a reading. Amounts are judged as
 * logarithms of the ratio to the wanted one, levels in millimetres. A cup that had run full says only "at least" and is left out.
 *
 * @param unit the unit
 * @param amounts forecasts of the amount, log of the ratio to the wanted
 * @param levels forecasts of the level, mm
 * @param fullCups readings left out because the cup was full
 */
record JournalScore(SkimmerUnit unit, List<Scored> amounts, List<Scored> levels, int fullCups) {
    static final int AVERAGE_OF = 5;
    static final double AMOUNT_WIDTH = 9;
    static final double LEVEL_WIDTH_MM = 100;
    private static final double LEAST_AMOUNT = 0.01;

    static JournalScore of(SkimmerUnit unit, Settings start, Journal journal) {
        return new Maker(unit, start).score(journal);
    }

    private static final class Maker {
        private final SkimmerUnit unit;
        private final Settings start;
        private final SimpleForecast lastAmount = new SimpleForecast(1, 0.6);
        private final SimpleForecast meanAmount = new SimpleForecast(AVERAGE_OF, 0.6);
        private final SimpleForecast lastLevel = new SimpleForecast(1, 5);
        private final SimpleForecast meanLevel = new SimpleForecast(AVERAGE_OF, 5);
        private final List<Scored> amounts = new ArrayList<>();
        private final List<Scored> levels = new ArrayList<>();
        private int fullCups;

        Maker(SkimmerUnit unit, Settings start) {
            this.unit = unit;
            this.start = start;
        }

        JournalScore score(Journal journal) {
            for (Reading reading : journal.all(Reading.class)) {
                List<JournalEntry> before = journal.entries().stream()
                        .filter(entry -> entry.at().isBefore(reading.at()))
                        .toList();
                score(reading, new Journal(before));
            }
            return new JournalScore(unit, List.copyOf(amounts), List.copyOf(levels), fullCups);
        }

        private void score(Reading reading, Journal before) {
            var cup = reading.find(Observation.CupVolume.class);
            var level = reading.find(Observation.FunnelLevel.class);
            boolean full = cup.map(Observation.CupVolume::full).orElse(false);
            fullCups += full ? 1 : 0;
            boolean amountDue = cup.isPresent() && !full;
            boolean known = before.entries().stream().anyMatch(Reading.class::isInstance);
            if (known && (amountDue || level.isPresent())) {
                Diagnosis says =
                        Weirwise.advise(unit, start, before, reading.at()).diagnosis();
                if (amountDue && lastAmount.next().isPresent()) {
                    Bell bell = Bell.of(
                            log(says.skimmateMlPerDay().low()),
                            log(says.skimmateMlPerDay().high()),
                            Instrument.CUP_VOLUME.scatter());
                    amounts.add(scored(
                            reading, bell, lastAmount, meanAmount, log(cup.get().mlPerDay())));
                }
                if (level.isPresent() && lastLevel.next().isPresent()) {
                    Bell bell = Bell.of(
                            says.submergenceMm().low(), says.submergenceMm().high(), Instrument.FUNNEL_LEVEL.scatter());
                    levels.add(scored(
                            reading, bell, lastLevel, meanLevel, level.get().mm()));
                }
            }
            if (amountDue) {
                lastAmount.see(log(cup.get().mlPerDay()));
                meanAmount.see(log(cup.get().mlPerDay()));
            }
            level.ifPresent(seen -> {
                lastLevel.see(seen.mm());
                meanLevel.see(seen.mm());
            });
        }

        private static Scored scored(
                Reading reading, Bell bell, SimpleForecast last, SimpleForecast mean, double came) {
            return new Scored(
                    reading.at(), bell, last.next().orElseThrow(), mean.next().orElseThrow(), came);
        }

        private double log(double mlPerDay) {
            return Math.log(Math.max(LEAST_AMOUNT, mlPerDay / unit.target().skimmateMlPerDay()));
        }
    }

    /** How often what came lay in the stated range. */
    static double coverage(List<Scored> all) {
        return all.stream()
                .mapToDouble(each -> each.forecast().holds(each.came()) ? 1 : 0)
                .average()
                .orElse(Double.NaN);
    }

    /** Mean log score of one of the three forecasts. */
    static double logScore(List<Scored> all, Function<Scored, Bell> whose, double width) {
        return all.stream()
                .mapToDouble(each -> whose.apply(each).logScore(each.came(), width))
                .average()
                .orElse(Double.NaN);
    }

    /** Stated chance of an amount in band. */
    static double inBand(Bell forecast) {
        return forecast.between(Math.log(Target.AMOUNT_BAND.low()), Math.log(Target.AMOUNT_BAND.high()));
    }

    /** Whether an amount, as a logarithm of the ratio, is in band. */
    static boolean isInBand(double came) {
        return Target.AMOUNT_BAND.contains(Math.exp(came));
    }

    /** Mean squared distance between the stated chance to be in band and what came (Brier 1950); 0 is best. */
    static double brier(List<Scored> amounts, Function<Scored, Bell> whose) {
        return amounts.stream()
                .mapToDouble(each -> Math.pow(inBand(whose.apply(each)) - (isInBand(each.came()) ? 1 : 0), 2))
                .average()
                .orElse(Double.NaN);
    }
}
