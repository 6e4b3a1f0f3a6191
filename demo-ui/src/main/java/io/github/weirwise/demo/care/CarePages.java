package io.github.weirwise.demo.care;

import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Group;
import io.github.weirwise.demo.panel.Saving;
import java.awt.CardLayout;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** The pages for setting up and looking after, one at a time. */
public final class CarePages {
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fill, wrap 1, gapy 10", "[grow,fill]", "[][grow,fill]"));
    private final JPanel pages = new JPanel(new CardLayout());
    private final Map<String, JToggleButton> buttons = new LinkedHashMap<>();
    private final NeverCard never;
    private final FitPage fit;
    private final StartPage start;
    private final DuePage due;

    /** Pages for the desk that is tuned at. */
    public CarePages(Supplier<Desk> desk, Saving saving, Dress dress) {
        never = new NeverCard(dress);
        fit = new FitPage(saving, this::refresh, dress);
        start = new StartPage(fit::check, saving, dress);
        due = new DuePage(desk, fit::check, saving, dress);
        JPanel choice = new JPanel(new MigLayout("insets 0, gapx 6"));
        choice.setOpaque(false);
        panel.setOpaque(false);
        pages.setOpaque(false);
        Group group = new Group();
        page(choice, group, "care.fit", fit);
        page(choice, group, "care.start", start);
        page(choice, group, "care.due", due);
        buttons.get("care.fit").setSelected(true);
        panel.add(choice);
        panel.add(pages, "grow, push, wmin 0");
        dress(dress);
    }

    private void page(JPanel choice, Group group, String key, JComponent page) {
        JToggleButton button = new JToggleButton();
        button.setName(key);
        button.addActionListener(e -> show(key));
        group.add(button);
        buttons.put(key, button);
        choice.add(button);
        pages.add(page, key);
    }

    /** Turns to a page. */
    public void show(String key) {
        buttons.get(key).setSelected(true);
        refresh();
        ((CardLayout) pages.getLayout()).show(pages, key);
    }

    public JComponent panel() {
        return panel;
    }

    /** What stands under the picture. */
    public JComponent controls() {
        return never;
    }

    /** Shows what is so now. */
    public void refresh() {
        if (start != null && due != null) {
            start.refresh();
            due.refresh();
        }
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        buttons.forEach((key, button) -> Buttons.name(button, other, key));
        never.dress(other);
        fit.dress(other);
        start.dress(other);
        due.dress(other);
    }
}
