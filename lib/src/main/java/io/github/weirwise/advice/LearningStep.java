package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.LearningPlan;
import io.github.weirwise.diagnosis.Normal;
import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Reason;
import io.github.weirwise.report.Times;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Weir;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The one thing to do while a plan to learn a unit runs: the plan's setting, or leaving it alone until it is read. What makes safe
 * goes before it, always.
 *
 * @since 0.2
 */
public final class LearningStep {
    private static final Duration DAY = Duration.ofDays(1);
    private static final double MINUTES_AN_HOUR = 60;
    private static final double SAME_MM = 0.05;
    private static final double SAME_AIR = 0.01;
    private static final double Z80 = 1.2816;
    private static final double LEAST_ML = 1e-3;
    private static final double LEAST_SD = 1e-3;

    private final LearningPlan plan;
    private final Advice given;
    private final Range wantedMlPerDay;
    private final Settings settings;
    private final Instant now;

    private LearningStep(LearningPlan plan, Advice given, Range wantedMlPerDay, Settings settings, Instant now) {
        this.plan = plan;
        this.given = given;
        this.wantedMlPerDay = wantedMlPerDay;
        this.settings = settings;
        this.now = now;
    }

    /**
     * The advice with the plan's step in the place of its own; empty when the plan has to end: something is to be made safe, or all
     * is through and weir and air are back where they were. To turn the air is told in words; its step is to leave the weir.
     *
     * @param plan the plan that runs
     * @param given the usual advice
     * @param unit nominal data of the unit
     * @param settings as they stand
     * @param now the present
     * @throws io.github.weirwise.report.OutOfRangeException if the plan sets a crest that the unit's weir does not have
     */
    public static Optional<Advice> of(
            LearningPlan plan, Advice given, SkimmerUnit unit, Settings settings, Instant now) {
        for (int i = 0; i < plan.stages().size(); i++) {
            reached("plan.stages[" + i + "].weirCrestMm", plan.stages().get(i).weirCrestMm(), unit.weir());
        }
        reached("plan.homeCrestMm", plan.homeCrestMm(), unit.weir());
        return given.step() instanceof Step.MakeSafe
                ? Optional.empty()
                : new LearningStep(plan, given, unit.target().skimmateBandMlPerDay(), settings, now).advice();
    }

    private static void reached(String name, double crestMm, Weir weir) {
        new Limit(
                        name,
                        weir.lowestCrestMm(),
                        weir.highestCrestMm(),
                        Unit.MILLIMETRE,
                        Phrase.of("diagnosis.try.planAsTold"))
                .check(crestMm);
    }

    private Optional<Advice> advice() {
        int number = plan.stageAt(now);
        int of = plan.stages().size();
        if (number < of) {
            return Optional.of(stage(plan.stages().get(number), number + 1, of));
        }
        Range amount = given.expectation().skimmateMlPerDay();
        Quantity crest = Quantity.of(plan.homeCrestMm(), Unit.MILLIMETRE);
        if (!stands(plan.homeCrestMm())) {
            return Optional.of(moved(plan.homeCrestMm(), Phrase.of("advice.learn.back", crest), amount));
        }
        if (plan.setsAir() && !blows(plan.homeAirLitresPerHour())) {
            Quantity air = Quantity.of(plan.homeAirLitresPerHour(), Unit.LITRE_PER_HOUR);
            return Optional.of(left(Times.later(now, DAY), Phrase.of("advice.learn.airBack", air), amount));
        }
        return Optional.empty();
    }

    private Advice stage(LearningPlan.Stage stage, int number, int of) {
        Quantity crest = Quantity.of(stage.weirCrestMm(), Unit.MILLIMETRE);
        Range amount = stage.skimmateMlPerDay();
        if (!stands(stage.weirCrestMm())) {
            return moved(stage.weirCrestMm(), Phrase.of("advice.learn.set", number, of, crest), amount);
        }
        Instant day = Times.later(now, DAY);
        Instant read = day.isBefore(stage.until()) ? day : stage.until();
        Quantity air = Quantity.of(stage.airLitresPerHour(), Unit.LITRE_PER_HOUR);
        Quantity hours = Quantity.of(Duration.between(now, read).toMinutes() / MINUTES_AN_HOUR, Unit.HOUR);
        return plan.setsAir() && !blows(stage.airLitresPerHour())
                ? left(read, Phrase.of("advice.learn.air", number, of, air, crest), amount)
                : left(read, Phrase.of("advice.learn.hold", number, of, crest, hours), amount);
    }

    private boolean stands(double crestMm) {
        return Math.abs(crestMm - settings.weirCrestMm()) < SAME_MM;
    }

    private boolean blows(double litresPerHour) {
        return Math.abs(litresPerHour - settings.airLitresPerHour()) < SAME_AIR * litresPerHour;
    }

    private Advice moved(double toMm, Phrase what, Range mlPerDay) {
        double byMm = toMm - settings.weirCrestMm();
        Range level = given.diagnosis().submergenceMm();
        List<Warning> cautions = new ArrayList<>(List.of(
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
                byMm > 0 ? Optional.of(Times.later(now, Clocks.COMMON_PRACTICE.floodLook())) : Optional.empty(),
                Times.later(now, DAY),
                Warning.ranked(cautions));
    }

    private Advice left(Instant read, Phrase what, Range mlPerDay) {
        return with(
                new Step.Hold(read, HoldReason.STILL_SETTLING),
                what,
                given.diagnosis().submergenceMm(),
                mlPerDay,
                Optional.empty(),
                read,
                given.cautions());
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
                new Expectation(levelMm, mlPerDay, given.expectation().darknessPtCo(), chanceOnTarget(mlPerDay)),
                floodLookAt,
                judgeAt,
                new Reason(Phrase.of("advice.learn.why"), List.of(given.why())),
                given.wouldChangeIt(),
                cautions);
    }

    /** Being on target is not what is wanted meanwhile; the chance is what the 80 % range of the amount comes to. */
    private double chanceOnTarget(Range mlPerDay) {
        double low = Math.log(Math.max(LEAST_ML, mlPerDay.low()));
        double high = Math.log(Math.max(LEAST_ML, mlPerDay.high()));
        double sd = Math.max(LEAST_SD, (high - low) / (2 * Z80));
        double mean = (low + high) / 2;
        return Normal.below((Math.log(wantedMlPerDay.high()) - mean) / sd)
                - Normal.below((Math.log(wantedMlPerDay.low()) - mean) / sd);
    }
}
