package io.github.weirwise.demo.care;

import io.github.weirwise.report.Unit;
import io.github.weirwise.setup.ExtraSump;
import io.github.weirwise.setup.Installation;
import java.util.function.ToDoubleFunction;

/** The single numbers of an installation; NaN where there is none. */
enum SiteField {
    TANK_LENGTH(SiteGroup.TANK, "lengthMm", Unit.MILLIMETRE, site -> site.tank().lengthMm()),
    TANK_WIDTH(SiteGroup.TANK, "widthMm", Unit.MILLIMETRE, site -> site.tank().widthMm()),
    TANK_FLOOR(SiteGroup.TANK, "floorMm", Unit.MILLIMETRE, site -> site.tank().floorMm()),
    TANK_CREST(SiteGroup.TANK, "crestMm", Unit.MILLIMETRE, site -> site.tank().crestMm()),
    TANK_RIM(SiteGroup.TANK, "rimMm", Unit.MILLIMETRE, site -> site.tank().rimMm()),
    TANK_WATER(SiteGroup.TANK, "waterLitres", Unit.LITRE, site -> site.tank().waterLitres()),
    TANK_DRY(SiteGroup.TANK, "dryKilograms", Unit.KILOGRAM, site -> site.tank().dryKilograms()),
    OVERFLOW_WIDTH(
            SiteGroup.OVERFLOW,
            "openWidthMm",
            Unit.MILLIMETRE,
            site -> site.overflow().openWidthMm()),
    DRAIN_PIPES(SiteGroup.DRAIN, "pipes", Unit.COUNT, site -> site.drainage().pipes()),
    DRAIN_BORE(
            SiteGroup.DRAIN,
            "boreMm",
            Unit.MILLIMETRE,
            site -> site.drainage().each().boreMm()),
    DRAIN_LENGTH(
            SiteGroup.DRAIN,
            "lengthMm",
            Unit.MILLIMETRE,
            site -> site.drainage().each().lengthMm()),
    DRAIN_INLET(
            SiteGroup.DRAIN,
            "inletBelowCrestMm",
            Unit.MILLIMETRE,
            site -> site.drainage().inletBelowCrestMm()),
    DRAIN_OUTLET(
            SiteGroup.DRAIN,
            "outletMm",
            Unit.MILLIMETRE,
            site -> site.drainage().outletMm()),
    BOX_CHAMBER_FLOOR(
            SiteGroup.BOX,
            "chamberFloorMm",
            Unit.MILLIMETRE,
            site -> site.filter().chamberFloorMm()),
    BOX_CHAMBER_WATER(
            SiteGroup.BOX,
            "chamberLitresPerMm",
            Unit.MILLILITRE,
            site -> site.filter().chamberLitresPerMm()),
    BOX_WET_LENGTH(
            SiteGroup.BOX, "wetLengthMm", Unit.MILLIMETRE, site -> site.filter().wetLengthMm()),
    BOX_WET_WIDTH(
            SiteGroup.BOX, "wetWidthMm", Unit.MILLIMETRE, site -> site.filter().wetWidthMm()),
    BOX_WET_FLOOR(
            SiteGroup.BOX, "wetFloorMm", Unit.MILLIMETRE, site -> site.filter().wetFloorMm()),
    BOX_MEDIA_BOTTOM(
            SiteGroup.BOX,
            "mediaBottomMm",
            Unit.MILLIMETRE,
            site -> site.filter().mediaBottomMm()),
    BOX_MEDIA_HEIGHT(
            SiteGroup.BOX,
            "mediaHeightMm",
            Unit.MILLIMETRE,
            site -> site.filter().mediaHeightMm()),
    BOX_MEDIA_LENGTH(
            SiteGroup.BOX,
            "mediaLengthMm",
            Unit.MILLIMETRE,
            site -> site.filter().mediaLengthMm()),
    BOX_MEDIA_VOIDS(
            SiteGroup.BOX, "mediaVoids", Unit.SHARE, site -> site.filter().mediaVoids()),
    BOX_PUMP_AIR(
            SiteGroup.BOX,
            "pumpDrawsAirMm",
            Unit.MILLIMETRE,
            site -> site.filter().pumpDrawsAirMm()),
    BOX_RIM(SiteGroup.BOX, "rimMm", Unit.MILLIMETRE, site -> site.filter().rimMm()),
    BOX_CUP_LIFT(
            SiteGroup.BOX, "cupLiftMm", Unit.MILLIMETRE, site -> site.filter().cupLiftMm()),
    BOX_CUP_TOP(
            SiteGroup.BOX, "cupTopMm", Unit.MILLIMETRE, site -> site.filter().cupTopMm()),
    BOX_DRY(SiteGroup.BOX, "dryKilograms", Unit.KILOGRAM, site -> site.filter().dryKilograms()),
    SUMP_LENGTH(SiteGroup.SUMP, "lengthMm", Unit.MILLIMETRE, site -> sump(site).lengthMm()),
    SUMP_WIDTH(SiteGroup.SUMP, "widthMm", Unit.MILLIMETRE, site -> sump(site).widthMm()),
    SUMP_FLOOR(SiteGroup.SUMP, "floorMm", Unit.MILLIMETRE, site -> sump(site).floorMm()),
    SUMP_RIM(SiteGroup.SUMP, "rimMm", Unit.MILLIMETRE, site -> sump(site).rimMm()),
    SUMP_DRY(SiteGroup.SUMP, "dryKilograms", Unit.KILOGRAM, site -> sump(site).dryKilograms()),
    RETURN_BORE(
            SiteGroup.RETURN,
            "boreMm",
            Unit.MILLIMETRE,
            site -> site.returnLine().plumbing().boreMm()),
    RETURN_LENGTH(
            SiteGroup.RETURN,
            "lengthMm",
            Unit.MILLIMETRE,
            site -> site.returnLine().plumbing().lengthMm()),
    RETURN_MOUTH(
            SiteGroup.RETURN,
            "mouthBelowCrestMm",
            Unit.MILLIMETRE,
            site -> site.returnLine().mouthBelowCrestMm()),
    RETURN_BREAK(
            SiteGroup.RETURN,
            "breakBelowCrestMm",
            Unit.MILLIMETRE,
            site -> site.returnLine().breakBelowCrestMm()),
    HOSE_HOLDS(
            SiteGroup.HOSE, "containerLitres", Unit.LITRE, site -> site.hose().containerLitres()),
    HOSE_EMPTIED(
            SiteGroup.HOSE, "emptiedEveryDays", Unit.DAY, site -> site.hose().emptiedEveryDays()),
    HOSE_LENGTH(
            SiteGroup.HOSE, "hoseLengthMm", Unit.MILLIMETRE, site -> site.hose().hoseLengthMm()),
    HOSE_FALL(SiteGroup.HOSE, "hoseFallMm", Unit.MILLIMETRE, site -> site.hose().hoseFallMm()),
    PLACE_TOP_OFF(SiteGroup.PLACE, "topOffReservoirLitres", Unit.LITRE, site -> site.topOffReservoirLitres()),
    PLACE_LOAD(
            SiteGroup.PLACE,
            "ratedKilograms",
            Unit.KILOGRAM,
            site -> site.stand().ratedKilograms().orElse(Double.NaN)),
    PLACE_HEADROOM(
            SiteGroup.PLACE, "headroomMm", Unit.MILLIMETRE, site -> site.stand().headroomMm()),
    PLACE_CELSIUS(SiteGroup.PLACE, "waterCelsius", Unit.CELSIUS, site -> site.waterCelsius()),
    PLACE_SALINITY(SiteGroup.PLACE, "practicalSalinity", Unit.SALINITY, site -> site.practicalSalinity());

    private static final ExtraSump NO_SUMP = new ExtraSump(500, 400, 0, 400, 9);

    private final SiteGroup group;
    private final String component;
    private final Unit unit;
    private final ToDoubleFunction<Installation> of;

    SiteField(SiteGroup group, String component, Unit unit, ToDoubleFunction<Installation> of) {
        this.group = group;
        this.component = component;
        this.unit = unit;
        this.of = of;
    }

    private static ExtraSump sump(Installation site) {
        return site.extraSump().orElse(NO_SUMP);
    }

    SiteGroup group() {
        return group;
    }

    /** Name of the value in the library's records. */
    String component() {
        return component;
    }

    Unit unit() {
        return unit;
    }

    /** Its value in an installation. */
    double of(Installation site) {
        return of.applyAsDouble(site);
    }

    /** How many of what is typed make one of what is held: the chamber's water is typed in mL and held in L. */
    double scale() {
        return this == BOX_CHAMBER_WATER ? 1000 : 1;
    }

    /** Whether it may be left empty. */
    boolean mayBeEmpty() {
        return this == RETURN_BREAK || this == PLACE_LOAD;
    }
}
