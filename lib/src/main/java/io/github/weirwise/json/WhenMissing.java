package io.github.weirwise.json;

import static java.util.Map.entry;

import io.github.weirwise.advice.Efforts;
import io.github.weirwise.advice.Step;
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
import io.github.weirwise.reading.AdviceGiven;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Reason;
import io.github.weirwise.table.DateOrder;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.FoamTraits;
import io.github.weirwise.unit.Layout;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.lang.reflect.RecordComponent;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What may be left out of a document, and what is then taken. */
final class WhenMissing {
    private static final Map<Class<?>, Map<String, Object>> KNOWN = Map.ofEntries(
            entry(Settings.class, Map.of("condition", Condition.REFERENCE)),
            entry(SkimmerUnit.class, Map.of("traits", FoamTraits.USUAL, "layout", Layout.IN_SUMP)),
            entry(Reading.class, Map.of("by", "")),
            entry(Observation.CupVolume.class, Map.of("full", false)),
            entry(WeirMove.class, Map.of("probe", false)),
            entry(Step.MoveWeir.class, Map.of("probe", false)),
            entry(Step.ServicePart.class, Map.of("also", List.of())),
            entry(AdviceGiven.class, Map.of("followed", AdviceGiven.Followed.OPEN)),
            entry(Reason.class, Map.of("because", List.of())),
            all(Efforts.USUAL),
            all(ServiceOptions.USUAL),
            entry(Asked.Upkeep.class, Map.of("vesselMl", 0.0)),
            entry(
                    Asked.Calendar.class,
                    Map.of("vesselMl", 0.0, "name", "", "zone", ZoneId.of("UTC"), "days", 90, "tasks", List.of())),
            entry(
                    Asked.Table.class,
                    Map.of("zone", ZoneId.of("UTC"), "dateOrder", DateOrder.UNSTATED, "soundRowsOnly", false)),
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
            all(Offers.EVERYTHING),
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
            all(SessionOptions.DEFAULT),
            entry(SessionStep.Do.class, Map.of("reason", "")),
            entry(SessionStep.OwnView.class, Map.of("wouldDo", "")),
            entry(SessionStep.Answer.class, Map.of("choice", 0, "words", "")),
            entry(SessionStep.Inject.class, Map.of("says", "")));

    private WhenMissing() {}

    /** Every component may be left out, and is then as in this one. */
    private static Map.Entry<Class<?>, Map<String, Object>> all(Record usual) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (RecordComponent each : usual.getClass().getRecordComponents()) {
            values.put(each.getName(), RecordShape.component(each, usual));
        }
        return entry(usual.getClass(), Map.copyOf(values));
    }

    /** What a component is when it is left out; null when it must be given. */
    static Object of(Class<?> type, RecordComponent component) {
        if (component.getType() == OptionalDouble.class) {
            return OptionalDouble.empty();
        }
        return component.getType() == Optional.class
                ? Optional.empty()
                : KNOWN.getOrDefault(type, Map.of()).get(component.getName());
    }
}
