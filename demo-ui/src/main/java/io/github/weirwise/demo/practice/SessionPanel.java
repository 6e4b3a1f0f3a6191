package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Group;
import io.github.weirwise.demo.panel.Saving;
import java.awt.CardLayout;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** The trainee's side of a session: what they are told, and one page at a time to look, act, judge, compare and read back. */
final class SessionPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final ToldCard told;
    private final ActPage act;
    private final Map<String, PracticePage> pages = new LinkedHashMap<>();
    private final Map<String, JToggleButton> buttons = new LinkedHashMap<>();
    private final JPanel stack = new JPanel(new CardLayout());
    private transient Moment shown;

    SessionPanel(PracticeDesk desk, Moment first, Saving saving, Dress dress) {
        super(new MigLayout("insets 0, fill, wrap 1, gapy 8", "[grow,fill]", "[][][grow,fill]"));
        setOpaque(false);
        stack.setOpaque(false);
        shown = first;
        told = new ToldCard(desk, dress);
        act = new ActPage(desk, dress);
        JPanel choice = new JPanel(new MigLayout("insets 0, gapx 6"));
        choice.setOpaque(false);
        Group group = new Group();
        page(choice, group, "page.look", new LookPage(desk, dress));
        page(choice, group, "page.act", act);
        page(choice, group, "page.view", new ViewPage(desk, dress));
        page(choice, group, "page.advice", new AdvicePage(desk, dress));
        page(choice, group, "page.log", new LogPage(first, dress));
        page(choice, group, "page.debrief", new DebriefPage(desk, saving, dress));
        add(told, "hmin pref");
        add(choice);
        add(stack, "grow, push, wmin 0");
        turn("page.look");
        dress(dress);
    }

    private void page(JPanel choice, Group group, String key, PracticePage page) {
        JToggleButton button = new JToggleButton();
        button.setName(key);
        button.addActionListener(e -> turn(key));
        group.add(button);
        buttons.put(key, button);
        pages.put(key, page);
        choice.add(button);
        stack.add((JComponent) page, key);
    }

    /** Turns to a page. */
    void turn(String key) {
        buttons.get(key).setSelected(true);
        ((CardLayout) stack.getLayout()).show(stack, key);
    }

    /** Plans a move of the weir and turns to the page on which it is made. */
    void plan(double byMm) {
        act.plan(byMm);
        turn("page.act");
    }

    void show(Moment moment) {
        shown = moment;
        told.show(moment);
        pages.values().forEach(page -> page.show(moment));
    }

    void dress(Dress other) {
        told.dress(other);
        pages.values().forEach(page -> page.dress(other));
        buttons.forEach((key, button) -> Buttons.name(button, other, key));
        show(shown);
    }
}
