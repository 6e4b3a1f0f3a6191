package io.github.weirwise.practice;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A question with the trainee's answer.
 *
 * @param question the question
 * @param answer the answer, if one was given
 */
public record QuestionResult(Question question, Optional<SessionStep.Answer> answer) {
    /** Rejects nulls. */
    public QuestionResult {
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(answer, "answer");
    }

    /** Whether the right choice was made; empty when there is none, or none was made. */
    public Optional<Boolean> right() {
        return answer.filter(given -> question.right() > 0 && given.choice() > 0)
                .map(given -> given.choice() == question.right());
    }

    static List<QuestionResult> of(PracticeSession session) {
        return Stream.concat(session.asked().stream(), session.scenario().coaching().questions().stream())
                .map(each -> new QuestionResult(
                        each, Optional.ofNullable(session.answers().get(each.name()))))
                .toList();
    }
}
