package io.github.weirwise.score;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Range;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Sum;
import io.github.weirwise.unit.Target;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Forecasts of a journal's own readings. Before each reading the belief is asked, with the entries before it, what the unit does at
 * that moment; the stated range is widened by the scatter that {@link Instrument} gives for a reading. Amounts are judged as
 * logarithms of the ratio to the wanted one, levels in millimetres. A cup that had run full says only "at least" and is left out.
 *
 * @param unit the unit
 * @param amounts forecasts of the amount, log of the ratio to the wanted
 * @param levels forecasts of the level, mm
 * @param fullCups readings left out because the cup was full
 * @since 0.2
 */
public record JournalScore(SkimmerUnit unit, List<Scored> amounts, List<Scored> levels, int fullCups) {
    static final int AVERAGE_OF = 5;
    /** Logarithms of the amount over which a share of every forecast is spread. */
    public static final double AMOUNT_WIDTH = 9;
    /** The same for levels, mm. */
    public static final double LEVEL_WIDTH_MM = 100;

    private static final double LEAST_AMOUNT = 0.01;

    /**
     * Scores a journal.
     *
     * @param start settings as they were before its first entry
     */
    public static JournalScore of(SkimmerUnit unit, Settings start, Journal journal) {
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
            List<JournalEntry> entries = journal.entries().stream().distinct().toList();
            Belief belief = Belief.of(unit, start, Journal.EMPTY, Instant.EPOCH);
            boolean known = false;
            int taken = 0;
            for (JournalEntry entry : entries) {
                if (entry instanceof Reading reading) {
                    int from = taken;
                    while (entries.get(taken).at().isBefore(reading.at())) {
                        known |= entries.get(taken) instanceof Reading;
                        taken++;
                    }
                    belief = belief.extended(entries.subList(from, taken), reading.at());
                    score(reading, belief, known);
                }
            }
            return new JournalScore(unit, List.copyOf(amounts), List.copyOf(levels), fullCups);
        }

        private void score(Reading reading, Belief belief, boolean known) {
            var cup = reading.find(Observation.CupVolume.class);
            var level = reading.find(Observation.FunnelLevel.class);
            boolean full = cup.map(Observation.CupVolume::full).orElse(false);
            fullCups += full ? 1 : 0;
            boolean amountDue = cup.isPresent() && !full;
            if (known && amountDue && lastAmount.next().isPresent()) {
                Range says = belief.amountNow().told(belief.width()).middle80();
                Bell bell = Bell.of(says.low(), says.high(), Instrument.CUP_VOLUME.scatter());
                amounts.add(scored(
                        reading, bell, lastAmount, meanAmount, log(cup.get().mlPerDay())));
            }
            if (known && level.isPresent() && lastLevel.next().isPresent()) {
                Range says = belief.sum(Sum.LEVEL, 0.5).middle80();
                Bell bell = Bell.of(says.low(), says.high(), Instrument.FUNNEL_LEVEL.scatter());
                levels.add(
                        scored(reading, bell, lastLevel, meanLevel, level.get().mm()));
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
    public static double coverage(List<Scored> all) {
        return all.stream()
                .mapToDouble(each -> each.forecast().holds(each.came()) ? 1 : 0)
                .average()
                .orElse(Double.NaN);
    }

    /** Mean log score of one of the three forecasts. */
    public static double logScore(List<Scored> all, Function<Scored, Bell> whose, double width) {
        return all.stream()
                .mapToDouble(each -> whose.apply(each).logScore(each.came(), width))
                .average()
                .orElse(Double.NaN);
    }

    /** Stated chance of an amount in band. */
    public static double inBand(Bell forecast) {
        return forecast.between(Math.log(Target.AMOUNT_BAND.low()), Math.log(Target.AMOUNT_BAND.high()));
    }

    /** Whether an amount, as a logarithm of the ratio, is in band. */
    public static boolean isInBand(double came) {
        return Target.AMOUNT_BAND.contains(Math.exp(came));
    }

    /** Mean squared distance between the stated chance to be in band and what came (Brier 1950); 0 is best. */
    public static double brier(List<Scored> amounts, Function<Scored, Bell> whose) {
        return amounts.stream()
                .mapToDouble(each -> Math.pow(inBand(whose.apply(each)) - (isInBand(each.came()) ? 1 : 0), 2))
                .average()
                .orElse(Double.NaN);
    }
}
