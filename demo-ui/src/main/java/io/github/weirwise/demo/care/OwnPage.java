package io.github.weirwise.demo.care;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.MeasureBoxes;
import io.github.weirwise.demo.panel.NumberBox;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.panel.Sheet;
import io.github.weirwise.json.WeirwiseJson;
import io.github.weirwise.setup.Installation;
import io.github.weirwise.setup.LanternQuaySites;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;

/** The form of one's own tank, what is needed first: typed in, opened, saved, and handed over to the fit check. */
final class OwnPage extends Card {
    private static final long serialVersionUID = 1L;
    private static final int AT_ONCE = 6;

    private final transient MeasureBoxes<SiteField> boxes;
    private final transient OwnTank tank;
    private final transient Saving saving;
    private final transient Supplier<Optional<SkimmerUnit>> unit;
    private final Sheet sheet = new Sheet("[grow,fill]16[grow,fill]");
    private final Prose about = new Prose();
    private final Prose said = new Prose();
    private final JLabel nameLabel = new Caption();
    private final JTextField name = new JTextField();
    private final JButton check = new JButton();
    private final JButton open = new JButton();
    private final JButton save = new JButton();
    private transient Installation base = LanternQuaySites.trainingTank();
    private transient Dress dress;

    /**
     * An empty form.
     *
     * @param checked gets the installation when all of it could be taken
     * @param tank where a file and what was typed come from
     * @param unit one's own unit, if one is looked after
     */
    OwnPage(
            Consumer<Installation> checked,
            OwnTank tank,
            Supplier<Optional<SkimmerUnit>> unit,
            Saving saving,
            Dress dress) {
        super(dress.palette(), "[][grow,fill]", "");
        this.tank = tank;
        this.saving = saving;
        this.unit = unit;
        this.dress = dress;
        boxes = new MeasureBoxes<>(SiteField.class, each -> each.assumed(base), numbers -> site("-", numbers), dress);
        name.setName("own.name");
        nameLabel.setLabelFor(name);
        said.setName("own.said");
        Buttons.set(check, "own.check", () -> read().ifPresent(checked));
        Buttons.set(open, "own.open", () -> tank.open(this::show));
        Buttons.set(
                save,
                "own.save",
                () -> read().ifPresent(site -> saving.save("tank.json", () -> WeirwiseJson.writeInstallation(site))));
        say("");
        put();
        dress(dress);
        boxes.named(name);
    }

    /** Once its boxes are there: what was typed before stands in them again, and what is typed is kept. */
    void keep() {
        tank.again(boxes::again);
        boxes.onTyped(() -> tank.typed(boxes.kept()));
    }

    /** What makes its boxes, some at a time, so that keys and mouse are heard in between. */
    List<Runnable> steps() {
        List<SiteField> all = List.of(SiteField.values());
        return IntStream.range(0, (all.size() + AT_ONCE - 1) / AT_ONCE)
                .mapToObj(part -> all.subList(part * AT_ONCE, Math.min(all.size(), (part + 1) * AT_ONCE)))
                .<Runnable>map(some -> () -> some.forEach(this::put))
                .toList();
    }

    private void put(SiteField each) {
        sheet.add(boxes.make(each, false), "aligny bottom, growx, wmin 0" + (each.ordinal() % 2 == 1 ? ", wrap" : ""));
    }

    private void put() {
        beside(check);
        beside(open);
        beside(save);
        JScrollPane scroll = Sheet.around(sheet);
        body().add(about, "span 2, growx, wmin 0, wrap");
        body().add(said, "span 2, growx, wmin 0, wrap");
        body().add(nameLabel);
        body().add(name, "growx, wmin 60, wrap");
        body().add(scroll, "span 2, grow, push, wmin 0, h 120:300:");
    }

    private Installation site(String called, java.util.function.ToDoubleFunction<SiteField> numbers) {
        return SiteField.site(
                called, numbers, base, unit.get().orElse(base.filter().unit()));
    }

    /** Shows an installation that was opened; what is not asked for stays as it is in it. */
    void show(Installation site) {
        base = site;
        name.setText(site.name());
        boxes.show(each -> each.of(site));
        say("");
    }

    /** The installation as typed; what cannot be taken is told at its box, and the first such box gets the focus. */
    private Optional<Installation> read() {
        if (name.getText().isBlank()) {
            say(dress.text("own.unnamed"));
            name.requestFocusInWindow();
            return Optional.empty();
        }
        boxes.check();
        if (boxes.faults() > 0) {
            say(dress.text("form.faults"));
            boxes.firstFault().map(NumberBox::field).ifPresent(JTextField::requestFocusInWindow);
            return Optional.empty();
        }
        say(boxes.assumedWords().isEmpty() ? "" : dress.text("own.assumed", base.name()));
        return Optional.of(site(name.getText().strip(), boxes.values()));
    }

    private void say(String text) {
        said.setText(text);
        said.setVisible(!text.isEmpty());
        revalidate();
    }

    /** Other words or colours. */
    void dress(Dress other) {
        dress = other;
        head(other.text("own.title"));
        paper(other.palette());
        about.setText(other.text("own.about"));
        about.setForeground(other.palette().muted());
        nameLabel.setText(other.text("own.name"));
        Buttons.name(other, check, open, save);
        boxes.dress(other);
    }
}
