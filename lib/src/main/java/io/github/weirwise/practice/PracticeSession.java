package io.github.weirwise.practice;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Adviser;
import io.github.weirwise.advice.AdviserOptions;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankLimitException;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.tank.WasteRoute;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A trainee before a virtual tank, at one moment. Immutable: every step gives a new session and leaves the old one as it is,
 * so that going back and branching is keeping a session. Deterministic by the options' seed; thread-safe.
 *
 * <p>A step takes well under 5 ms; {@link #advice()} takes about 10 ms and is computed on each call.
 */
public final class PracticeSession {
    /** Every step keeps its moment, so that a session can be rewound; this bounds the memory. */
    public static final int MOST_STEPS = 2_000;

    private final Scenario scenario;
    private final SessionOptions options;
    private final SessionState state;
    private final PracticeSession before;
    private final LogLine line;

    private PracticeSession(
            Scenario scenario, SessionOptions options, SessionState state, PracticeSession before, LogLine line) {
        this.scenario = scenario;
        this.options = options;
        this.state = state;
        this.before = before;
        this.line = line;
    }

    /**
     * A session at the moment when the trainee comes in; the history has been run and read.
     *
     * @throws TankLimitException if the history cannot be followed, with the hour of the scenario's clock
     */
    public static PracticeSession begin(Scenario scenario, SessionOptions options) {
        SessionDraft draft = new SessionDraft(scenario, options);
        for (double hour : scenario.start().readingHours()) {
            draft.runTo(hour);
            draft.read(Look.ROUND);
        }
        draft.runTo(scenario.start().arrivesAtHour());
        return new PracticeSession(scenario, options, draft.state(), null, null);
    }

    /**
     * The session of a record again.
     *
     * @throws RefusedStepException if a step of it cannot be taken
     */
    public static PracticeSession replay(SessionRecord record) {
        PracticeSession session = begin(record.scenario(), record.options());
        for (SessionStep step : record.steps()) {
            session = session.perform(step);
        }
        return session;
    }

    /**
     * The session after one step.
     *
     * @throws RefusedStepException if it cannot be taken now, with the reason; this session is as it was
     */
    public PracticeSession perform(SessionStep step) {
        if (line != null && line.number() >= MOST_STEPS) {
            throw new RefusedStepException(Phrase.of("practice.refused.steps", MOST_STEPS));
        }
        SessionDraft draft = new SessionDraft(scenario, options, state);
        boolean inside = hours() < state.settledAtHours();
        try {
            new StepTaker(draft).take(step);
        } catch (TankLimitException e) {
            throw new RefusedStepException(Phrase.of("practice.refused.tank", SessionClock.words(e.atHours())), e);
        }
        LogLine next = new LogLine(steps().size() + 1, hours(), draft.bench.hours(), step, draft.written, inside);
        return new PracticeSession(scenario, options, draft.state(), this, next);
    }

    /** Looks at something. */
    public PracticeSession look(Look look) {
        return perform(new SessionStep.LookAt(look));
    }

    /** Acts, having said what will follow; fine while nothing else is at work. */
    public PracticeSession act(Act act, Prediction prediction) {
        return act(act, prediction, "");
    }

    /** Acts, with the reason why not to wait. */
    public PracticeSession act(Act act, Prediction prediction, String reason) {
        return perform(new SessionStep.Do(act, prediction, reason));
    }

    /** Waits; a message or a question cuts it short. */
    public PracticeSession waitFor(double minutes) {
        return perform(new SessionStep.Wait(minutes));
    }

    /** Runs on to a message, a question, a settled foam or the next morning. */
    public PracticeSession runOn() {
        return perform(new SessionStep.RunOn());
    }

    /** Says what the trainee thinks. */
    public PracticeSession ownView(FaultSheet faults, String wouldDo) {
        return perform(new SessionStep.OwnView(faults, wouldDo));
    }

    /** The scenario. */
    public Scenario scenario() {
        return scenario;
    }

    /** Who and how. */
    public SessionOptions options() {
        return options;
    }

    /** The guidance that holds. */
    public Guidance guidance() {
        return options.guidance().orElse(scenario.coaching().guidance());
    }

    /** Hours on the scenario's clock. */
    public double hours() {
        return state.bench().hours();
    }

    /** The present on the journal's clock. */
    public Instant now() {
        return SessionClock.at(hours());
    }

    /** Whether the time is up; only questions, views and the debrief are left. */
    public boolean over() {
        return hours() >= scenario.endsAtHour();
    }

    /** Whether the trainer has stopped the clock. */
    public boolean held() {
        return state.held();
    }

    /** What the trainee knows: readings, acts, what others noted. */
    public Journal journal() {
        return state.journal();
    }

    /** The settings as the log says they were before the journal's first entry; what the adviser starts from. */
    public Settings knownStart() {
        return scenario.start().settings().withCondition(Condition.REFERENCE);
    }

    /** Crest as its mark says, mm over the chamber floor. */
    public double markMm() {
        return state.bench().tank().of(Stock.WEIR_CREST_MM);
    }

    /** Whether the injector pump runs. */
    public boolean airOn() {
        return state.bench().tank().is(Stock.INJECTOR_ON);
    }

    /** The newest reading that holds what a look gives, if the trainee or a colleague took one. */
    public Optional<Reading> lastReading() {
        return journal().last(Reading.class);
    }

    /** What the trainee was told so far, oldest first; the briefing first. */
    public List<Message> messages() {
        List<Message> all = new ArrayList<>();
        double arrival = scenario.start().arrivesAtHour();
        scenario.told().forEach(words -> all.add(new Message(arrival, words)));
        List<Message> later = new ArrayList<>(scenario.messages());
        later.removeIf(each -> each.atHours() > hours());
        later.addAll(state.said());
        later.sort(java.util.Comparator.comparingDouble(Message::atHours));
        all.addAll(later);
        return List.copyOf(all);
    }

    /** Questions that stand open; while there is one, the clock stands. */
    public List<Question> questions() {
        return new OpenQuestions(
                        scenario, state.asked(), journal(), state.answers().keySet(), hours())
                .now();
    }

    /** Questions that the trainer asked, oldest first. */
    public List<Question> asked() {
        return state.asked();
    }

    /** Answers so far by the question's name. */
    public Map<String, SessionStep.Answer> answers() {
        return state.answers();
    }

    /** When the last change can be judged; empty when it can be now. A change before that wants a reason. */
    public Optional<Instant> settlesAt() {
        return state.settledAtHours() > hours()
                ? Optional.of(SessionClock.at(state.settledAtHours()))
                : Optional.empty();
    }

    /** The trainee's own view since the last act, if given. */
    public Optional<SessionStep.OwnView> ownView() {
        return state.view();
    }

    /** Hints that are open: with full guidance one at the start and one more after each act; otherwise those asked for. */
    public List<String> hints() {
        List<String> hints = scenario.coaching().hints();
        long acts = log().stream()
                .filter(each -> each.step() instanceof SessionStep.Do)
                .count();
        int open = state.hintsAsked() + (guidance() == Guidance.FULL ? 1 + (int) acts : 0);
        return hints.subList(0, Math.min(open, hints.size()));
    }

    /** Whether the adviser's view is open. */
    public boolean adviceOpen() {
        return state.adviceOpen();
    }

    /** The adviser's view of the trainee's journal; empty while it is shut. Computed anew on each call, about 10 ms. */
    public Optional<Advice> advice() {
        return adviceOpen() ? Optional.of(soundAdvice()) : Optional.empty();
    }

    /** What the adviser makes of the journal, open or not; for the debrief. */
    Advice soundAdvice() {
        Set<LookKind> looks = EnumSet.noneOf(LookKind.class);
        for (Look look : Look.values()) {
            if (scenario.offers().has(look)) {
                look.kind().ifPresent(looks::add);
            }
        }
        AdviserOptions with = AdviserOptions.DEFAULT.withLooks(looks);
        return new Adviser(with).advise(scenario.unit(), knownStart(), journal(), now());
    }

    /** What is hidden, once the trainer has revealed it or the time is up; empty before. */
    public List<HiddenFault> revealed() {
        return state.revealed() || over() ? scenario.faultsAt(hours()) : List.of();
    }

    /** The log of this session, oldest line first. */
    public List<LogLine> log() {
        List<LogLine> lines = new ArrayList<>();
        for (PracticeSession each = this; each.line != null; each = each.before) {
            lines.add(each.line);
        }
        Collections.reverse(lines);
        return List.copyOf(lines);
    }

    /** The steps so far. */
    public List<SessionStep> steps() {
        return log().stream().map(LogLine::step).toList();
    }

    /** The session as it is kept. */
    public SessionRecord toRecord() {
        return new SessionRecord(scenario, options, steps());
    }

    /**
     * The session as it was after its first steps, to go on from there in another way.
     *
     * @param steps how many steps to keep
     * @throws IllegalArgumentException if there were not so many
     */
    public PracticeSession rewoundTo(int steps) {
        PracticeSession found = this;
        while (found.line != null && found.line.number() > steps) {
            found = found.before;
        }
        int reached = found.line == null ? 0 : found.line.number();
        if (steps != reached) {
            throw new IllegalArgumentException("steps is " + steps + ", the session has "
                    + (line == null ? 0 : line.number()) + "; give 0 up to that");
        }
        return found;
    }

    /** The tank as it was at an hour of this session; for the replay. */
    public PracticeSession tankAt(double atHours) {
        PracticeSession found = this;
        while (found.line != null && found.hours() > atHours) {
            found = found.before;
        }
        SessionDraft draft = new SessionDraft(scenario, options, found.state);
        draft.runTo(Math.min(atHours, hours()));
        return new PracticeSession(scenario, options, draft.state(), found.before, found.line);
    }

    /** True state of the tank; for the trainer's desk, the picture of the unit and the debrief. */
    public TankState truth() {
        return state.bench().tank();
    }

    /** Where the skimmate goes. */
    public WasteRoute waste() {
        return state.bench().plan().waste();
    }

    /** What lies on the floor since cup or container was last emptied: who empties it wipes up. */
    public double spilledLitres() {
        return state.bench().spilledLitres();
    }

    /** How the unit really runs; the picture of the column is drawn from it. */
    public OperatingPoint truePoint() {
        return state.bench().point();
    }

    /** True course so far, about a point an hour, from the beginning of the history; for trainer and debrief. */
    public List<TrackPoint> track() {
        return state.bench().track();
    }

    Bench bench() {
        return state.bench();
    }

    /** Why a step cannot be taken now, or empty when it can; takes the step on trial and costs as much. */
    public Optional<Phrase> refusal(SessionStep step) {
        try {
            perform(step);
            return Optional.empty();
        } catch (RefusedStepException e) {
            return Optional.of(e.reason());
        }
    }
}
