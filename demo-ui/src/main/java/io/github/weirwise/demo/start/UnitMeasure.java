package io.github.weirwise.demo.start;

import io.github.weirwise.demo.panel.MeasureBoxes;
import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Target;
import io.github.weirwise.unit.Weir;
import java.util.function.ToDoubleFunction;

/** What is measured on a unit or stands on its data sheet, and how it is set now; the value on another unit stands in for one that is not known. */
public enum UnitMeasure implements MeasureBoxes.Measure {
    BORE("boreMm", Unit.MILLIMETRE, unit -> unit.column().boreMm()),
    OPENING("openingMm", Unit.MILLIMETRE, unit -> unit.column().openingMm()),
    FUNNEL_BASE("funnelBaseMm", Unit.MILLIMETRE, unit -> unit.column().funnelBaseMm()),
    FUNNEL_HEIGHT("funnelHeightMm", Unit.MILLIMETRE, unit -> unit.column().funnelHeightMm()),
    NECK_BORE("neckBoreMm", Unit.MILLIMETRE, unit -> unit.column().neckBoreMm()),
    NECK_HEIGHT("neckHeightMm", Unit.MILLIMETRE, unit -> unit.column().neckHeightMm()),
    WEIR_WIDTH("widthMm", Unit.MILLIMETRE, unit -> unit.weir().widthMm()),
    WEIR_LOW("lowestCrestMm", Unit.MILLIMETRE, unit -> unit.weir().lowestCrestMm()),
    WEIR_HIGH("highestCrestMm", Unit.MILLIMETRE, unit -> unit.weir().highestCrestMm()),
    CUP("cupMl", Unit.MILLILITRE, SkimmerUnit::cupMl),
    WANTED_LEVEL("submergenceMm", Unit.MILLIMETRE, unit -> unit.target().submergenceMm()),
    WANTED_AMOUNT(
            "skimmateMlPerDay", Unit.MILLILITRE_PER_DAY, unit -> unit.target().skimmateMlPerDay()),
    FLOW("ratedFlowLitresPerHour", Unit.LITRE_PER_HOUR, SkimmerUnit::ratedFlowLitresPerHour),
    AIR("ratedAirLitresPerHour", Unit.LITRE_PER_HOUR, SkimmerUnit::ratedAirLitresPerHour),
    CREST("weirCrestMm", Unit.MILLIMETRE, unit -> unit.column().funnelBaseMm() - 10),
    CELSIUS("waterCelsius", Unit.CELSIUS, unit -> 25),
    SALINITY("practicalSalinity", Unit.SALINITY, unit -> 35);

    private final MeasureBoxes.Held<SkimmerUnit> held;

    UnitMeasure(String component, Unit unit, ToDoubleFunction<SkimmerUnit> of) {
        held = new MeasureBoxes.Held<>(component, unit, of);
    }

    @Override
    public String textKey() {
        return "form." + this;
    }

    /** Whether it has a line in the drawing. */
    boolean isLength() {
        return held.unit() == Unit.MILLIMETRE || this == CUP;
    }

    /** Every move of the weir counts from where it stands. */
    @Override
    public boolean needed() {
        return this == CREST;
    }

    @Override
    public MeasureBoxes.Held<SkimmerUnit> held() {
        return held;
    }

    /** Its value on a unit. */
    public double of(SkimmerUnit measured) {
        return held.of().applyAsDouble(measured);
    }

    /**
     * The unit with these numbers; whatever they do not tell is as on another unit.
     *
     * @throws io.github.weirwise.report.OutOfRangeException if a number cannot be
     */
    static SkimmerUnit unit(String name, ToDoubleFunction<UnitMeasure> number, SkimmerUnit like) {
        Column column = new Column(
                number.applyAsDouble(BORE),
                number.applyAsDouble(OPENING),
                number.applyAsDouble(FUNNEL_BASE),
                number.applyAsDouble(FUNNEL_HEIGHT),
                number.applyAsDouble(NECK_BORE),
                number.applyAsDouble(NECK_HEIGHT));
        double width = number.applyAsDouble(WEIR_WIDTH);
        double channel = width == like.weir().widthMm() ? like.weir().channelWidthMm() : width;
        Weir weir = new Weir(width, channel, number.applyAsDouble(WEIR_LOW), number.applyAsDouble(WEIR_HIGH));
        Target target = new Target(
                number.applyAsDouble(WANTED_LEVEL),
                number.applyAsDouble(WANTED_AMOUNT),
                like.target().darknessPtCo());
        return new SkimmerUnit(
                name,
                like.columns(),
                column,
                weir,
                number.applyAsDouble(CUP),
                like.cupDrainLitresPerHour(),
                number.applyAsDouble(FLOW),
                number.applyAsDouble(AIR),
                like.traits(),
                target,
                like.layout());
    }

    /**
     * How a unit with these numbers is set.
     *
     * @throws io.github.weirwise.report.OutOfRangeException if a number cannot be
     */
    static Settings settings(ToDoubleFunction<UnitMeasure> number) {
        // A crest that the weir cannot have was measured from somewhere else.
        Limit.of(
                        CREST.held.component(),
                        number.applyAsDouble(WEIR_LOW),
                        number.applyAsDouble(WEIR_HIGH),
                        Unit.MILLIMETRE,
                        "demo.form.needed")
                .check(number.applyAsDouble(CREST));
        return new Settings(
                number.applyAsDouble(CREST),
                number.applyAsDouble(FLOW),
                number.applyAsDouble(AIR),
                number.applyAsDouble(CELSIUS),
                number.applyAsDouble(SALINITY),
                Condition.REFERENCE);
    }
}
