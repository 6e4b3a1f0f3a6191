package io.github.weirwise.demo.care;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Named;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.panel.Sheet;
import io.github.weirwise.demo.panel.Slices;
import io.github.weirwise.json.WeirwiseJson;
import io.github.weirwise.setup.Installation;
import java.awt.Font;
import java.awt.Rectangle;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.UIManager;

/** The form of one's own tank: typed in, opened, saved, and handed over to the fit check. */
final class OwnPage extends Card {
    private static final long serialVersionUID = 1L;
    private static final int LINE_PX = 16;

    private final transient SiteForm form;
    private final transient Consumer<Installation> checked;
    private final transient Saving saving;
    private final Prose about = new Prose();
    private final Prose said = new Prose();
    private final JLabel nameLabel = new Caption();
    private final JTextField name = new JTextField();
    private final JLabel goToLabel = new Caption();
    private final JComboBox<Named<SiteGroup>> goTo = new JComboBox<>();
    private final JButton check = new JButton();
    private final JButton open = new JButton();
    private final JButton save = new JButton();
    private final Sheet sheet = new Sheet("[grow,fill]");
    private final Map<SiteGroup, JPanel> sections = new EnumMap<>(SiteGroup.class);
    private final Map<SiteGroup, JLabel> headings = new EnumMap<>(SiteGroup.class);
    private transient Runnable say = () -> {};
    private transient Dress dress;
    private boolean filling;

    /**
     * A form that is filled with the numbers of an invented tank.
     *
     * @param checked gets the installation when all of it could be taken
     * @param opening asks for a file and hands over the installation in it
     */
    OwnPage(
            Consumer<Installation> checked,
            Consumer<Consumer<Installation>> opening,
            Saving saving,
            Slices slices,
            Dress dress) {
        super(dress.palette(), "[][grow,fill]", "");
        this.checked = checked;
        this.saving = saving;
        this.dress = dress;
        form = new SiteForm(dress);
        name.setName("own.name");
        nameLabel.setLabelFor(name);
        goTo.setName("own.goTo");
        goToLabel.setLabelFor(goTo);
        said.setName("own.said");
        check.setName("own.check");
        open.setName("own.open");
        save.setName("own.save");
        check.addActionListener(e -> read().ifPresent(checked));
        open.addActionListener(e -> opening.accept(this::show));
        save.addActionListener(e -> save());
        goTo.addActionListener(e -> turn());
        say(() -> "");
        put();
        for (SiteGroup group : SiteGroup.values()) {
            slices.add(() -> section(group));
        }
        slices.add(() -> offer(true));
        offer(false);
        dress(dress);
    }

    /** What works on the whole form waits until all of it is there. */
    private void offer(boolean on) {
        check.setEnabled(on);
        open.setEnabled(on);
        save.setEnabled(on);
    }

    private void put() {
        beside(check);
        beside(open);
        beside(save);
        JScrollPane scroll = new JScrollPane(
                sheet, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        scroll.getVerticalScrollBar().setUnitIncrement(LINE_PX);
        body().add(about, "span 2, growx, wmin 0, wrap");
        body().add(said, "span 2, growx, wmin 0, wrap");
        body().add(nameLabel);
        body().add(name, "growx, wmin 60, wrap");
        body().add(goToLabel);
        body().add(goTo, "growx, wmin 60, wrap");
        body().add(scroll, "span 2, grow, push, wmin 0, h 120:300:");
    }

    private void section(SiteGroup group) {
        Sheet section = new Sheet("[grow,fill][72!,fill][54!]");
        JLabel heading = new Caption();
        heading.setFont(UIManager.getFont("Label.font").deriveFont(Font.BOLD));
        heading.setText(dress.text("site.group." + group));
        headings.put(group, heading);
        section.add(heading, "span 3, gaptop 10, wrap");
        form.make(group, section);
        sections.put(group, section);
        sheet.add(section, "growx, wrap");
        sheet.revalidate();
    }

    /** Scrolls to the section that was picked. */
    private void turn() {
        if (!filling) {
            Named.picked(goTo).map(sections::get).ifPresent(section -> {
                Rectangle there = section.getBounds();
                there.height = Math.max(there.height, sheet.getVisibleRect().height);
                sheet.scrollRectToVisible(there);
            });
        }
    }

    /** Shows an installation that was opened. */
    void show(Installation site) {
        name.setText(site.name());
        form.show(site);
        int left = site.pump().points().size() - PumpRows.MOST;
        say(left > 0 ? () -> dress.text("own.morePoints", left) : () -> "");
    }

    /** The installation as typed; what cannot be taken is told at its box, and the first such box gets the focus. */
    private Optional<Installation> read() {
        if (name.getText().isBlank()) {
            say(() -> dress.text("own.unnamed"));
            name.requestFocusInWindow();
            return Optional.empty();
        }
        SiteForm.Result result = form.read(name.getText().strip());
        int faults = result.faults().size();
        say(() -> faults == 0 ? "" : faults == 1 ? dress.text("own.fault") : dress.text("own.faults", faults));
        result.faults().stream().findFirst().ifPresent(row -> row.goTo());
        sheet.revalidate();
        return result.site();
    }

    private void save() {
        read().ifPresent(site -> saving.save("tank.json", () -> WeirwiseJson.writeInstallation(site)));
    }

    private void say(java.util.function.Supplier<String> words) {
        say = () -> {
            String text = words.get();
            said.setText(text);
            said.setVisible(!text.isEmpty());
            revalidate();
        };
        say.run();
    }

    /** Other words or colours. */
    void dress(Dress other) {
        dress = other;
        head(other.text("own.title"));
        paper(other.palette());
        about.setText(other.text("own.about"));
        about.setForeground(other.palette().muted());
        said.setForeground(other.palette().danger());
        nameLabel.setText(other.text("own.name"));
        goToLabel.setText(other.text("own.goTo"));
        Buttons.name(check, other, "own.check");
        Buttons.name(open, other, "own.open");
        Buttons.name(save, other, "own.save");
        filling = true;
        Named.fill(goTo, SiteGroup.values(), null, group -> other.text("site.group." + group));
        filling = false;
        goTo.getAccessibleContext().setAccessibleName(other.text("own.goTo"));
        headings.forEach((group, heading) -> heading.setText(other.text("site.group." + group)));
        form.dress(other);
        say.run();
    }
}
