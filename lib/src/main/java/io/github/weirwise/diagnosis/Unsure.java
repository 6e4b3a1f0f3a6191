package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Target;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.DoubleSupplier;

/**
 * What was noted and is not taken in yet: a level or a meter far from everything known, until it was read a second time; a cup that cannot
 * hold as much, or is empty under foam that goes over the lip; a flood, until the cup read beside it tells how the water came there.
 *
 * @param levelMm the level that stands alone
 * @param meter the meter that does
 * @param cup whether the newest cup is to be read again
 * @param flood when a flood was noted
 */
record Unsure(Optional<Double> levelMm, Optional<Meter> meter, boolean cup, Optional<Instant> flood) {
    static final Unsure NOTHING = new Unsure(Optional.empty(), Optional.empty(), false, Optional.empty());

    /** What a meter showed, on its row's own scale. */
    record Meter(Instrument row, double value) {
        private boolean again(Instrument other, double next) {
            return row == other && Math.abs(next - value) <= FAR_OUT * row.scatter();
        }
    }

    /** A level as far off as this, in standard deviations and in mm, is as likely misread as true. */
    private static final double FAR_OUT = 3.5;

    private static final double FAR_OUT_MM = 6;
    /** Two readings as near as this are the same level. */
    private static final double SAME_MM = 5;

    private static final double DRY_LOG = Math.log(Target.AMOUNT_BAND.low());
    /** What was read beside a flood. */
    private static final Duration SAME_VISIT = Duration.ofHours(1);

    /**
     * After a level was read: one far from what is expected has to be read a second time before it is believed.
     *
     * @param offMm how far it is from what was expected
     * @param sdMm standard deviation of that
     */
    Unsure afterLevel(double mm, double offMm, DoubleSupplier sdMm) {
        boolean again = levelMm.filter(first -> Math.abs(first - mm) <= SAME_MM).isPresent();
        boolean doubted = !again && offMm > FAR_OUT_MM && offMm > FAR_OUT * sdMm.getAsDouble();
        return withLevel(doubted ? Optional.of(mm) : Optional.empty());
    }

    /** After a meter was read, so many standard deviations from what was expected. */
    Unsure afterMeter(Instrument row, double value, double deviations) {
        boolean doubted = deviations > FAR_OUT
                && meter.filter(first -> first.again(row, value)).isEmpty();
        return doubted
                ? new Unsure(levelMm, Optional.of(new Meter(row, value)), cup, flood)
                : meter.filter(first -> first.row() == row).isPresent() ? withoutMeter() : this;
    }

    Unsure withoutMeter() {
        return new Unsure(levelMm, Optional.empty(), cup, flood);
    }

    /** What waits to be read a second time: the cup before the level, and that before a meter. */
    Optional<Instrument> toReadAgain() {
        return cup
                ? Optional.of(Instrument.CUP_VOLUME)
                : levelMm.map(mm -> Instrument.FUNNEL_LEVEL).or(() -> meter.map(Meter::row));
    }

    boolean doubts(Instrument row) {
        return meter.filter(first -> first.row() == row).isPresent();
    }

    Unsure withLevel(Optional<Double> mm) {
        return new Unsure(mm, meter, cup, flood);
    }

    /** Whether a cup has to be read again: more than it can hold, or nothing at all under foam that goes over, told for the first time. */
    boolean doubts(Observation.CupVolume seen, boolean empty, Reading reading, SkimmerUnit unit) {
        if (seen.full()) {
            return false;
        }
        boolean goesOver = reading.find(Observation.FoamLook.class)
                .filter(foam -> foam.look().amountLog().low() > DRY_LOG)
                .isPresent();
        return !seen.possibleIn(unit) || empty && goesOver && !cup;
    }

    Unsure withCup(boolean again) {
        return new Unsure(levelMm, meter, again, flood);
    }

    Unsure withFlood(Optional<Instant> at) {
        return new Unsure(levelMm, meter, cup, at);
    }

    /** A flood that the entry after it explains is none. */
    Unsure before(JournalEntry entry, SkimmerUnit unit) {
        boolean explained =
                flood.isPresent() && entry instanceof Reading reading && filledSlowly(reading, flood.get(), unit);
        return explained ? withFlood(Optional.empty()) : this;
    }

    /** Whether a reading beside a flood shows that ordinary foam filled a cup that nobody emptied. */
    static boolean filledSlowly(Reading reading, Instant flood, SkimmerUnit unit) {
        return Duration.between(flood, reading.at()).abs().compareTo(SAME_VISIT) <= 0 && filledSlowly(reading, unit);
    }

    private static boolean filledSlowly(Reading reading, SkimmerUnit unit) {
        double most = unit.target().skimmateBandMlPerDay().high();
        return reading.find(Observation.FoamLook.class)
                        .filter(foam -> !foam.look().runs())
                        .isPresent()
                && reading.find(Observation.CupVolume.class)
                        .filter(cup -> cup.full() && cup.mlPerDay() <= most)
                        .isPresent();
    }
}
