package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Passage;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.panel.Slices;
import io.github.weirwise.demo.panel.Stack;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.practice.Debrief;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.Scenario;
import java.awt.BorderLayout;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** The trainee's screens: first the choice of a scenario, then the session. */
public final class PracticePages {
    private static final double LEAST_FILMED_HOURS = 2;

    private final PracticeDesk desk;
    private final Saving saving;
    private final Stack panel = new Stack();
    private final JPanel controls = new JPanel(new BorderLayout());
    private final Slices slices;
    private final List<Scenario> waiting = new ArrayList<>();
    private Optional<ChoosePage> choose = Optional.empty();
    private Optional<ClockCard> clock = Optional.empty();
    private Optional<SessionPanel> session = Optional.empty();
    private Optional<Told> told = Optional.empty();
    private boolean making;
    private final Passage passage = new Passage();
    private Optional<WaitFilm> film = Optional.empty();
    private Optional<PracticeSession> seen = Optional.empty();
    private BooleanSupplier moves = () -> false;
    private Dress dress;

    /** Screens for a desk; a trainer's window is opened, and a scenario's file asked for, by the given actions. */
    public PracticePages(PracticeDesk desk, Runnable openFile, Saving saving, Dress dress) {
        this.desk = desk;
        this.saving = saving;
        this.dress = dress;
        controls.setOpaque(false);
        slices = desk.slices();
        slices.add(() -> choose(openFile));
        desk.onChange(this::refresh);
    }

    private void choose(Runnable openFile) {
        ChoosePage page = new ChoosePage("choose", desk, openFile, () -> {}, false, dress);
        choose = Optional.of(page);
        page.offer(waiting);
        waiting.clear();
        refresh();
    }

    /** Begins to make the screens; does {@code between} after each piece and {@code last} when all is there. */
    public void build(Runnable between, Runnable last) {
        slices.between(between);
        slices.add(last);
        slices.start();
    }

    /** Offers these scenarios. */
    public void offer(List<Scenario> scenarios) {
        choose.ifPresentOrElse(page -> page.offer(scenarios), () -> waiting.addAll(scenarios));
    }

    public JComponent panel() {
        return panel;
    }

    /** What stands under the picture. */
    public JComponent controls() {
        return controls;
    }

    /** What the picture shows: the session's unit, or that of the scenario that is picked. */
    public Optional<Scene> scene() {
        return told.map(Told::scene)
                .or(() -> film.map(WaitFilm::scene))
                .or(() -> desk.moment().map(Moment::scene))
                .or(() -> choose.flatMap(ChoosePage::scenario)
                        .map(each -> Scene.wanted(each.unit(), each.start().settings())));
    }

    /** What is worked on. */
    public Optional<String> title() {
        return desk.moment().map(moment -> moment.session().scenario().title());
    }

    /** The weir was moved in the picture; here that is a plan, not yet an act. */
    public void plan(double crestMm) {
        desk.moment()
                .ifPresent(moment -> session.ifPresent(
                        page -> page.plan(crestMm - moment.session().markMm())));
    }

    /** A debrief that is told, with the hour that its replay shows. */
    private record Told(Debrief debrief, DebriefBoard board, ReplayCard replay) {
        Scene scene() {
            return Moment.scene(debrief.session().tankAt(replay.hours()));
        }
    }

    /** The debrief takes the whole window, with the replay in the picture. */
    private void tell(Debrief debrief) {
        DebriefBoard board = new DebriefBoard(debrief, desk, saving, this::untell, dress);
        ReplayCard replay = new ReplayCard(
                debrief.session(),
                hours -> {
                    board.replayAt(hours);
                    desk.replayed();
                },
                dress);
        told = Optional.of(new Told(debrief, board, replay));
        panel.hold(board);
        controls.removeAll();
        controls.add(replay);
        controls.revalidate();
        desk.replayed();
    }

    /** Back from the debrief to the session. */
    private void untell() {
        told.ifPresent(each -> {
            each.replay().stop();
            panel.drop(each.board());
        });
        told = Optional.empty();
        controls.removeAll();
        if (desk.moment().isPresent()) {
            session.ifPresent(panel::hold);
            controls.add(clock());
        }
        controls.revalidate();
        controls.repaint();
        desk.replayed();
    }

    /** Whether what was waited for is seen to pass, or jumps. */
    public void moves(BooleanSupplier motion) {
        moves = motion;
    }

    /** A wait of some hours goes by before the eyes; whatever is done next ends it. */
    private void passBy(PracticeSession session) {
        boolean nextStep = seen.filter(
                        before -> session.steps().size() == before.steps().size() + 1)
                .isPresent();
        if (seen.filter(before -> before == session).isPresent()) {
            return;
        }
        seen = Optional.of(session);
        passage.cut();
        film = session.log().stream()
                .reduce((first, last) -> last)
                .filter(line -> nextStep && moves.getAsBoolean())
                .filter(line -> line.untilHours() - line.fromHours() >= LEAST_FILMED_HOURS)
                .map(line -> new WaitFilm(session, line.fromHours(), this::frame));
        film.ifPresent(
                each -> passage.play(each, Optional.of(Duration.between(each.now(), session.now())), this::frame));
    }

    private void frame() {
        if (passage.runs()) {
            film.ifPresent(each -> clock().pass(each, passage));
        } else {
            desk.moment().ifPresent(clock()::show);
        }
        desk.replayed();
    }

    /** Shows what is so now. */
    public void refresh() {
        Optional<Moment> moment = desk.moment();
        moment.map(Moment::session).ifPresent(this::passBy);
        if (told.filter(each -> moment.map(Moment::session)
                        .filter(now -> now == each.debrief().session())
                        .isEmpty())
                .isPresent()) {
            untell();
        }
        if (moment.isEmpty()) {
            passage.cut();
            film = Optional.empty();
            session.ifPresent(panel::drop);
            session = Optional.empty();
            clock = Optional.empty();
            controls.removeAll();
            controls.revalidate();
            choose.ifPresent(panel::hold);
            return;
        }
        if (session.isEmpty()) {
            if (!making) {
                making = true;
                slices.add(() -> make(moment.get()));
            }
            return;
        }
        session.get().show(moment.get());
        clock().show(moment.get());
        if (passage.runs()) {
            frame();
        }
    }

    /** The session's screen, in an event of its own, and in sight in the next one. */
    private void make(Moment first) {
        SessionPanel page = new SessionPanel(desk, first, this::tell, dress);
        clock();
        slices.add(() -> {
            making = false;
            if (desk.moment().isPresent()) {
                session = Optional.of(page);
                panel.hold(page);
                controls.add(clock());
                controls.revalidate();
            }
            refresh();
        });
    }

    private ClockCard clock() {
        ClockCard made = clock.orElseGet(() -> new ClockCard(desk, dress));
        clock = Optional.of(made);
        return made;
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        choose.ifPresent(page -> page.dress(other));
        clock.ifPresent(card -> card.dress(other));
        session.ifPresent(page -> page.dress(other));
        told.map(Told::debrief).ifPresent(debrief -> {
            untell();
            tell(debrief);
        });
        refresh();
    }
}
