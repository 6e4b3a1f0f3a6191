package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Weir;

/** Weir, flow and air of the unit. Only an invented unit is set from here. */
public final class SettingsCard extends KnobsCard {
    private static final long serialVersionUID = 1L;
    private static final double WEIR_STEP_MM = 0.5;

    private final transient TankDesk desk;
    private final transient Knob weir;
    private final transient Knob flow;
    private final transient Knob air;

    /** The knobs of a desk's unit. */
    public SettingsCard(TankDesk desk, Dress dress) {
        super("set.title", 1, dress);
        this.desk = desk;
        SkimmerUnit unit = desk.unit();
        Weir travel = unit.weir();
        weir = put(new Knob(
                "set.weir", Unit.MILLIMETRE, travel.lowestCrestMm(), travel.highestCrestMm(), WEIR_STEP_MM, dress));
        flow = put(new Knob("set.flow", Unit.LITRE_PER_HOUR, 0, 2 * unit.ratedFlowLitresPerHour(), 20, dress));
        air = put(new Knob("set.air", Unit.LITRE_PER_HOUR, 0, 2 * unit.ratedAirLitresPerHour(), 2, dress));
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
