package io.github.weirwise.demo.care;

import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Group;
import io.github.weirwise.demo.panel.Pieces;
import io.github.weirwise.demo.panel.Pieces.Piece;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.panel.Slices;
import io.github.weirwise.demo.panel.Stack;
import io.github.weirwise.setup.Installation;
import java.awt.BorderLayout;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** The pages for setting up and looking after, one at a time. */
public final class CarePages {
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fill, wrap 1, gapy 10", "[grow,fill]", "[][grow,fill]"));
    private final Stack pages = new Stack();
    private final Map<String, JComponent> byKey = new LinkedHashMap<>();
    private final Map<String, JToggleButton> buttons = new LinkedHashMap<>();
    private final JPanel controls = new JPanel(new BorderLayout());
    private final Pieces pieces;
    private final Group group = new Group();
    private final JPanel choice = new JPanel(new MigLayout("insets 0, gapx 6"));
    private Dress dress;

    /** Pages for the desk that is tuned at, made in slices; {@code opening} asks for the file of an installation. */
    public CarePages(
            Supplier<Desk> desk, Slices slices, Consumer<Consumer<Installation>> opening, Saving saving, Dress dress) {
        this.dress = dress;
        pieces = new Pieces(slices, panel, controls);
        FitPage[] fit = new FitPage[1];
        choice.setOpaque(false);
        controls.setOpaque(false);
        panel.setOpaque(false);
        panel.add(choice);
        panel.add(pages, "grow, push, wmin 0");
        pieces.add(() -> {
            NeverCard never = new NeverCard(this.dress);
            controls.add(never);
            return Piece.still(never::dress);
        });
        pieces.add(() -> {
            fit[0] = new FitPage(saving, this::refresh, this.dress);
            page("care.fit", fit[0]);
            show("care.fit");
            return Piece.still(fit[0]::dress);
        });
        pieces.add(() -> {
            OwnPage own = new OwnPage(
                    site -> {
                        fit[0].check(site);
                        show("care.fit");
                    },
                    opening,
                    () -> Optional.of(desk.get())
                            .filter(FileDesk.class::isInstance)
                            .map(Desk::unit),
                    saving,
                    this.dress);
            page("care.own", own);
            return Piece.still(own::dress);
        });
        pieces.add(() -> {
            StartPage start = new StartPage(fit[0]::check, saving, this.dress);
            page("care.start", start);
            return new Piece(start::refresh, start::dress);
        });
        pieces.add(() -> {
            DuePage due = new DuePage(desk, fit[0]::check, saving, this.dress);
            page("care.due", due);
            return new Piece(due::refresh, due::dress);
        });
    }

    private void page(String key, JComponent page) {
        JToggleButton button = new JToggleButton();
        button.setName(key);
        button.addActionListener(e -> show(key));
        Buttons.name(button, dress, key);
        group.add(button);
        buttons.put(key, button);
        choice.add(button);
        byKey.put(key, page);
        pages.keep(page);
    }

    /** Turns to a page. */
    public void show(String key) {
        buttons.get(key).setSelected(true);
        refresh();
        pages.hold(byKey.get(key));
    }

    public JComponent panel() {
        return panel;
    }

    /** What stands under the picture. */
    public JComponent controls() {
        return controls;
    }

    /** Shows what is so now. */
    public void refresh() {
        pieces.refresh();
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        buttons.forEach((key, button) -> Buttons.name(button, other, key));
        pieces.dress(other);
    }
}
