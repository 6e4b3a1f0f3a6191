package io.github.weirwise.practice;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A session's state while one step is taken. Lives inside one call. */
final class SessionDraft {
    final Scenario scenario;
    final SessionOptions options;
    final List<JournalEntry> written = new ArrayList<>();
    final List<Message> said;
    final List<Question> asked;
    final Map<String, SessionStep.Answer> answers;
    Bench bench;
    Journal journal;
    Optional<SessionStep.OwnView> view;
    boolean adviceOpen;
    int hintsAsked;
    double settledAtHours;
    boolean held;
    boolean revealed;

    /** Before anything: the tank where its history begins. */
    SessionDraft(Scenario scenario, SessionOptions options) {
        this.scenario = scenario;
        this.options = options;
        bench = Bench.of(scenario, options.seed());
        journal = Journal.EMPTY;
        said = new ArrayList<>();
        asked = new ArrayList<>();
        answers = new HashMap<>();
        view = Optional.empty();
        settledAtHours = Double.NEGATIVE_INFINITY;
    }

    SessionDraft(Scenario scenario, SessionOptions options, SessionState from) {
        this.scenario = scenario;
        this.options = options;
        bench = from.bench();
        journal = from.journal();
        said = new ArrayList<>(from.said());
        asked = new ArrayList<>(from.asked());
        answers = new HashMap<>(from.answers());
        view = from.view();
        adviceOpen = from.adviceOpen();
        hintsAsked = from.hintsAsked();
        settledAtHours = from.settledAtHours();
        held = from.held();
        revealed = from.revealed();
    }

    /** Questions that stand open now, those of the trainer first. */
    List<Question> open() {
        return new OpenQuestions(scenario, asked, journal, answers.keySet(), bench.hours()).now();
    }

    SessionState state() {
        return new SessionState(
                bench, journal, said, asked, answers, view, adviceOpen, hintsAsked, settledAtHours, held, revealed);
    }

    /** Lets the clock run; what others note on the way goes into the journal. */
    void runTo(double untilHours) {
        double from = bench.hours();
        bench = bench.advanced(untilHours);
        for (ScenarioEvent each : scenario.events()) {
            double at = each.event().atHours();
            if (each.noted().isPresent() && at >= from && at < untilHours) {
                write(new Happening(SessionClock.at(at), each.noted().get()));
            }
        }
    }

    void write(JournalEntry entry) {
        written.add(entry);
        journal = journal.with(entry);
    }

    /** Reads at the present moment; log and trainee share one eye, so that nobody is named. */
    void read(Look look) {
        write(new Eye(bench, options.seed(), scenario.offers().readingError()).entry(look));
        if (look.emptiesTheCup()) {
            bench = bench.emptied().atOnce();
        }
    }
}
