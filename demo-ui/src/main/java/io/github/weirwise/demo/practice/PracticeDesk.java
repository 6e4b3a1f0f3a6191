package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.panel.Slices;
import io.github.weirwise.practice.Debrief;
import io.github.weirwise.practice.Guidance;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.Question;
import io.github.weirwise.practice.RefusedStepException;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.SessionOptions;
import io.github.weirwise.practice.SessionRecord;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.report.Phrase;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * A practice session and the branches that were left on the way. Event thread only; steps are worked out in the background,
 * one at a time, and what cannot be done is told.
 */
public final class PracticeDesk {
    private final Background background;
    private final List<Runnable> listeners = new ArrayList<>();
    private final List<Moment> branches = new ArrayList<>();
    private final List<Runnable> replaying = new ArrayList<>();
    private final List<SessionRecord> kept = new ArrayList<>();
    /** What the debrief of the last scenario that each trainee played to its end proposes. */
    private final Map<String, Guidance> help = new HashMap<>();

    private Consumer<Phrase> refused = phrase -> {};
    private Optional<Moment> moment = Optional.empty();
    private boolean busy;
    /** What was asked for while the step before it was being worked out. */
    private Optional<SessionStep> next = Optional.empty();

    private Optional<SessionStep> working = Optional.empty();

    /** A desk with no session yet. */
    public PracticeDesk(Background background) {
        this.background = background;
    }

    private record Result(Optional<Moment> moment, Optional<Phrase> refusal) {}

    /** Work for the event thread, cut up at the pace of this desk. */
    Slices slices() {
        return new Slices(background);
    }

    /** Calls this after every change. */
    public void onChange(Runnable listener) {
        listeners.add(listener);
    }

    /** Tells this why a step was not taken. */
    public void onRefusal(Consumer<Phrase> listener) {
        refused = listener;
    }

    /** The session as it is now, when there is one. */
    public Optional<Moment> moment() {
        return moment;
    }

    /** Sessions that were left by going back, oldest first. */
    public List<Moment> branches() {
        return List.copyOf(branches);
    }

    /** Begins with a scenario; with as much help as has faded by now, unless the options say how much. */
    public void begin(Scenario scenario, SessionOptions options) {
        SessionOptions helped =
                options.guidance().isPresent() ? options : options.withGuidance(help(options.trainee(), scenario));
        work(() -> PracticeSession.begin(scenario, helped), this::leave);
    }

    /** How much help a trainee gets in a scenario: as it has it, or less once scenarios were solved. */
    Guidance help(String trainee, Scenario scenario) {
        Guidance own = scenario.coaching().guidance();
        Guidance faded = help.getOrDefault(trainee, own);
        return faded.compareTo(own) > 0 ? faded : own;
    }

    /** Takes up a session that was replayed already. */
    public void again(Moment other) {
        branches.clear();
        moment = Optional.empty();
        changed();
        moment = Optional.of(other);
        changed();
    }

    /**
     * Takes a step; why not, when it cannot be taken, is told to whoever listens. One that is asked for while another is worked
     * out follows it, so that no key is lost; the same one pressed twice is taken once.
     */
    public void perform(SessionStep step) {
        if (busy) {
            next = Optional.of(step).filter(asked -> !working.equals(Optional.of(asked)));
            return;
        }
        moment.ifPresent(now -> {
            working = Optional.of(step);
            work(() -> performed(now.session(), step), () -> {});
        });
    }

    /** A view that is given answers a question about causes as well. */
    private static PracticeSession performed(PracticeSession session, SessionStep step) {
        PracticeSession done = session.perform(step);
        Optional<Question> asked = done.questions().stream().findFirst().filter(Question::causes);
        return step instanceof SessionStep.OwnView view && asked.isPresent()
                ? done.perform(new SessionStep.Answer(asked.get().name(), 0, view.wouldDo()))
                : done;
    }

    /** Goes back to the moment after the first steps; the session so far stays as a branch. */
    public void rewindTo(int steps) {
        moment.ifPresent(now -> work(() -> now.session().rewoundTo(steps), () -> branches.add(now)));
    }

    /** Changes over to a branch; the session so far takes its place. */
    public void changeOver(int branch) {
        moment.ifPresent(now -> {
            moment = Optional.of(branches.set(branch, now));
            changed();
        });
    }

    /** Ends the session; nothing of it is left here. */
    public void leave() {
        keep();
        moment = Optional.empty();
        branches.clear();
        changed();
    }

    /** Works out the debrief of the session as it stands, and hands it over unless the session has gone on meanwhile. */
    public void debrief(Consumer<Debrief> then) {
        moment.ifPresent(now -> background.run(() -> Debrief.of(now.session()), made -> {
            if (moment.filter(still -> still == now).isPresent()) {
                then.accept(made);
            }
        }));
    }

    /** The sessions that were left or played to the end here, oldest first, the one at work last. */
    List<SessionRecord> kept() {
        List<SessionRecord> all = new ArrayList<>(kept);
        moment.filter(now -> !now.session().steps().isEmpty())
                .ifPresent(now -> all.add(now.session().toRecord()));
        return all;
    }

    private void keep() {
        moment.map(Moment::session).filter(now -> !now.steps().isEmpty()).ifPresent(now -> {
            kept.add(now.toRecord());
            if (now.over()) {
                background.run(() -> Debrief.of(now).nextGuidance(), next -> {
                    help.put(now.options().trainee(), next);
                    changed();
                });
            }
        });
    }

    /** Calls this whenever a replay shows another hour. */
    public void onReplay(Runnable listener) {
        replaying.add(listener);
    }

    void replayed() {
        replaying.forEach(Runnable::run);
    }

    private void work(Supplier<PracticeSession> work, Runnable before) {
        if (busy) {
            return;
        }
        busy = true;
        background.run(() -> attempt(work), result -> {
            busy = false;
            working = Optional.empty();
            result.refusal().ifPresent(refused);
            result.moment().ifPresent(made -> {
                before.run();
                moment = Optional.of(made);
                changed();
            });
            Optional<SessionStep> asked = next;
            next = Optional.empty();
            asked.ifPresent(this::perform);
        });
    }

    private static Result attempt(Supplier<PracticeSession> work) {
        try {
            return new Result(Optional.of(Moment.of(work.get())), Optional.empty());
        } catch (RefusedStepException e) {
            return new Result(Optional.empty(), Optional.of(e.reason()));
        }
    }

    private void changed() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
