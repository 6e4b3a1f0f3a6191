package io.github.weirwise.practice;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import io.github.weirwise.tank.TankEvent;
import java.util.List;
import java.util.Objects;

/**
 * One thing that trainee or trainer did in a session. The steps of a session are its record: replayed, they give it again.
 */
public sealed interface SessionStep {
    /**
     * The trainee looks at something; the clock runs on by its minutes.
     *
     * @param look what
     */
    record LookAt(Look look) implements SessionStep {
        /** Rejects null. */
        public LookAt {
            Objects.requireNonNull(look, "look");
        }
    }

    /**
     * The trainee acts, having said what will follow.
     *
     * @param act what
     * @param prediction what they expect of it
     * @param reason why they do not wait, when the last change may still be at work; otherwise may be empty
     */
    record Do(Act act, Prediction prediction, String reason) implements SessionStep {
        /** Rejects nulls and long texts. */
        public Do {
            Objects.requireNonNull(act, "act");
            Objects.requireNonNull(prediction, "prediction");
            ScenarioText.optional("reason", reason);
        }
    }

    /**
     * The trainee waits; a message or a question cuts the waiting short.
     *
     * @param minutes how long, above 0 to 90000 min
     */
    record Wait(double minutes) implements SessionStep {
        private static final Limit MINUTES = Limit.of("minutes", 0.5, 90000, Unit.MINUTE, "practice.try.aDayIs1440");

        /** Checks the range. */
        public Wait {
            MINUTES.check(minutes);
        }
    }

    /** The trainee runs on to the next thing that can be known: a message, a question, a settled foam, the next morning. */
    record RunOn() implements SessionStep {}

    /**
     * The trainee says what they think and what they would do; opens the adviser's view where guidance allows it.
     *
     * @param faults how likely they hold each cause
     * @param wouldDo what they would do next, in words; may be empty
     */
    record OwnView(FaultSheet faults, String wouldDo) implements SessionStep {
        /** Rejects nulls and long texts. */
        public OwnView {
            Objects.requireNonNull(faults, "faults");
            ScenarioText.optional("wouldDo", wouldDo);
        }
    }

    /**
     * The trainee answers a question, or passes it over with neither choice nor words.
     *
     * @param question its name
     * @param choice number of the choice from 1, 0 for none
     * @param words the answer in words; may be empty
     */
    record Answer(String question, int choice, String words) implements SessionStep {
        private static final Limit CHOICE = Limit.of("choice", 0, 40, Unit.PLAIN, "practice.try.numberOfTheChoice");

        /** Rejects nulls and long texts. */
        public Answer {
            ScenarioText.required("question", question);
            CHOICE.check(choice);
            ScenarioText.optional("words", words);
        }
    }

    /** The trainee opens the adviser's view. */
    record OpenAdvice() implements SessionStep {}

    /** The trainee asks for the next hint. */
    record AskHint() implements SessionStep {}

    /**
     * The trainer lets something happen.
     *
     * @param event what, at the present hour or later
     * @param says what the trainee is told of it; may be empty or wrong
     */
    record Inject(TankEvent event, String says) implements SessionStep {
        /** Rejects nulls and long texts. */
        public Inject {
            Objects.requireNonNull(event, "event");
            ScenarioText.optional("says", says);
        }
    }

    /**
     * The trainer says something, true or not.
     *
     * @param says the words
     */
    record Say(String says) implements SessionStep {
        /** Rejects blank and long texts. */
        public Say {
            ScenarioText.required("says", says);
        }
    }

    /**
     * The trainer asks, such as "What do you expect?"; the clock stands until it is answered in words or passed over.
     *
     * @param ask what is asked
     */
    record Ask(String ask) implements SessionStep {
        /** Rejects an empty text. */
        public Ask {
            ScenarioText.required("ask", ask);
        }

        Question question(int number, double hours) {
            return new Question("trainer-" + number, Question.When.AT_HOUR, hours, ask, List.of(), 0, false, "");
        }
    }

    /**
     * The trainer stops the clock or lets it run.
     *
     * @param on whether it stands from now on
     */
    record Hold(boolean on) implements SessionStep {}

    /** The trainer shows what is hidden. */
    record Reveal() implements SessionStep {}
}
