package io.github.weirwise.practice;

import io.github.weirwise.report.Phrase;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * What a session shows afterwards: what was hidden, the course beside others', each decision, habits, predictions. There is
 * no mark; there are points with reasons. The trainee speaks first: see {@link #OWN_WORDS}.
 *
 * @param session the session
 * @param hidden what was really the matter
 * @param lanes the trainee's course, then the adviser's and nobody's, with the same random numbers
 * @param decisions moments of decision, in order, at most eight
 * @param points habits of sound work
 * @param predictions predictions beside what came
 * @param predictionScore their score
 * @param views fault sheets beside the truth
 * @param questions questions with their answers
 */
public record Debrief(
        PracticeSession session,
        List<HiddenFault> hidden,
        List<Lane> lanes,
        List<Decision> decisions,
        List<ProcessPoint> points,
        List<PredictionResult> predictions,
        PredictionScore predictionScore,
        List<ViewScore> views,
        List<QuestionResult> questions) {
    /** Prices come out of replays with chance in them; a smaller difference says nothing. */
    private static final double A_LITTLE_DAYS = 0.05;

    /** What the trainee answers before anything here is shown: what was meant, what happened, what next time. */
    public static final List<Phrase> OWN_WORDS = List.of(
            Phrase.of("practice.ownWords.meant"),
            Phrase.of("practice.ownWords.happened"),
            Phrase.of("practice.ownWords.nextTime"));

    /** Copies the lists; rejects nulls. */
    public Debrief {
        Objects.requireNonNull(session, "session");
        hidden = List.copyOf(hidden);
        lanes = List.copyOf(lanes);
        decisions = List.copyOf(decisions);
        points = List.copyOf(points);
        predictions = List.copyOf(predictions);
        Objects.requireNonNull(predictionScore, "predictionScore");
        views = List.copyOf(views);
        questions = List.copyOf(questions);
    }

    /**
     * The debrief of a session as it stands, best when it is over. Asks the adviser for each branch at each visit, so that
     * it takes a second or more; not for the event thread. Long courses are bounded as {@link Hands#play} says.
     */
    public static Debrief of(PracticeSession session) {
        return of(session, () -> false);
    }

    /**
     * The same until somebody wants it to stop.
     *
     * @param stop asked again and again on the way, some times a second
     * @throws java.util.concurrent.CancellationException once it says so
     */
    public static Debrief of(PracticeSession session, BooleanSupplier stop) {
        PracticeSession start = Comparison.withInjections(session.rewoundTo(0), session);
        List<Lane> lanes = List.of(
                Lane.of(Phrase.of("practice.hands.TRAINEE"), session),
                Lane.of(Hands.ADVISER.words(), Hands.ADVISER.play(start, stop)),
                Lane.of(Hands.NOTHING.words(), Hands.NOTHING.play(start, stop)));
        List<PredictionResult> predictions = PredictionResult.of(session);
        List<Decision> decisions = new DecisionReview(session, stop).decisions();
        Prices prices = Prices.of(decisions, lanes.get(0).outcome());
        return new Debrief(
                session,
                session.scenario().faultsAt(session.hours()),
                lanes,
                decisions,
                new ProcessReview(session, prices).points(),
                predictions,
                PredictionScore.of(predictions),
                ViewScore.of(session),
                QuestionResult.of(session));
    }

    /** What the trainee's own course came to. */
    public Outcome outcome() {
        return lanes.get(0).outcome();
    }

    /** The missed habit that cost most; of equals the one that comes first in {@link ProcessPoint.Habit}. Empty if none was missed. */
    public Optional<ProcessPoint> costliest() {
        return points.stream()
                .filter(each -> each.verdict() == ProcessPoint.Verdict.MISSED)
                .reduce((first, second) -> second.costDays() > first.costDays() + A_LITTLE_DAYS ? second : first);
    }

    /** The five sentences that matter: what came of it, what it was, what cost most, what was well done, how sure. */
    public List<Phrase> inShort() {
        return new FiveSentences(this).all();
    }

    /** The guidance to try next: weaker after a scenario that was solved, stronger after one that was not. */
    public Guidance nextGuidance() {
        return outcome().solved()
                ? session.guidance().faded()
                : session.guidance().raised();
    }
}
