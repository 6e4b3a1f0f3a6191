package io.github.weirwise.practice;

import io.github.weirwise.reading.Journal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything of a session at one moment.
 *
 * @param bench the installation
 * @param journal what the trainee knows
 * @param said what was said since the start
 * @param asked questions of the trainer
 * @param answers answers by the question's name
 * @param view the trainee's own view since the last act
 * @param adviceOpen whether the adviser's view is open
 * @param hintsAsked how many hints were asked for
 * @param settledAtHours when the last change can be judged; negative infinity without one
 * @param held whether the clock stands
 * @param revealed whether the trainer has shown what is hidden
 */
record SessionState(
        Bench bench,
        Journal journal,
        List<Message> said,
        List<Question> asked,
        Map<String, SessionStep.Answer> answers,
        Optional<SessionStep.OwnView> view,
        boolean adviceOpen,
        int hintsAsked,
        double settledAtHours,
        boolean held,
        boolean revealed) {
    SessionState {
        said = List.copyOf(said);
        asked = List.copyOf(asked);
        answers = Map.copyOf(answers);
    }
}
