package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.TankTime;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.demo.practice.PracticeDesk;
import io.github.weirwise.demo.practice.PracticePages;
import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.unit.LanternQuay;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;

/** Practice on a scenario with a hidden fault. */
final class PractiseUse implements Use {
    private final PracticeDesk desk;
    private final PracticePages pages;
    private final Background background;
    private boolean offered;

    PractiseUse(PracticeDesk desk, Background background, Runnable openFile, Saving saving, Dress dress) {
        this.desk = desk;
        this.background = background;
        pages = new PracticePages(desk, openFile, saving, dress);
    }

    PracticePages pages() {
        return pages;
    }

    @Override
    public String key() {
        return "use.practise";
    }

    @Override
    public JComponent controls() {
        return pages.controls();
    }

    @Override
    public JComponent panel() {
        return pages.panel();
    }

    @Override
    public Scene scene() {
        return pages.scene().orElseGet(() -> {
            var unit = LanternQuay.jetty();
            var settings = unit.ratedSettings(unit.column().funnelBaseMm() - 10);
            return Scene.wanted(unit, settings);
        });
    }

    @Override
    public void moveWeir(double crestMm) {
        pages.plan(crestMm);
    }

    @Override
    public Optional<TankTime> time() {
        return Optional.empty();
    }

    @Override
    public String title(Dress dress) {
        return pages.title().orElseGet(() -> dress.text("choose.picture"));
    }

    @Override
    public void refresh() {
        pages.refresh();
    }

    /** The built-in scenarios are read off the event thread once their page is there. */
    @Override
    public void build(Runnable between, Runnable last) {
        pages.build(between, () -> {
            offer();
            last.run();
        });
    }

    private void offer() {
        if (!offered) {
            offered = true;
            background.<List<Scenario>>run(
                    () -> ScenarioJson.BUILT_IN.stream()
                            .map(ScenarioJson::builtIn)
                            .toList(),
                    pages::offer);
        }
    }

    @Override
    public void dress(Dress dress) {
        pages.dress(dress);
    }

    @Override
    public void onChange(Runnable listener) {
        desk.onChange(listener);
        desk.onReplay(listener);
    }
}
