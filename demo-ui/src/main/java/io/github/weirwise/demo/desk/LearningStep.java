package io.github.weirwise.demo.desk;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Expectation;
import io.github.weirwise.advice.HoldReason;
import io.github.weirwise.advice.Step;
import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.diagnosis.LearningPlan;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Reason;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The one thing to do while a plan to learn a unit runs: the plan's setting, or leaving it alone until it is read. What makes safe
 * goes before it, always.
 */
public final class LearningStep {
    private static final Duration DAY = Duration.ofDays(1);
    private static final Duration FLOOD_LOOK = Duration.ofMinutes(20);
    private static final double SAME_MM = 0.05;

    private final Learning plan;
    private final Advice given;
    private final double crestMm;
    private final Instant now;
    private final Clock clock;

    /** @param crestMm where the crest stands now */
    public LearningStep(Learning plan, Advice given, double crestMm, Instant now, Clock clock) {
        this.plan = plan;
        this.given = given;
        this.crestMm = crestMm;
        this.now = now;
        this.clock = clock;
    }

    /** Whether the plan has to end here and now, because something is to be made safe. */
    public boolean mustEnd() {
        return given.step() instanceof Step.MakeSafe;
    }

    /** Whether all is through, with the weir back where it stood. */
    public boolean isThrough() {
        return plan.stageAt(now) == plan.stages().size() && at(plan.homeMm());
    }

    private boolean at(double crest) {
        return Math.abs(crest - crestMm) < SAME_MM;
    }

    /** The advice with the plan's step in the place of its own. */
    public Advice advice() {
        int number = plan.stageAt(now);
        if (number == plan.stages().size()) {
            Phrase back = Words.phrase("learn.step.back", Quantity.of(plan.homeMm(), Unit.MILLIMETRE));
            return moved(plan.homeMm(), back, given.expectation().skimmateMlPerDay());
        }
        LearningPlan.Stage stage = plan.stages().get(number);
        Quantity crest = Quantity.of(stage.weirCrestMm(), Unit.MILLIMETRE);
        int of = plan.stages().size();
        if (!at(stage.weirCrestMm())) {
            return moved(
                    stage.weirCrestMm(),
                    Words.phrase("learn.step.set", number + 1, of, crest),
                    stage.skimmateMlPerDay());
        }
        Instant read = now.plus(DAY).isBefore(stage.until()) ? now.plus(DAY) : stage.until();
        return with(
                new Step.Hold(read, HoldReason.STILL_SETTLING),
                Words.phrase("learn.step.hold", number + 1, of, crest, clock.when(read)),
                given.diagnosis().submergenceMm(),
                stage.skimmateMlPerDay(),
                Optional.empty(),
                read,
                given.cautions());
    }

    private Advice moved(double toMm, Phrase what, Range mlPerDay) {
        double byMm = toMm - crestMm;
        Range level = given.diagnosis().submergenceMm();
        List<Warning> cautions = new java.util.ArrayList<>(List.of(
                Warning.danger("advice.caution.unplug"),
                Warning.caution("advice.caution.restart"),
                Warning.note("advice.caution.circuit"),
                Warning.note("advice.caution.noDevice")));
        if (byMm > 0) {
            cautions.add(Warning.caution("advice.caution.flood"));
        }
        return with(
                new Step.MoveWeir(byMm, toMm, false),
                what,
                new Range(level.low() + byMm, level.high() + byMm),
                mlPerDay,
                byMm > 0 ? Optional.of(now.plus(FLOOD_LOOK)) : Optional.empty(),
                now.plus(DAY),
                Warning.ranked(cautions));
    }

    private Advice with(
            Step step,
            Phrase what,
            Range levelMm,
            Range mlPerDay,
            Optional<Instant> floodLookAt,
            Instant judgeAt,
            List<Warning> cautions) {
        return new Advice(
                step,
                what,
                given.diagnosis(),
                // Being on target is not what is wanted meanwhile, so no chance of it is told.
                new Expectation(levelMm, mlPerDay, given.expectation().darknessPtCo(), Double.NaN),
                floodLookAt,
                judgeAt,
                Reason.of(Words.phrase("learn.why"), given.why()),
                given.wouldChangeIt(),
                cautions);
    }
}
