package io.github.weirwise.advice;

import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * A flood that somebody saw: streaming foam, a full cup with wet foam, a cup that filled faster than wanted foam can fill it, or
 * a flood noted as such. A cup that is full after days of ordinary foam is none. The newest reading of cup or foam overrules
 * what was seen before it.
 *
 * @param at when it was seen
 * @param mlPerDay at least so much ran into the cup, where a cup was read
 * @param levelMm water over the funnel base, where it was read at the same time
 * @param calm whether foam was seen at the same time that does not run
 * @param answeredAt when the weir was lowered, or the air turned down or off, afterwards
 * @param beforeAt when that was done the last time before it was seen again
 */
record FloodSeen(
        Instant at,
        OptionalDouble mlPerDay,
        OptionalDouble levelMm,
        boolean calm,
        Optional<Instant> answeredAt,
        Optional<Instant> beforeAt) {
    /** A reading older than this no longer says what the foam does. */
    static final Duration FRESH = Duration.ofHours(12);

    /** A cup found full, or foam that still runs, within this time of a flood that nobody answered is that flood. */
    private static final Duration FULL = Duration.ofDays(2);

    private static final Duration BESIDE = Duration.ofHours(1);
    private static final double LEAST_LOWERING_MM = 1;

    /** The flood that the journal ends with, however old; empty when calm foam was seen since. */
    static Optional<FloodSeen> lastIn(GuardScene scene) {
        return scene.noted().flood();
    }

    /**
     * The flood there is after an entry.
     *
     * @param newest the newest reading before it
     */
    static Optional<FloodSeen> after(
            Optional<FloodSeen> flood,
            JournalEntry entry,
            Optional<Reading> newest,
            Settings before,
            Settings after,
            SkimmerUnit unit) {
        if (entry instanceof Reading reading && tells(reading)) {
            boolean slowly =
                    flood.filter(each -> each.filledSlowly(reading, unit)).isPresent();
            boolean same =
                    !slowly && flood.filter(each -> each.goesOn(reading, unit)).isPresent();
            boolean seen = shows(reading, unit) || same && full(reading, unit);
            return seen ? Optional.of(of(reading, answered(flood))) : same ? flood : Optional.empty();
        }
        if (entry instanceof Happening happening && happening.kind() == Happening.Kind.FLOOD) {
            FloodSeen seen = newest.filter(reading -> tells(reading) && beside(reading.at(), happening.at()))
                    .map(reading -> of(reading, answered(flood)))
                    .orElseGet(() -> new FloodSeen(
                            happening.at(),
                            flood.map(FloodSeen::mlPerDay).orElse(OptionalDouble.empty()),
                            OptionalDouble.empty(),
                            false,
                            Optional.empty(),
                            answered(flood)));
            return Optional.of(seen.at(happening.at()));
        }
        return calms(entry, before, after) ? flood.map(each -> each.answered(entry.at())) : flood;
    }

    private FloodSeen at(Instant time) {
        return new FloodSeen(time, mlPerDay, levelMm, calm, answeredAt, beforeAt);
    }

    private FloodSeen answered(Instant time) {
        return new FloodSeen(at, mlPerDay, levelMm, calm, Optional.of(time), beforeAt);
    }

    private static boolean beside(Instant first, Instant second) {
        return Duration.between(first, second).compareTo(BESIDE) <= 0;
    }

    private static Optional<Instant> answered(Optional<FloodSeen> flood) {
        return flood.flatMap(each -> each.answeredAt.or(() -> each.beforeAt));
    }

    /** Whether a cup was read at the time, so that the amount is known. */
    boolean measured() {
        return mlPerDay.isPresent();
    }

    private static FloodSeen of(Reading reading, Optional<Instant> before) {
        Optional<Observation.CupVolume> cup = reading.find(Observation.CupVolume.class);
        Optional<Observation.FunnelLevel> level = reading.find(Observation.FunnelLevel.class);
        return new FloodSeen(
                reading.at(),
                cup.isPresent() ? OptionalDouble.of(cup.get().mlPerDay()) : OptionalDouble.empty(),
                level.isPresent() ? OptionalDouble.of(level.get().mm()) : OptionalDouble.empty(),
                calm(reading),
                Optional.empty(),
                before);
    }

    /** Whether a reading says anything about running over. */
    static boolean tells(Reading reading) {
        return reading.find(Observation.CupVolume.class).isPresent()
                || reading.find(Observation.FoamLook.class).isPresent();
    }

    /** A cup found full, foam that still runs, or a cup just emptied that fills within half a day: it is the same flood. */
    private boolean goesOn(Reading reading, SkimmerUnit unit) {
        Optional<FoamLookWord> foam = foam(reading);
        boolean full = full(reading, unit);
        boolean runny = foam.filter(FoamLookWord.RUNNY::equals).isPresent();
        Duration since = Duration.between(at, reading.at());
        if (answeredAt.isPresent()
                || since.compareTo(full || runny ? FULL : FRESH) > 0
                || foam.filter(FoamLookWord::stands).isPresent()) {
            return false;
        }
        return full || runny || foam.isEmpty() && fillsWithinHours(reading, unit);
    }

    private static Optional<FoamLookWord> foam(Reading reading) {
        return reading.find(Observation.FoamLook.class).map(Observation.FoamLook::look);
    }

    private static boolean cup(Reading reading, Predicate<Observation.CupVolume> is) {
        return reading.find(Observation.CupVolume.class).filter(is).isPresent();
    }

    /** A cup with a drain holds more than itself in its container; it is full only where it is said to be. */
    private static boolean full(Reading reading, SkimmerUnit unit) {
        return cup(reading, cup -> cup.full() || cup.ml() >= unit.cupMl() && cup.possibleIn(unit) && !drained(unit));
    }

    private static boolean drained(SkimmerUnit unit) {
        return CupFill.drainMlPerDay(unit) > 0;
    }

    /** What fills most of a cup within hours will be over before anybody comes again. */
    private static boolean fillsWithinHours(Reading reading, SkimmerUnit unit) {
        return cup(reading, cup -> cup.mlPerDay() >= 2 * unit.cupMl());
    }

    /** No more than wanted foam brings in the time. */
    private static boolean filledByWanted(Reading reading, SkimmerUnit unit) {
        double most = unit.target().skimmateBandMlPerDay().high();
        return cup(reading, cup -> cup.mlPerDay() <= most);
    }

    /** A full cup under calm foam, read beside a flood, that had days to fill: what ran over was ordinary foam. */
    private boolean filledSlowly(Reading reading, SkimmerUnit unit) {
        return beside(at, reading.at()) && calm(reading) && full(reading, unit) && filledByWanted(reading, unit);
    }

    private static boolean calm(Reading reading) {
        return foam(reading).filter(foam -> !foam.runs()).isPresent();
    }

    private static boolean shows(Reading reading, SkimmerUnit unit) {
        Optional<FoamLookWord> foam = foam(reading);
        boolean runny = foam.filter(FoamLookWord.RUNNY::equals).isPresent();
        if (foam.filter(FoamLookWord.STREAMING::equals).isPresent()
                || runny && !drained(unit) && fillsWithinHours(reading, unit)) {
            return true;
        }
        // Stiff foam fills no cup in a day: a number that says so, and no word that it is full, is read again.
        boolean misread =
                foam.filter(FoamLookWord.STIFF::equals).isPresent() && !cup(reading, Observation.CupVolume::full);
        return full(reading, unit)
                && !misread
                && foam.filter(FoamLookWord::stands).isEmpty()
                && (runny || !filledByWanted(reading, unit));
    }

    private static boolean calms(JournalEntry entry, Settings before, Settings after) {
        if (entry instanceof WeirMove) {
            return after.weirCrestMm() <= before.weirCrestMm() - LEAST_LOWERING_MM;
        }
        if (entry instanceof SettingChange) {
            return after.airLitresPerHour() < before.airLitresPerHour();
        }
        return entry instanceof Happening happening && happening.kind() == Happening.Kind.PUMP_STOPPED;
    }
}
