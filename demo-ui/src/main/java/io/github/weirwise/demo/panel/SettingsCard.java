package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Weir;
import java.util.List;

/** Weir, flow and air of the unit. Only an invented unit is set from here. */
public final class SettingsCard extends KnobsCard {
    private static final long serialVersionUID = 1L;
    private static final double WEIR_STEP_MM = 0.5;

    private final transient TankDesk desk;
    private final transient Knob weir;
    private final transient Knob flow;
    private final transient Knob air;

    /** The knobs of a desk's unit. */
    public static SettingsCard of(TankDesk desk, Dress dress) {
        SkimmerUnit unit = desk.unit();
        Weir travel = unit.weir();
        Knob weir = new Knob(
                "set.weir", Unit.MILLIMETRE, travel.lowestCrestMm(), travel.highestCrestMm(), WEIR_STEP_MM, dress);
        Knob flow = new Knob("set.flow", Unit.LITRE_PER_HOUR, 0, 2 * unit.ratedFlowLitresPerHour(), 20, dress);
        Knob air = new Knob("set.air", Unit.LITRE_PER_HOUR, 0, 2 * unit.ratedAirLitresPerHour(), 2, dress);
        return new SettingsCard(desk, weir, flow, air, dress);
    }

    private SettingsCard(TankDesk desk, Knob weir, Knob flow, Knob air, Dress dress) {
        super("set.title", List.of(weir, flow, air), 1, dress);
        this.desk = desk;
        this.weir = weir;
        this.flow = flow;
        this.air = air;
        weir.onChange(desk::moveWeir);
        flow.onChange(desk::setFlow);
        air.onChange(desk::setAir);
        refresh();
    }

    /** Shows what is set. */
    public void refresh() {
        Settings settings = desk.settings();
        weir.show(settings.weirCrestMm());
        flow.show(settings.flowLitresPerHour());
        air.show(settings.airLitresPerHour());
    }
}
