package io.github.weirwise.practice;

import io.github.weirwise.report.Count;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Target;
import java.util.ArrayList;
import java.util.List;

/** Holds an outcome against the goals and limits of its scenario. */
record GoalChecks(PracticeSession session, Outcome outcome) {
    private static final double DAY = 24;
    private static final double WELL_LOWER_MM = 5;

    List<GoalCheck> all() {
        Goals goals = session.scenario().goals();
        Limits limits = session.scenario().limits();
        List<GoalCheck> checks = new ArrayList<>();
        if (goals.onTarget()) {
            checks.add(onTarget());
        }
        for (Part part : goals.lookAfter()) {
            checks.add(new GoalCheck(
                    Phrase.of("practice.goal.lookAfter", Phrase.of("diagnosis.part." + part)), serviced(part)));
        }
        if (goals.leaveWeir()) {
            checks.add(new GoalCheck(Phrase.of("practice.goal.leaveWeir", outcome.moves()), outcome.moves() == 0));
        }
        int changes = outcome.moves() + outcome.services();
        checks.add(new GoalCheck(
                Phrase.of("practice.goal.changes", Count.of(goals.mostChanges(), "report.count.changes"), changes),
                changes <= goals.mostChanges()));
        if (goals.safeWithinHours() > 0) {
            checks.add(new GoalCheck(
                    Phrase.of("practice.goal.safe", Quantity.of(goals.safeWithinHours(), Unit.HOUR)), madeSafe()));
        }
        checks.add(limit("practice.goal.flood", limits.floodHours(), outcome.floodHours(), Unit.HOUR));
        checks.add(limit("practice.goal.spilled", limits.spilledLitres(), outcome.spilledLitres(), Unit.LITRE));
        checks.add(limit("practice.goal.stress", limits.stressHours(), outcome.stressHours(), Unit.HOUR));
        return checks;
    }

    private static GoalCheck limit(String key, double limit, double reached, Unit unit) {
        return new GoalCheck(
                Phrase.of(key, Quantity.of(limit, unit), Quantity.of(reached, unit)), reached <= limit + 1e-9);
    }

    private GoalCheck onTarget() {
        Target target = session.scenario().unit().target();
        boolean flooded =
                session.track().stream().anyMatch(each -> each.hours() > session.hours() - DAY && each.flooding());
        boolean met =
                session.over() && !flooded && target.skimmateBandMlPerDay().contains(outcome.lastDayMlPerDay());
        return new GoalCheck(
                Phrase.of(
                        "practice.goal.onTarget",
                        QuantityRange.of(target.skimmateBandMlPerDay(), Unit.MILLILITRE_PER_DAY),
                        Quantity.of(outcome.lastDayMlPerDay(), Unit.MILLILITRE_PER_DAY)),
                met);
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
