package io.github.weirwise.practice;

import static io.github.weirwise.practice.GoalCheck.Verdict.*;

import io.github.weirwise.reading.Service;
import io.github.weirwise.report.Band;
import io.github.weirwise.report.Count;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Target;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Holds an outcome against the goals and limits of its scenario. */
record GoalChecks(PracticeSession session, Outcome outcome) {
    private static final double DAY = 24;
    private static final double WELL_LOWER_MM = 5;
    /** A part that does less than this share of its worst is no reason to touch it; stated judgement. */
    private static final double LOOKS_SOUND = 0.25;

    List<GoalCheck> all() {
        Goals goals = session.scenario().goals();
        Limits limits = session.scenario().limits();
        List<GoalCheck> checks = new ArrayList<>();
        if (goals.onTarget()) {
            checks.add(onTarget());
        }
        for (Part part : goals.lookAfter()) {
            checks.add(
                    reached(Phrase.of("practice.goal.lookAfter", Phrase.of("diagnosis.part." + part)), serviced(part)));
        }
        if (goals.leaveWeir()) {
            checks.add(kept(Phrase.of("practice.goal.leaveWeir", outcome.moves()), outcome.moves() == 0));
        }
        int changes = outcome.moves() + needless();
        checks.add(kept(
                Phrase.of("practice.goal.changes", Count.of(goals.mostChanges(), "report.count.changes"), changes),
                changes <= goals.mostChanges()));
        if (goals.safeWithinHours() > 0) {
            checks.add(reached(
                    Phrase.of("practice.goal.safe", Quantity.of(goals.safeWithinHours(), Unit.HOUR)), madeSafe()));
        }
        checks.add(limit("practice.goal.flood", limits.floodHours(), outcome.floodHours(), Unit.HOUR));
        checks.add(limit("practice.goal.spilled", limits.spilledLitres(), outcome.spilledLitres(), Unit.LITRE));
        checks.add(limit("practice.goal.stress", limits.stressHours(), outcome.stressHours(), Unit.HOUR));
        return checks;
    }

    /** What is yet to be reached cannot be missed before the end. */
    private GoalCheck reached(Phrase what, boolean now) {
        return new GoalCheck(what, now ? MET : session.over() ? MISSED : NOT_PLAYED);
    }

    /** What must be kept can be broken at any time, and is kept at the end only. */
    private GoalCheck kept(Phrase what, boolean soFar) {
        return new GoalCheck(what, !soFar ? MISSED : session.over() ? MET : NOT_PLAYED);
    }

    private GoalCheck limit(String key, double limit, double reached, Unit unit) {
        return kept(Phrase.of(key, Quantity.of(limit, unit), Quantity.of(reached, unit)), reached <= limit + 1e-9);
    }

    private GoalCheck onTarget() {
        Target target = session.scenario().unit().target();
        Band band = Band.of(target.skimmateBandMlPerDay(), Unit.MILLILITRE_PER_DAY);
        Quantity last = Quantity.of(outcome.lastDayMlPerDay(), Unit.MILLILITRE_PER_DAY);
        if (!session.over()) {
            return new GoalCheck(Phrase.of("practice.goal.onTarget.notPlayed", band), NOT_PLAYED);
        }
        boolean flooded =
                session.track().stream().anyMatch(each -> each.hours() > session.hours() - DAY && each.flooding());
        boolean met = !flooded && target.skimmateBandMlPerDay().contains(outcome.lastDayMlPerDay());
        return new GoalCheck(Phrase.of("practice.goal.onTarget", band, last), met ? MET : MISSED);
    }

    /** Services of a sound part before its upkeep came round again; what nobody knows the last service of is due once. */
    private int needless() {
        int needless = 0;
        for (LogLine line : session.log()) {
            if (line.step() instanceof SessionStep.Do done && done.act() instanceof Act.ServicePart service) {
                PracticeSession before = session.rewoundTo(line.number() - 1);
                boolean sound = new PartInTank(before.bench(), service.part()).size() < LOOKS_SOUND;
                needless += sound && !due(before, service.part()) ? 1 : 0;
            }
        }
        return needless;
    }

    private static boolean due(PracticeSession before, Part part) {
        if (part.upkeepDays() == 0) {
            return false;
        }
        Instant since = before.now().minus(Duration.ofHours(Math.round(DAY * part.upkeepDays())));
        return before.journal().all(Service.class).stream()
                .noneMatch(each -> each.part() == part && each.at().isAfter(since));
    }

    private boolean serviced(Part part) {
        return session.log().stream()
                .anyMatch(line -> line.step() instanceof SessionStep.Do act
                        && act.act() instanceof Act.ServicePart service
                        && service.part() == part);
    }

    private boolean madeSafe() {
        double arrival = session.scenario().start().arrivesAtHour();
        double flood = session.track().stream()
                .filter(each -> each.hours() >= arrival && each.flooding())
                .mapToDouble(TrackPoint::hours)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
        double within = flood + session.scenario().goals().safeWithinHours();
        return flood == Double.POSITIVE_INFINITY
                || session.log().stream()
                        .anyMatch(line -> line.step() instanceof SessionStep.Do act
                                && line.fromHours() <= within
                                && makesSafe(act.act()));
    }

    static boolean makesSafe(Act act) {
        return act instanceof Act.StopAir || act instanceof Act.MoveWeir move && move.byMm() <= -WELL_LOWER_MM;
    }
}
