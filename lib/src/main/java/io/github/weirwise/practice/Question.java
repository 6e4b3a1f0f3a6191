package io.github.weirwise.practice;

import io.github.weirwise.report.Require;
import java.util.List;
import java.util.Objects;

/**
 * A question to the trainee at a moment; the clock stands until it is answered or passed over.
 *
 * @param name short name, unique in its scenario
 * @param when at which moment
 * @param hours for {@link When#AT_HOUR}: the hour on the scenario's clock
 * @param ask the question
 * @param choices answers to choose from; empty for an answer in words, or for the fault sheet when {@code causes}
 * @param right number of the right choice, from 1; 0 when there is none
 * @param causes whether the answer is the trainee's fault sheet
 * @param why shown after the answer; may be empty
 * @since 0.1
 */
public record Question(
        String name, When when, double hours, String ask, List<String> choices, int right, boolean causes, String why) {
    /** Moments. */
    public enum When {
        /** As the trainee comes in. */
        START,
        /** After the first reading. */
        FIRST_LOOK,
        /** After the first act. */
        FIRST_ACT,
        /** At an hour. */
        AT_HOUR,
        /** At the end. */
        END
    }

    private static final int MOST_CHOICES = 8;

    /**
     * Copies the list.
     *
     * @throws io.github.weirwise.report.OutOfRangeException if a number is out of its range
     */
    public Question {
        Require.text("name", name);
        Require.inRange("name", name.length(), 1, 60, "characters", "a short name");
        Objects.requireNonNull(when, "when");
        Require.inRange("hours", hours, -1e4, 1e4, "h", "give the hour on the scenario's clock");
        ScenarioText.required("ask", ask);
        Require.inRange("choices", choices.size(), 0, MOST_CHOICES, "choices", "offer fewer");
        choices = ScenarioText.all("choices", choices);
        Require.inRange("right", right, 0, choices.size(), "", "number of the right choice from 1, 0 for none");
        ScenarioText.optional("why", why);
    }
}
