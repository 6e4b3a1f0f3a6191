package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Group;
import io.github.weirwise.demo.panel.Slices;
import io.github.weirwise.demo.panel.Stack;
import io.github.weirwise.practice.Debrief;
import io.github.weirwise.practice.Question;
import io.github.weirwise.practice.SessionStep;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/**
 * A session: the case on top, and below it one thing at a time. Look, say what you think, say what will come and act, wait, compare;
 * after each step the next one opens by itself, and an open question stands before all of them.
 */
final class SessionPanel extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final String LOOK = "page.look";
    private static final String VIEW = "page.view";
    private static final String ACT = "page.act";
    private static final String WAIT = "page.wait";
    private static final String COMPARE = "page.compare";
    private static final String DEBRIEF = "page.debrief";

    private final CaseCard told;
    private final QuestionPage question;
    private final Map<String, PracticePage> pages = new LinkedHashMap<>();
    private final Map<String, JToggleButton> buttons = new LinkedHashMap<>();
    private final JPanel choice = new JPanel(new MigLayout("insets 0, gapx 6, gapy 4, nogrid"));
    private final Group group = new Group();
    private final Stack stack = new Stack();
    private final transient Slices slices;
    private transient Optional<ActPage> act = Optional.empty();
    private String turned = LOOK;
    private int stepsShown;
    private transient Moment shown;
    private transient Dress dress;

    SessionPanel(PracticeDesk desk, Moment first, Consumer<Debrief> debriefed, Dress dress) {
        super(new MigLayout("insets 0, fill, wrap 1, gapy 8", "[grow,fill]", "[][][grow,fill]"));
        this.dress = dress;
        setOpaque(false);
        choice.setOpaque(false);
        shown = first;
        stepsShown = first.session().steps().size();
        told = new CaseCard(dress);
        question = new QuestionPage(desk, dress);
        add(told, "hmin pref");
        add(choice);
        add(stack, "grow, push, wmin 0");
        slices = desk.slices();
        slices.add(() -> page(LOOK, new LookPage(desk, this.dress)));
        slices.add(() -> turn(LOOK));
        slices.add(() -> page(VIEW, new ViewPage(desk, this.dress)));
        slices.add(() -> page(ACT, act(desk)));
        slices.add(() -> page(WAIT, new WaitPage(desk, this.dress)));
        slices.add(() -> page(COMPARE, new ComparePage(this.dress)));
        slices.add(() -> page("page.advice", new AdvicePage(desk, this.dress)));
        slices.add(() -> page("page.log", new LogPage(shown, this.dress)));
        slices.add(() -> page(DEBRIEF, new OwnWords(desk, debriefed, this.dress)));
        slices.add(this::put);
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
        choice.add(button, key.equals(COMPARE) ? "wrap" : "");
        stack.keep((JComponent) page);
        page.show(shown);
        revalidate();
    }

    /** Turns to a page, as soon as no question stands before it. */
    void turn(String key) {
        turned = key;
        buttons.get(key).setSelected(true);
        put();
    }

    /** A question about causes is answered with the trainee's view, any other on a page of its own. */
    private void put() {
        Optional<Question> open = shown.session().questions().stream().findFirst();
        boolean causes = open.filter(Question::causes).isPresent() && pages.containsKey(VIEW);
        JComponent page =
                causes ? (JComponent) pages.get(VIEW) : open.isPresent() ? question : (JComponent) pages.get(turned);
        if (page != null) {
            stack.hold(page);
        }
        buttons.forEach((key, button) -> button.setEnabled(open.isEmpty()));
    }

    /** Plans a move of the weir, as from the picture. */
    void plan(double byMm) {
        act.ifPresent(page -> {
            page.plan(byMm);
            turn(ACT);
        });
    }

    void show(Moment moment) {
        shown = moment;
        told.show(moment);
        question.show(moment);
        for (PracticePage page : pages.values()) {
            if (((JComponent) page).getParent().isVisible()) {
                page.show(moment);
            } else {
                slices.add(() -> page.show(shown));
            }
        }
        int steps = moment.session().steps().size();
        if (steps != stepsShown && pages.containsKey(COMPARE)) {
            stepsShown = steps;
            next(moment).ifPresent(key -> {
                turned = key;
                buttons.get(key).setSelected(true);
            });
        }
        put();
    }

    /** The page on which the routine goes on after the newest step. */
    private static Optional<String> next(Moment moment) {
        if (moment.session().over()) {
            return Optional.of(DEBRIEF);
        }
        // A view that answers a question is followed by that answer; where to go on follows from the view.
        return moment.session().log().stream()
                .filter(line -> !(line.step() instanceof SessionStep.Answer))
                .reduce((first, last) -> last)
                .flatMap(line -> after(line.step(), moment));
    }

    private static Optional<String> after(SessionStep step, Moment moment) {
        if (step instanceof SessionStep.OwnView) {
            return Optional.of(ACT);
        }
        if (step instanceof SessionStep.Do) {
            return Optional.of(WAIT);
        }
        boolean waited = step instanceof SessionStep.Wait || step instanceof SessionStep.RunOn;
        boolean settled = moment.session().settlesAt().isEmpty();
        return waited && settled ? Optional.of(LOOK) : Optional.empty();
    }

    void dress(Dress other) {
        dress = other;
        told.dress(other);
        question.dress(other);
        pages.values().forEach(page -> page.dress(other));
        buttons.forEach((key, button) -> Buttons.name(button, other, key));
        show(shown);
    }
}
