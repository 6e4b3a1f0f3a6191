package io.github.weirwise.setup;

import static io.github.weirwise.setup.Measures.litres;
import static io.github.weirwise.setup.Measures.mm;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * The first filling and start of a unit, step by step, each with the figure that its fit check computed.
 *
 * @param check the fit check that the figures come from
 * @param steps in their order
 * @param breakIn what to expect afterwards
 * @param warnings what stands over the whole plan; a danger when the check says that the unit does not fit
 */
public record StartUpPlan(FitCheck check, List<StartUpStep> steps, List<BreakInStage> breakIn, List<Warning> warnings) {
    /** How far the air line's end stays over the highest level that the chamber can reach, mm; common practice. */
    public static final double AIR_LINE_CLEARANCE_MM = 50;

    /** Trip current of the protective switch, mA (IEC 61008; from memory); North America 6 (UL 943). */
    private static final double RESIDUAL_CURRENT_MA = 30;
    /** How long to watch for leaks before any power is on, h; common practice. */
    private static final double LEAK_WATCH_HOURS = 2;

    /** Copies the lists. */
    public StartUpPlan {
        steps = List.copyOf(steps);
        breakIn = List.copyOf(breakIn);
        warnings = Warning.ranked(warnings);
    }

    /** The plan for a checked installation. */
    public static StartUpPlan of(FitCheck check) {
        List<StartUpStep> steps = new ArrayList<>();
        for (StartUpTask task : StartUpTask.values()) {
            steps.add(step(check, task));
        }
        List<Warning> warnings = new ArrayList<>();
        warnings.add(Warning.caution("setup.localCodes"));
        if (check.verdict() == Fit.FAILS) {
            warnings.add(Warning.danger("setup.doNotFill"));
        }
        return new StartUpPlan(check, steps, BreakInStage.usual(), warnings);
    }

    /**
     * Height over the base at which the air line's open end must be clipped at least, mm: over the highest level that the
     * chamber can reach with the pump off, with the weir at the top of its travel or after a power cut.
     */
    public static double airLineEndMm(FitCheck check) {
        FilterBody filter = check.installation().filter();
        double chamberMm = filter.chamberFloorMm()
                + filter.unit().weir().highestCrestMm()
                + check.weir().point().headMm();
        return Math.max(chamberMm, check.drainBack().levelAfterMm()) + AIR_LINE_CLEARANCE_MM;
    }

    private static StartUpStep step(FitCheck check, StartUpTask task) {
        Installation site = check.installation();
        FirstFilling filling = check.filling();
        SkimmerUnit unit = site.filter().unit();
        Column column = unit.column();
        return switch (task) {
            case INSPECT -> of(task, mm(column.neckBoreMm()), mm(column.boreMm()));
            case PLACE -> of(task, mm(FitLimits.LEVEL_MM));
            case AIR_LINE -> of(task, mm(airLineEndMm(check)));
            case PLUMB -> of(task, mm(site.returnLine().breakBelowCrestMm()));
            case CUP_DRAIN ->
                of(
                        task,
                        mm(FitLimits.HOSE_FALL_SHARE * site.hose().hoseLengthMm()),
                        litres(site.hose().containerLitres()));
            case SET_WEIR ->
                of(
                        task,
                        mm(check.weir().settings().weirCrestMm()),
                        mm(unit.target().submergenceMm()));
            case FILL ->
                of(task, mm(filling.levelBeforeMm()), litres(filling.chamberLitres()), litres(filling.wetLitres()));
            case FILL_TANK -> of(task, litres(filling.tankLitres()));
            case LEAKS -> of(task, Quantity.of(LEAK_WATCH_HOURS, Unit.HOUR));
            case POWER -> of(task, Quantity.of(RESIDUAL_CURRENT_MA, Unit.COUNT));
            case START_RETURN ->
                of(
                        task,
                        Quantity.of(check.running().flowLitresPerHour(), Unit.LITRE_PER_HOUR),
                        mm(filling.levelAfterStartMm()),
                        mm(check.running().overflowHeadMm()));
            case RUNNING_LEVEL ->
                of(
                        task,
                        mm(filling.levelRunningMm()),
                        filling.addLitres() >= 0
                                ? Phrase.of("setup.running.add", litres(filling.addLitres()))
                                : Phrase.of("setup.running.take", litres(-filling.addLitres())));
            case START_AIR -> of(task, Quantity.of(unit.ratedAirLitresPerHour(), Unit.LITRE_PER_HOUR));
            case CHECK_SUBMERGENCE ->
                of(
                        task,
                        mm(check.weir().point().submergenceMm()),
                        mm(column.funnelBaseMm()),
                        mm(check.weir().point().headMm()));
            case REHEARSE ->
                of(
                        task,
                        litres(check.drainBack().totalLitres()),
                        mm(check.drainBack().levelAfterMm()));
        };
    }

    private static StartUpStep of(StartUpTask task, Quantity figure, Object... more) {
        Object[] values = new Object[more.length + 1];
        values[0] = figure;
        System.arraycopy(more, 0, values, 1, more.length);
        return new StartUpStep(
                task.ordinal() + 1, task, figure, task.todo(values), task.see(), task.ifNot(), task.caution());
    }
}
