package io.github.weirwise.practice;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.Part;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The built-in scenarios teach what they say: who solves them, and who does not. */
class ScenariosTest {
    private static final List<String> LEFT_ALONE = List.of("after-the-feast", "leave-it", "weekend-rhythm");

    static List<String> names() {
        return ScenarioJson.BUILT_IN;
    }

    private static Outcome outcome(String name, Hands hands) {
        return Outcome.of(
                WholeSession.by(hands, PracticeSession.begin(ScenarioJson.builtIn(name), SessionOptions.DEFAULT)));
    }

    @ParameterizedTest
    @MethodSource("names")
    void isWrittenAndReadWithoutLossAndTellsNobodyItsFault(String name) {
        Scenario scenario = ScenarioJson.builtIn(name);
        assertThat(scenario.name()).isEqualTo(name);
        assertThat(ScenarioJson.readScenario(ScenarioJson.writeScenario(scenario)))
                .isEqualTo(scenario);
        assertThat(scenario.faults()).isNotEmpty();
        assertThat(scenario.coaching().guidance()).isNotNull();
        PracticeSession start = PracticeSession.begin(scenario, SessionOptions.DEFAULT);
        assertThat(start.revealed()).isEmpty();
        assertThat(start.perform(new SessionStep.Reveal()).revealed()).isEqualTo(scenario.faultsAt(start.hours()));
        assertThat(start.messages()).hasSizeGreaterThanOrEqualTo(scenario.told().size());
        assertThat(start.journal().all(Reading.class))
                .hasSize(scenario.start().readingHours().size());
    }

    @ParameterizedTest
    @MethodSource("names")
    void isSolvedByNobodyDoingNothingUnlessThatIsThePoint(String name) {
        boolean leave = LEFT_ALONE.contains(name);
        assertThat(outcome(name, Hands.NOTHING).solved()).isEqualTo(leave);
    }

    /** A calendar and a ruler solve some: those where upkeep or the weir is the point, not those where something must be found. */
    @Test
    void theCarefulKeeperSolvesSome() {
        List<String> solved = names().stream()
                .filter(name -> outcome(name, WholeSession.KEEPER).solved())
                .toList();
        assertThat(solved)
                .hasSizeBetween(names().size() / 3, 2 * names().size() / 3)
                .contains("first-steps", "nobody-washed", "leave-it")
                .doesNotContain("weak-return", "slipped-weir", "fresh-top-off", "dark-morning", "creeping-scale");
    }

    /** A course of three months is one of a few dozen visits. */
    @Test
    void aLongScenarioIsVisitedEverySecondDay() {
        PracticeSession end = WholeSession.by(
                WholeSession.KEEPER,
                PracticeSession.begin(ScenarioJson.builtIn("quarter-year"), SessionOptions.DEFAULT));
        assertThat(end.over()).isTrue();
        assertThat(Outcome.of(end).looks()).isBetween(40, Hands.MOST_VISITS);
    }

    @Test
    void theAdviserSolvesAll() {
        List<String> lost = new ArrayList<>();
        for (String name : names()) {
            if (!outcome(name, Hands.ADVISER).solved()) {
                lost.add(name);
            }
        }
        assertThat(lost).as("scenarios that the adviser does not solve").isEmpty();
    }

    @Test
    void theFirstLevelIsGuidedAndTheLastIsNot() {
        Map<ScenarioLevel, List<Guidance>> guidance = names().stream()
                .map(ScenarioJson::builtIn)
                .collect(Collectors.groupingBy(
                        Scenario::level,
                        Collectors.mapping(each -> each.coaching().guidance(), Collectors.toList())));
        assertThat(guidance.get(ScenarioLevel.FIRST))
                .doesNotContain(Guidance.NONE)
                .contains(Guidance.FULL);
        assertThat(guidance.get(ScenarioLevel.SECOND)).containsOnly(Guidance.ON_REQUEST);
        assertThat(guidance.get(ScenarioLevel.THIRD)).containsOnly(Guidance.NONE);
        assertThat(names()).hasSizeGreaterThanOrEqualTo(20);
    }

    /** The one that docs/trainer.md makes by copying a file and changing it. */
    @Test
    void theScenarioOfTheGuideTeachesWhatItSays() throws IOException {
        Scenario scenario =
                ScenarioJson.readScenario(Files.readString(Path.of("..", "docs", "examples", "quiet-vent.json")));
        PracticeSession start = PracticeSession.begin(scenario, SessionOptions.DEFAULT);
        assertThat(Outcome.of(WholeSession.by(Hands.NOTHING, start)).solved()).isFalse();
        assertThat(Outcome.of(WholeSession.by(WholeSession.KEEPER, start)).solved())
                .isFalse();
        Prediction expected = new Prediction(Trend.MORE, Trend.MORE, 3, 0.8);
        PracticeSession freed = Hands.passOver(start.act(new Act.ServicePart(Part.CUP_VENT), expected));
        assertThat(Outcome.of(WholeSession.by(Hands.NOTHING, freed)).solved()).isTrue();
    }
}
