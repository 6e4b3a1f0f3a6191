package io.github.weirwise.practice;

import io.github.weirwise.report.Phrase;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A session in a few figures, to lay beside others. Cheap: no branch is played.
 *
 * @param options whose session
 * @param scenario what was practised
 * @param lane course and outcome
 * @param points habits of sound work
 * @param predictions score of the predictions
 * @param lastViewOnTruth share of the last fault sheet given to what was really the matter
 * @param questionsRight questions answered rightly
 * @param questionsAsked questions with a right choice
 * @param hintsAsked hints asked for
 * @param adviceOpened how often the adviser's view was opened
 */
public record SessionSummary(
        SessionOptions options,
        Scenario scenario,
        Lane lane,
        List<ProcessPoint> points,
        PredictionScore predictions,
        OptionalDouble lastViewOnTruth,
        int questionsRight,
        int questionsAsked,
        int hintsAsked,
        int adviceOpened) {
    /** Copies the list; rejects nulls. */
    public SessionSummary {
        Objects.requireNonNull(options, "options");
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(lane, "lane");
        points = List.copyOf(points);
        Objects.requireNonNull(predictions, "predictions");
        Objects.requireNonNull(lastViewOnTruth, "lastViewOnTruth");
    }

    /** The summary of a session as it stands. */
    public static SessionSummary of(PracticeSession session) {
        List<ViewScore> views = ViewScore.of(session);
        List<QuestionResult> questions = QuestionResult.of(session);
        return new SessionSummary(
                session.options(),
                session.scenario(),
                Lane.of(Phrase.of("practice.hands.TRAINEE"), session),
                new ProcessReview(session).points(),
                PredictionScore.of(PredictionResult.of(session)),
                views.isEmpty()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(views.get(views.size() - 1).onTruth()),
                (int) questions.stream()
                        .filter(each -> each.right().orElse(false))
                        .count(),
                (int) questions.stream()
                        .filter(each -> each.question().right() > 0)
                        .count(),
                count(session, SessionStep.AskHint.class),
                count(session, SessionStep.OpenAdvice.class));
    }

    private static int count(PracticeSession session, Class<? extends SessionStep> kind) {
        return (int) session.log().stream()
                .filter(line -> kind.isInstance(line.step()))
                .count();
    }
}
