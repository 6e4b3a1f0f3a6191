package io.github.weirwise.demo.care;

import io.github.weirwise.demo.panel.MeasureBoxes;
import io.github.weirwise.report.Unit;
import io.github.weirwise.setup.DisplayTank;
import io.github.weirwise.setup.Drainage;
import io.github.weirwise.setup.FilterBody;
import io.github.weirwise.setup.Installation;
import io.github.weirwise.setup.Overflow;
import io.github.weirwise.setup.Plumbing;
import io.github.weirwise.setup.PumpCurve;
import io.github.weirwise.setup.PumpPoint;
import io.github.weirwise.setup.ReturnLine;
import io.github.weirwise.setup.SkimmateHose;
import io.github.weirwise.setup.Stand;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** What has to be known first to see whether a unit fits a tank; the rest is as in another installation. */
enum SiteField implements MeasureBoxes.Measure {
    TANK_LENGTH("lengthMm", Unit.MILLIMETRE, site -> site.tank().lengthMm()),
    TANK_WIDTH("widthMm", Unit.MILLIMETRE, site -> site.tank().widthMm()),
    TANK_FLOOR("floorMm", Unit.MILLIMETRE, site -> site.tank().floorMm()),
    TANK_CREST("crestMm", Unit.MILLIMETRE, site -> site.tank().crestMm()),
    TANK_RIM("rimMm", Unit.MILLIMETRE, site -> site.tank().rimMm()),
    OVERFLOW_WIDTH("openWidthMm", Unit.MILLIMETRE, site -> site.overflow().openWidthMm()),
    DRAIN_PIPES("pipes", Unit.COUNT, site -> site.drainage().pipes()),
    DRAIN_BORE("boreMm", Unit.MILLIMETRE, site -> site.drainage().each().boreMm()),
    BOX_WET_LENGTH("wetLengthMm", Unit.MILLIMETRE, site -> site.filter().wetLengthMm()),
    BOX_WET_WIDTH("wetWidthMm", Unit.MILLIMETRE, site -> site.filter().wetWidthMm()),
    BOX_RIM("rimMm", Unit.MILLIMETRE, site -> site.filter().rimMm()),
    BOX_CUP_LIFT("cupLiftMm", Unit.MILLIMETRE, site -> site.filter().cupLiftMm()),
    BOX_CUP_TOP("cupTopMm", Unit.MILLIMETRE, site -> site.filter().cupTopMm()),
    PLACE_HEADROOM("headroomMm", Unit.MILLIMETRE, site -> site.stand().headroomMm()),
    PUMP_FLOW("flowLitresPerHour", Unit.LITRE_PER_HOUR, site -> site.pump().greatestFlowLitresPerHour()),
    PUMP_HEAD("headMm", Unit.MILLIMETRE, site -> site.pump().shutOffHeadMm()),
    RETURN_BORE("boreMm", Unit.MILLIMETRE, site -> site.returnLine().plumbing().boreMm()),
    RETURN_MOUTH("mouthBelowCrestMm", Unit.MILLIMETRE, site -> site.returnLine().mouthBelowCrestMm()),
    /** Not there unless it is typed: what saves from a flood is never assumed. */
    RETURN_BREAK(
            "breakBelowCrestMm",
            Unit.MILLIMETRE,
            site -> site.returnLine().hasSiphonBreak() ? site.returnLine().breakBelowCrestMm() : Double.NaN),
    HOSE_HOLDS("containerLitres", Unit.LITRE, site -> site.hose().containerLitres()),
    PLACE_TOP_OFF("topOffReservoirLitres", Unit.LITRE, Installation::topOffReservoirLitres),
    /** Not known unless it is typed: what another stand carries says nothing about this one. */
    PLACE_LOAD(
            "ratedKilograms",
            Unit.KILOGRAM,
            site -> site.stand().ratedKilograms().orElse(Double.NaN));

    private final MeasureBoxes.Held<Installation> held;

    SiteField(String component, Unit unit, ToDoubleFunction<Installation> of) {
        held = new MeasureBoxes.Held<>(component, unit, of);
    }

    @Override
    public String textKey() {
        return "site." + this;
    }

    @Override
    public MeasureBoxes.Held<Installation> held() {
        return held;
    }

    /** What stands for it when it is not known; NaN for nothing. */
    double assumed(Installation like) {
        return this == RETURN_BREAK || this == PLACE_LOAD ? Double.NaN : of(like);
    }

    /** Its value in an installation; NaN when there is none. */
    double of(Installation site) {
        return held.of().applyAsDouble(site);
    }

    /**
     * The installation with these numbers; what is not asked for is as in another one, the water in proportion to the tank and the
     * pump's curve in proportion to its ends.
     *
     * @throws IllegalArgumentException if they cannot be
     */
    static Installation site(String name, ToDoubleFunction<SiteField> n, Installation like, SkimmerUnit unit) {
        FilterBody box = like.filter();
        double hole = n.applyAsDouble(RETURN_BREAK);
        double load = n.applyAsDouble(PLACE_LOAD);
        return new Installation(
                name,
                tank(n, like.tank()),
                new Overflow(n.applyAsDouble(OVERFLOW_WIDTH)),
                drainage(n, like.drainage()),
                new FilterBody(
                        unit,
                        box.chamberFloorMm(),
                        box.chamberLitresPerMm(),
                        n.applyAsDouble(BOX_WET_LENGTH),
                        n.applyAsDouble(BOX_WET_WIDTH),
                        box.wetFloorMm(),
                        box.mediaBottomMm(),
                        box.mediaHeightMm(),
                        box.mediaLengthMm(),
                        box.mediaVoids(),
                        box.pumpDrawsAirMm(),
                        n.applyAsDouble(BOX_RIM),
                        n.applyAsDouble(BOX_CUP_LIFT),
                        n.applyAsDouble(BOX_CUP_TOP),
                        box.dryKilograms()),
                like.extraSump(),
                pump(n, like.pump()),
                new ReturnLine(
                        bore(like.returnLine().plumbing(), n.applyAsDouble(RETURN_BORE)),
                        n.applyAsDouble(RETURN_MOUTH),
                        Double.isNaN(hole) ? n.applyAsDouble(RETURN_MOUTH) : hole,
                        like.returnLine().checkValve()),
                new SkimmateHose(
                        n.applyAsDouble(HOSE_HOLDS),
                        like.hose().emptiedEveryDays(),
                        like.hose().hoseLengthMm(),
                        like.hose().hoseFallMm()),
                n.applyAsDouble(PLACE_TOP_OFF),
                new Stand(
                        Double.isNaN(load) ? OptionalDouble.empty() : OptionalDouble.of(load),
                        n.applyAsDouble(PLACE_HEADROOM)),
                like.waterCelsius(),
                like.practicalSalinity());
    }

    private static DisplayTank tank(ToDoubleFunction<SiteField> n, DisplayTank like) {
        double share = n.applyAsDouble(TANK_LENGTH)
                * n.applyAsDouble(TANK_WIDTH)
                * n.applyAsDouble(TANK_CREST)
                / (like.lengthMm() * like.widthMm() * like.crestMm());
        return new DisplayTank(
                n.applyAsDouble(TANK_LENGTH),
                n.applyAsDouble(TANK_WIDTH),
                n.applyAsDouble(TANK_FLOOR),
                n.applyAsDouble(TANK_CREST),
                n.applyAsDouble(TANK_RIM),
                share * like.waterLitres(),
                share * like.dryKilograms());
    }

    private static Drainage drainage(ToDoubleFunction<SiteField> n, Drainage like) {
        double pipes = n.applyAsDouble(DRAIN_PIPES);
        if (pipes != Math.rint(pipes)) {
            throw new IllegalArgumentException("pipes are counted");
        }
        return new Drainage(
                (int) pipes, bore(like.each(), n.applyAsDouble(DRAIN_BORE)), like.inletBelowCrestMm(), like.outletMm());
    }

    private static Plumbing bore(Plumbing like, double boreMm) {
        return new Plumbing(boreMm, like.lengthMm(), like.fittings());
    }

    private static PumpCurve pump(ToDoubleFunction<SiteField> n, PumpCurve like) {
        double flow = n.applyAsDouble(PUMP_FLOW) / like.greatestFlowLitresPerHour();
        double head = n.applyAsDouble(PUMP_HEAD) / like.shutOffHeadMm();
        List<PumpPoint> points = like.points().stream()
                .map(point -> new PumpPoint(flow * point.flowLitresPerHour(), head * point.headMm()))
                .toList();
        return new PumpCurve(points);
    }
}
