package io.github.weirwise.demo.desk;

import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Range;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How good the forecasts have been at a unit: before each of its last cups the adviser is asked, with no more than the entries
 * before it, what the unit gives; that is held against what came. A cup that had run full says only "at least" and is left out.
 *
 * @param cups oldest first, {@value #MOST} at most
 */
public record Score(List<Cup> cups) {
    /** How many cups are looked at. */
    public static final int MOST = 20;

    private static final double TENTH = 1.2815515655446004;
    private static final double LEAST_ML_PER_DAY = 1;

    /**
     * One cup.
     *
     * @param at when it was read
     * @param mlPerDay the forecast, widened by the scatter of such a reading; holds with about 80 % chance
     * @param came what was read
     * @param before the cup before it
     */
    public record Cup(Instant at, Range mlPerDay, double came, double before) {
        /** Whether it came as forecast. */
        public boolean held() {
            return mlPerDay.contains(came);
        }
    }

    /** Copies the list. */
    public Score {
        cups = List.copyOf(cups);
    }

    /** Works it out; takes a moment, so not on the event thread. */
    public static Score of(Adviser adviser, SkimmerUnit unit, Settings told, Journal journal) {
        List<Reading> read = journal.all(Reading.class).stream()
                .filter(reading -> reading.find(Observation.CupVolume.class)
                        .filter(cup -> !cup.full())
                        .isPresent())
                .toList();
        List<Cup> cups = new ArrayList<>();
        for (int i = Math.max(1, read.size() - MOST); i < read.size(); i++) {
            Instant at = read.get(i).at();
            List<JournalEntry> before = journal.entries().stream()
                    .filter(entry -> entry.at().isBefore(at))
                    .toList();
            Range forecast = adviser.advise(unit, told, new Journal(before), at)
                    .diagnosis()
                    .skimmateMlPerDay();
            cups.add(new Cup(at, readAs(forecast), amount(read.get(i)), amount(read.get(i - 1))));
        }
        return new Score(cups);
    }

    private static double amount(Reading reading) {
        return Math.max(
                LEAST_ML_PER_DAY,
                reading.find(Observation.CupVolume.class).orElseThrow().mlPerDay());
    }

    /** What is there is read with a scatter of its own. */
    private static Range readAs(Range amount) {
        double low = Math.log(Math.max(LEAST_ML_PER_DAY, amount.low()));
        double high = Math.log(Math.max(LEAST_ML_PER_DAY, amount.high()));
        double half = Math.hypot((high - low) / 2, TENTH * Instrument.CUP_VOLUME.scatter());
        double middle = (low + high) / 2;
        return new Range(Math.exp(middle - half), Math.exp(middle + half));
    }

    /** How many came as forecast. */
    public long held() {
        return cups.stream().filter(Cup::held).count();
    }

    /** By what factor the middle of the forecasts was off, on the usual cup. */
    public double offBy() {
        return usual(cup ->
                Math.sqrt(Math.max(1e-9, cup.mlPerDay().low()) * cup.mlPerDay().high()));
    }

    /** By what factor the cup before it would have been off as a forecast, on the usual cup. */
    public double lastOffBy() {
        return usual(Cup::before);
    }

    private double usual(ToDoubleFunction<Cup> forecast) {
        double[] off = cups.stream()
                .mapToDouble(cup -> Math.abs(Math.log(cup.came() / forecast.applyAsDouble(cup))))
                .sorted()
                .toArray();
        return off.length == 0 ? Double.NaN : Math.exp((off[off.length / 2] + off[(off.length - 1) / 2]) / 2);
    }
}
