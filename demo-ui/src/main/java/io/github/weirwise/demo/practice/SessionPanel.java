package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Group;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.panel.Slices;
import io.github.weirwise.demo.panel.Stack;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** The trainee's side of a session: what they are told, and one page at a time to look, act, judge, compare and read back. */
final class SessionPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final ToldCard told;
    private final Map<String, PracticePage> pages = new LinkedHashMap<>();
    private final Map<String, JToggleButton> buttons = new LinkedHashMap<>();
    private final JPanel choice = new JPanel(new MigLayout("insets 0, gapx 6"));
    private final Group group = new Group();
    private final Stack stack = new Stack();
    private final transient Slices slices;
    private transient Optional<ActPage> act = Optional.empty();
    private transient Moment shown;
    private transient Dress dress;

    SessionPanel(PracticeDesk desk, Moment first, Saving saving, Dress dress) {
        super(new MigLayout("insets 0, fill, wrap 1, gapy 8", "[grow,fill]", "[][][grow,fill]"));
        this.dress = dress;
        setOpaque(false);
        choice.setOpaque(false);
        shown = first;
        told = new ToldCard(desk, dress);
        add(told, "hmin pref");
        add(choice);
        add(stack, "grow, push, wmin 0");
        slices = desk.slices();
        slices.add(() -> page("page.look", new LookPage(desk, this.dress)));
        slices.add(() -> turn("page.look"));
        slices.add(() -> page("page.act", act(desk)));
        slices.add(() -> page("page.view", new ViewPage(desk, this.dress)));
        slices.add(() -> page("page.advice", new AdvicePage(desk, this.dress)));
        slices.add(() -> page("page.log", new LogPage(shown, this.dress)));
        slices.add(() -> page("page.debrief", new DebriefPage(desk, saving, this.dress)));
        slices.start();
    }

    private ActPage act(PracticeDesk desk) {
        ActPage page = new ActPage(desk, dress);
        act = Optional.of(page);
        return page;
    }

    private void page(String key, PracticePage page) {
        JToggleButton button = new JToggleButton();
        button.setName(key);
        button.addActionListener(e -> turn(key));
        Buttons.name(button, dress, key);
        group.add(button);
        buttons.put(key, button);
        pages.put(key, page);
        choice.add(button);
        stack.keep((JComponent) page);
        page.show(shown);
        revalidate();
    }

    /** Turns to a page. */
    void turn(String key) {
        buttons.get(key).setSelected(true);
        stack.hold((JComponent) pages.get(key));
    }

    /** Plans a move of the weir and turns to the page on which it is made. */
    void plan(double byMm) {
        act.ifPresent(page -> {
            page.plan(byMm);
            turn("page.act");
        });
    }

    /** The page in sight at once, the others one by one. */
    void show(Moment moment) {
        shown = moment;
        told.show(moment);
        for (PracticePage page : pages.values()) {
            if (((JComponent) page).getParent().isVisible()) {
                page.show(moment);
            } else {
                slices.add(() -> page.show(shown));
            }
        }
    }

    void dress(Dress other) {
        dress = other;
        told.dress(other);
        pages.values().forEach(page -> page.dress(other));
        buttons.forEach((key, button) -> Buttons.name(button, other, key));
        show(shown);
    }
}
