package io.github.weirwise.demo.window;

import io.github.weirwise.demo.chart.ChartCard;
import io.github.weirwise.demo.chart.ResponseData;
import io.github.weirwise.demo.chart.ResponseDrawing;
import io.github.weirwise.demo.chart.StripData;
import io.github.weirwise.demo.chart.StripDrawing;
import io.github.weirwise.demo.desk.TankTime;
import io.github.weirwise.demo.desk.TryDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.ChangeCard;
import io.github.weirwise.demo.panel.TryKnobs;
import io.github.weirwise.demo.panel.UnitChoice;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.skimmer.SkimmerUnit;
import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Free play: every knob, what it changes, and the unit's answer to the weir as a chart. */
final class TryUse implements Use {
    private final TryDesk desk;
    private final JPanel controls = new JPanel(new BorderLayout());
    private final JPanel panel = new JPanel(
            new MigLayout("insets 0, fill, wrap 1, gapy 10", "[grow,fill]", "[][][grow 60,fill][grow 40,fill]"));
    private final UnitChoice units;
    private final ChangeCard change;
    private final ChartCard response;
    private final ChartCard strip;
    private TryKnobs knobs;
    private Dress dress;

    TryUse(TryDesk desk, Dress dress) {
        this.desk = desk;
        this.dress = dress;
        knobs = TryKnobs.of(desk, dress);
        units = new UnitChoice(this::choose, dress);
        change = new ChangeCard(desk, dress);
        response = new ChartCard("response", responseDrawing(), dress);
        strip = new ChartCard("strip", stripDrawing(), dress);
        controls.setOpaque(false);
        controls.add(knobs);
        panel.setOpaque(false);
        panel.add(units);
        panel.add(change, "hmin pref");
        panel.add(response, "grow, push, h 120:200:");
        panel.add(strip, "grow, push, h 120:200:");
        desk.onChange(this::refresh);
    }

    private void choose(SkimmerUnit unit) {
        desk.choose(unit);
        controls.removeAll();
        knobs = TryKnobs.of(desk, dress);
        controls.add(knobs);
        controls.revalidate();
        refresh();
    }

    private ResponseDrawing responseDrawing() {
        return new ResponseDrawing(ResponseData.of(desk.unit(), desk.settings()));
    }

    private StripDrawing stripDrawing() {
        return new StripDrawing(new StripData(
                desk.points(),
                List.of(),
                List.of(),
                desk.scene().bandMm(),
                desk.unit().target().skimmateBandMlPerDay(),
                Optional.empty(),
                desk.start()));
    }

    @Override
    public String key() {
        return "use.try";
    }

    @Override
    public JComponent controls() {
        return controls;
    }

    @Override
    public JComponent panel() {
        return panel;
    }

    @Override
    public Scene scene() {
        return desk.scene();
    }

    @Override
    public void moveWeir(double crestMm) {
        desk.moveWeir(crestMm);
    }

    @Override
    public Optional<TankTime> time() {
        return Optional.of(desk);
    }

    @Override
    public String title(Dress other) {
        return desk.unit().name();
    }

    @Override
    public void refresh() {
        knobs.refresh();
        change.refresh();
        response.show(responseDrawing());
        strip.show(stripDrawing());
    }

    @Override
    public void dress(Dress other) {
        dress = other;
        knobs.dress(other);
        units.dress(other);
        change.dress(other);
        response.dress(other);
        strip.dress(other);
    }

    @Override
    public void onChange(Runnable listener) {
        desk.onChange(listener);
    }
}
