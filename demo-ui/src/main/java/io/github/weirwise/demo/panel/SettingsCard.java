package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.report.Unit;
import io.github.weirwise.skimmer.Settings;
import io.github.weirwise.skimmer.SkimmerUnit;
import io.github.weirwise.skimmer.Weir;

/** Weir, flow and air of the unit. */
public final class SettingsCard extends Card {
    private static final long serialVersionUID = 1L;
    private static final double WEIR_STEP_MM = 0.5;

    private final transient Desk desk;
    private final transient Knob weir;
    private final transient Knob flow;
    private final transient Knob air;

    /** The knobs of a desk's unit. */
    public SettingsCard(Desk desk, Dress dress) {
        super(dress.palette(), "[][grow,fill][]", "");
        this.desk = desk;
        SkimmerUnit unit = desk.tank().unit();
        Weir travel = unit.weir();
        weir = new Knob(
                "set.weir", Unit.MILLIMETRE, travel.lowestCrestMm(), travel.highestCrestMm(), WEIR_STEP_MM, dress);
        flow = new Knob("set.flow", Unit.LITRE_PER_HOUR, 0, 2 * unit.ratedFlowLitresPerHour(), 20, dress);
        air = new Knob("set.air", Unit.LITRE_PER_HOUR, 0, 2 * unit.ratedAirLitresPerHour(), 2, dress);
        weir.addTo(body());
        flow.addTo(body());
        air.addTo(body());
        weir.onChange(desk::moveWeir);
        flow.onChange(desk::setFlow);
        air.onChange(desk::setAir);
        dress(dress);
        refresh();
    }

    /** Shows what is set. */
    public void refresh() {
        Settings settings = desk.tank().settings();
        weir.show(settings.weirCrestMm());
        flow.show(settings.flowLitresPerHour());
        air.show(settings.airLitresPerHour());
    }

    /** Other words or colours. */
    public void dress(Dress dress) {
        head(dress.text("set.title"));
        paper(dress.palette());
        weir.dress(dress);
        flow.dress(dress);
        air.dress(dress);
    }
}
