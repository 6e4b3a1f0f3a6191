package io.github.weirwise.practice;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Require;
import io.github.weirwise.report.Unit;
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
 */
public record Question(
        String name, When when, double hours, String ask, List<String> choices, int right, boolean causes, String why) {
    private static final Limit NAME_COUNT = Limit.of("name", 1, 60, Unit.COUNT, "practice.try.aShortName");
    private static final Limit HOURS = Limit.of("hours", -1e4, 1e4, Unit.HOUR, "practice.try.giveTheHourOn");
    private static final Limit CHOICES_COUNT = Limit.of("choices", 0, 8, Unit.COUNT, "practice.try.offerFewer");
    private static final Limit RIGHT = Limit.of("right", 0, 8, Unit.PLAIN, "practice.try.numberOfTheRight");

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

    /**
     * Copies the list.
     *
     * @throws io.github.weirwise.report.OutOfRangeException if a number is out of its range
     */
    public Question {
        Require.text("name", name);
        NAME_COUNT.check(name.length());
        Objects.requireNonNull(when, "when");
        HOURS.check(hours);
        ScenarioText.required("ask", ask);
        CHOICES_COUNT.check(choices.size());
        choices = ScenarioText.all("choices", choices);
        RIGHT.checkTo(right, choices.size());
        ScenarioText.optional("why", why);
    }
}
