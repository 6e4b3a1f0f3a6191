package io.github.weirwise.practice;

import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.WrongValueException;
import java.util.List;
import java.util.Objects;

/**
 * How a scenario helps and what it asks.
 *
 * @param guidance how much help there is unless the trainer says otherwise
 * @param hints hints in order, each a little more
 * @param questions questions to ask at moments
 * @param suspects causes on the trainee's fault sheet; empty for all
 */
public record Coaching(Guidance guidance, List<String> hints, List<Question> questions, List<Cause> suspects) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if two questions have one name
     */
    public Coaching {
        Objects.requireNonNull(guidance, "guidance");
        hints = ScenarioText.all("hints", hints);
        ScenarioText.few("questions", questions.size());
        questions = List.copyOf(questions);
        suspects = List.copyOf(suspects);
        long names = questions.stream().map(Question::name).distinct().count();
        if (names < questions.size()) {
            throw new WrongValueException(
                    "questions", Phrase.of("practice.wrong.sameName"), Phrase.of("practice.try.giveEachItsOwn"));
        }
    }
}
