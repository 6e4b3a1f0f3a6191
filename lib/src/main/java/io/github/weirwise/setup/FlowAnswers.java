package io.github.weirwise.setup;

import static io.github.weirwise.setup.Measures.cm;
import static io.github.weirwise.setup.Measures.mm;

import io.github.weirwise.internal.physics.hydraulics.Drain;
import io.github.weirwise.report.Band;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Severity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Weir;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Answers about running water: pump, overflow, drain, unit and weir. */
record FlowAnswers(Installation installation, ReturnPoint running, WeirStart weir) {
    /** Heads under this lie below the weir formula's published range. */
    private static final double PUBLISHED_HEAD_MM = 30;
    /** Space under the crest that lets the falling water breathe (ISO 1438; Bos). */
    private static final double FREE_FALL_MM = 50;
    /** A drain that needs more of its full bore than this share is taken as failing; engineering judgement. */
    private static final double BEARABLE_FULL_BORE = 1.25;
    /** Less of the curve's greatest flow than this is close to shut-off. */
    private static final double NEAR_SHUT_OFF = 0.15;

    List<FitAnswer> all() {
        return List.of(
                workingPoint(),
                turnover(),
                overflowHead(),
                drainQuiet(),
                drainFull(),
                plumbing(),
                unitFlow(),
                weirTravel());
    }

    FitAnswer workingPoint() {
        double flow = running.flowLitresPerHour();
        double greatest = installation.pump().greatestFlowLitresPerHour();
        Fit fit =
                flow <= 0 ? Fit.FAILS : running.beyondCurve() || flow < NEAR_SHUT_OFF * greatest ? Fit.TIGHT : Fit.FITS;
        Phrase sentence = flow <= 0
                ? Phrase.of(
                        "setup.workingPoint.none",
                        cm(running.liftMm()),
                        cm(installation.pump().shutOffHeadMm()))
                : Phrase.of(
                        "setup.workingPoint",
                        flow(flow),
                        cm(running.headMm()),
                        cm(running.liftMm()),
                        cm(running.lossMm()));
        Warning wears = Warning.note("setup.pumpWears");
        List<Warning> cautions =
                running.beyondCurve() ? List.of(wears, Warning.caution("setup.beyondCurve")) : List.of(wears);
        return new FitAnswer(
                Question.WORKING_POINT, fit, flow(flow), flow(greatest), flow(greatest - flow), sentence, cautions);
    }

    FitAnswer turnover() {
        double perHour = running.flowLitresPerHour() / installation.tank().waterLitres();
        Range wanted = FitLimits.TURNOVERS_PER_HOUR;
        return new FitAnswer(
                Question.TURNOVER,
                Grade.inside(perHour, wanted, new Range(0, 1000)),
                plain(perHour),
                plain(nearerEnd(perHour, wanted)),
                plain(Grade.margin(perHour, wanted)),
                Phrase.of("setup.turnover", plain(perHour), Band.of(wanted, Unit.COUNT)),
                List.of());
    }

    FitAnswer overflowHead() {
        DisplayTank tank = installation.tank();
        Range band = installation.overflow().headBandMm(tank, running.flowLitresPerHour());
        double roomMm = tank.rimMm() - tank.crestMm();
        double limitMm = roomMm - FitLimits.TANK_FREEBOARD_MM;
        List<Warning> cautions = running.overflowHeadMm() < PUBLISHED_HEAD_MM
                ? List.of(Warning.note("setup.smallHead", QuantityRange.of(band, Unit.MILLIMETRE)))
                : List.of();
        return new FitAnswer(
                Question.OVERFLOW_HEAD,
                Grade.atMost(band.high(), limitMm, roomMm),
                mm(running.overflowHeadMm()),
                mm(limitMm),
                mm(limitMm - running.overflowHeadMm()),
                Phrase.of("setup.overflowHead", mm(running.overflowHeadMm()), mm(roomMm)),
                cautions);
    }

    FitAnswer drainQuiet() {
        Drainage drainage = installation.drainage();
        double each = running.flowLitresPerHour() / drainage.pipes();
        double quiet = 3.6e6 * Drain.selfVenting(drainage.each().boreMm() / 1000);
        double neededMm = 1000 * Drain.selfVentingBore(Math.max(1e-9, each / 3.6e6));
        return new FitAnswer(
                Question.DRAIN_QUIET,
                Grade.atMost(each, quiet, Double.MAX_VALUE),
                flow(each),
                flow(quiet),
                flow(quiet - each),
                Phrase.of("setup.drainQuiet", flow(each), flow(quiet), mm(neededMm)),
                List.of(Warning.note("setup.froudeFromMemory")));
    }

    FitAnswer drainFull() {
        double capacity = fullBoreLitresPerHour();
        double flow = running.flowLitresPerHour();
        boolean alone = installation.drainage().pipes() == 1;
        return new FitAnswer(
                Question.DRAIN_FULL,
                Grade.atMost(flow, capacity / FitLimits.FULL_BORE_MARGIN, capacity / BEARABLE_FULL_BORE),
                flow(flow),
                flow(capacity / FitLimits.FULL_BORE_MARGIN),
                flow(capacity / FitLimits.FULL_BORE_MARGIN - flow),
                Phrase.of("setup.drainFull", flow(flow), flow(capacity), cm(Math.max(0, drainDropMm()))),
                List.of(alone ? Warning.danger("setup.onlyDrain") : Warning.caution("setup.doNotThrottle")));
    }

    FitAnswer plumbing() {
        long bends = installation.drainage().each().bends()
                + installation.returnLine().plumbing().bends();
        return new FitAnswer(
                Question.PLUMBING,
                bends <= FitLimits.BENDS ? Fit.FITS : Fit.TIGHT,
                count(bends),
                count(FitLimits.BENDS),
                count(FitLimits.BENDS - bends),
                Phrase.of(
                        "setup.plumbing",
                        count(bends),
                        cm(installation.drainage().each().lengthMm()),
                        cm(installation.returnLine().plumbing().lengthMm())),
                List.of());
    }

    FitAnswer unitFlow() {
        double rated = installation.filter().unit().ratedFlowLitresPerHour();
        double flow = running.flowLitresPerHour();
        Range wanted = FitLimits.SHARE_OF_RATED_FLOW;
        return new FitAnswer(
                Question.UNIT_FLOW,
                Grade.inside(flow / rated, wanted, FitLimits.LIVABLE_SHARE_OF_RATED_FLOW),
                flow(flow),
                flow(rated * nearerEnd(flow / rated, wanted)),
                flow(rated * Grade.margin(flow / rated, wanted)),
                Phrase.of(
                        "setup.unitFlow",
                        flow(flow),
                        flow(rated),
                        Band.of(new Range(rated * wanted.low(), rated * wanted.high()), Unit.LITRE_PER_HOUR)),
                List.of());
    }

    FitAnswer weirTravel() {
        SkimmerUnit unit = installation.filter().unit();
        Weir plate = unit.weir();
        double crestMm = weir.settings().weirCrestMm();
        Range travel = new Range(plate.lowestCrestMm(), plate.highestCrestMm());
        double marginMm = weir.crestMm().isPresent() ? Grade.margin(crestMm, travel) : -1;
        Phrase sentence = weir.crestMm().isPresent()
                ? Phrase.of(
                        "setup.weirTravel",
                        mm(crestMm),
                        mm(unit.target().submergenceMm()),
                        mm(weir.point().headMm()),
                        Band.of(travel, Unit.MILLIMETRE))
                : Phrase.of(
                        "setup.weirTravel.none",
                        mm(unit.target().submergenceMm()),
                        Band.of(travel, Unit.MILLIMETRE),
                        mm(weir.point().submergenceMm()));
        return new FitAnswer(
                Question.WEIR_TRAVEL,
                Grade.atLeast(marginMm, FitLimits.WEIR_TRAVEL_MM, 0),
                mm(crestMm),
                mm(nearerEnd(crestMm, travel)),
                mm(weir.crestMm().isPresent() ? marginMm : 0),
                sentence,
                weirCautions(crestMm));
    }

    private List<Warning> weirCautions(double crestMm) {
        // Notes are about amounts of skimmate; the question here is whether the level can be had.
        List<Warning> cautions = weir.point().warnings().stream()
                .filter(warning -> warning.severity() != Severity.NOTE)
                .collect(Collectors.toCollection(ArrayList::new));
        FilterBody filter = installation.filter();
        double fallMm = filter.chamberFloorMm() + crestMm - new WetSide(installation).runningLevelMm();
        if (fallMm < FREE_FALL_MM) {
            cautions.add(Warning.caution("setup.notFree", mm(Math.max(0, fallMm)), mm(FREE_FALL_MM)));
        }
        return cautions;
    }

    private double fullBoreLitresPerHour() {
        Drainage drainage = installation.drainage();
        double dropM = drainDropMm() / 1000;
        return dropM <= 0
                ? 0
                : 3.6e6 * drainage.pipes() * drainage.each().pipe().discharge(dropM, installation.kinematicViscosity());
    }

    /** From the inlet down to the outlet, or to the chamber's level when that stands higher. */
    private double drainDropMm() {
        Drainage drainage = installation.drainage();
        double inletMm = installation.tank().crestOverBaseMm() - drainage.inletBelowCrestMm();
        double chamberMm = installation.filter().chamberFloorMm() + weir.point().clearLevelMm();
        return inletMm - Math.max(drainage.outletMm(), chamberMm);
    }

    private static double nearerEnd(double value, Range range) {
        return value < range.middle() ? range.low() : range.high();
    }

    private static Quantity flow(double value) {
        return Quantity.of(value, Unit.LITRE_PER_HOUR);
    }

    private static Quantity plain(double value) {
        return Quantity.of(value, Unit.PLAIN);
    }

    private static Quantity count(double value) {
        return Quantity.of(value, Unit.COUNT);
    }
}
