package io.github.weirwise.advice;

import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyInputs;
import io.github.weirwise.unit.SteadyLaw;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Levels that were read, each against what the settings and the sheet give, mm.
 *
 * @param zeroMm this unit's own zero, as looks and services that found nothing leave it
 * @param sumMm sum of the readings in a row that are off on one side of that zero
 * @param count how many these are
 * @param since the first of them
 * @param beforeMm sum of all levels but the newest, against what the settings give
 * @param before how many these are
 * @param newest the newest {@value #NEWEST} at most, against what the settings give
 * @param read the newest as it was read
 */
record LevelsNoted(
        double zeroMm,
        double sumMm,
        int count,
        Optional<Instant> since,
        double beforeMm,
        int before,
        List<Double> newest,
        Optional<Read> read) {
    static final LevelsNoted NONE = new LevelsNoted(0, 0, 0, Optional.empty(), 0, 0, List.of(), Optional.empty());

    /** A level as it was read, mm over the funnel base, and when. */
    record Read(double mm, Instant at) {}

    private static final double SCATTERS = 3;
    private static final int NEWEST = 2;

    LevelsNoted after(JournalEntry entry, Settings settings, Expected expected) {
        if (entry instanceof Service) {
            return foundNothing();
        }
        if (!(entry instanceof Reading reading)) {
            return this;
        }
        Optional<Observation.FunnelLevel> level = reading.find(Observation.FunnelLevel.class);
        LevelsNoted next = level.isPresent()
                ? read(
                        level.get().mm() - expected.mm(settings),
                        new Read(level.get().mm(), entry.at()))
                : this;
        return reading.observations().stream().anyMatch(LevelsNoted::clears) ? next.foundNothing() : next;
    }

    private LevelsNoted read(double overSheetMm, Read level) {
        Instant at = level.at();
        List<Double> newer = new ArrayList<>(newest);
        newer.add(overSheetMm);
        boolean moveOn = newer.size() > NEWEST;
        double allBefore = moveOn ? beforeMm + newer.remove(0) : beforeMm;
        LevelsNoted next = new LevelsNoted(
                zeroMm, sumMm, count, since, allBefore, moveOn ? before + 1 : before, newer, Optional.of(level));
        double off = overSheetMm - zeroMm;
        if (!(Math.abs(off) > SCATTERS * Instrument.FUNNEL_LEVEL.scatter())) {
            return next.row(0, 0, Optional.of(at));
        }
        return count > 0 && Math.signum(off) == Math.signum(sumMm)
                ? next.row(sumMm + off, count + 1, since)
                : next.row(off, 1, Optional.of(at));
    }

    private LevelsNoted row(double sum, int readings, Optional<Instant> first) {
        return new LevelsNoted(zeroMm, sum, readings, first, beforeMm, before, newest, read);
    }

    /** What was off all along and has no cause is how this unit, or this reader, stands. */
    private LevelsNoted foundNothing() {
        return count == 0
                ? this
                : new LevelsNoted(zeroMm + sumMm / count, 0, 0, Optional.empty(), beforeMm, before, newest, read);
    }

    /** The mean of all but the newest over that of the newest; 0 with fewer than two before, mm. */
    double fallenMm() {
        return before < NEWEST
                ? 0
                : beforeMm / before
                        - newest.stream().mapToDouble(Double::doubleValue).sum() / newest.size();
    }

    /** How far the newest level stands over all before it, each against what the settings give; 0 with fewer than two before, mm. */
    double risenMm() {
        return before < 1 || newest.size() < NEWEST ? 0 : newest.get(1) - (beforeMm + newest.get(0)) / (before + 1);
    }

    /** Whether the newest level stands alone against those before it, of which there are three at least. */
    boolean once() {
        if (before < NEWEST) {
            return false;
        }
        double usual = (beforeMm + newest.get(0)) / (before + 1);
        double far = 3 * Instrument.FUNNEL_LEVEL.scatter();
        return Math.abs(newest.get(1) - usual) > far && Math.abs(newest.get(0) - usual) < far;
    }

    /** A look at something that moves the level, and that was not found at fault. */
    private static boolean clears(Observation seen) {
        if (seen instanceof Observation.Inspection look) {
            return look.finding() == Finding.GOOD && look.part().worst().movesLevel();
        }
        return seen instanceof Observation.HeadOverCrest
                || seen instanceof Observation.CrestAgainstMark
                || seen instanceof Observation.LevelBeyondWeir
                || seen instanceof Observation.ReturnFlow
                || seen instanceof Observation.OutsideLevel;
    }

    /** The level that a unit's sheet gives with settings; asked again with the same ones, it is not computed again. */
    static final class Expected {
        private final SkimmerUnit unit;
        private final SteadyLaw law;
        private Settings settings;
        private double mm;

        Expected(SkimmerUnit unit) {
            this.unit = unit;
            this.law = new SteadyLaw(unit);
        }

        /** Bubbly water over the funnel base, mm. */
        double mm(Settings with) {
            if (!with.equals(settings)) {
                settings = with;
                mm = law.at(SteadyInputs.of(unit, with)).columnLevelM() * 1000
                        - unit.column().funnelBaseMm();
            }
            return mm;
        }
    }
}
