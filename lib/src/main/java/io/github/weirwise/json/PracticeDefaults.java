package io.github.weirwise.json;

import static java.util.Map.entry;

import io.github.weirwise.practice.Coaching;
import io.github.weirwise.practice.Goals;
import io.github.weirwise.practice.Limits;
import io.github.weirwise.practice.Offers;
import io.github.weirwise.practice.Question;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.ScenarioStart;
import io.github.weirwise.practice.ScenarioTank;
import io.github.weirwise.practice.SessionOptions;
import io.github.weirwise.practice.SessionStep;
import java.util.List;
import java.util.Map;

/** What the author of a scenario or of a session's record may leave out, and what is then taken. */
final class PracticeDefaults {
    private static final Map<Class<?>, Map<String, Object>> WHEN_MISSING = Map.ofEntries(
            entry(
                    Scenario.class,
                    Map.of(
                            "events", List.of(),
                            "messages", List.of(),
                            "faults", List.of(),
                            "offers", Offers.EVERYTHING,
                            "limits", new Limits(6, 1, 12))),
            entry(
                    ScenarioTank.class,
                    Map.of(
                            "weekendFeed", 1.0,
                            "foamLifeFactor", 1.0,
                            "mediaUnderWater", 0.3,
                            "containerLitres", 0.0,
                            "parameters", Map.of())),
            entry(ScenarioStart.class, Map.of("fresh", false, "daysBefore", 7.0, "readingHours", List.of())),
            entry(Offers.class, Map.of("looks", Map.of(), "acts", Map.of(), "services", Map.of(), "readingError", 1.0)),
            entry(Coaching.class, Map.of("hints", List.of(), "questions", List.of(), "suspects", List.of())),
            entry(Question.class, Map.of("hours", 0.0, "choices", List.of(), "right", 0, "causes", false, "why", "")),
            entry(
                    Goals.class,
                    Map.of(
                            "onTarget",
                            true,
                            "lookAfter",
                            List.of(),
                            "leaveWeir",
                            false,
                            "mostChanges",
                            3,
                            "safeWithinHours",
                            0.0)),
            entry(SessionOptions.class, Map.of("trainee", "", "seed", 1)),
            entry(SessionStep.Do.class, Map.of("reason", "")),
            entry(SessionStep.OwnView.class, Map.of("wouldDo", "")),
            entry(SessionStep.Answer.class, Map.of("choice", 0, "words", "")),
            entry(SessionStep.Inject.class, Map.of("says", "")));

    private PracticeDefaults() {}

    static Map<String, Object> of(Class<?> type) {
        return WHEN_MISSING.getOrDefault(type, Map.of());
    }
}
