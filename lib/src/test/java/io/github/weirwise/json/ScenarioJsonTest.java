package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.github.weirwise.practice.Offers;
import io.github.weirwise.practice.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An author who slips is told where. */
class ScenarioJsonTest {
    private static final String SOUND = Fixtures.text("scenario-whole.json");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "\"lastsHours\": 72                | \"lastsHours\": 0              | $.goals.lastsHours",
                "\"arrivesAtHour\": 8              | \"arrivesAtHour\": 200         | $.start.arrivesAtHour",
                "\"readingHours\": [-40, -16]      | \"readingHours\": [-40, -160]  | $.start.readingHours",
                "\"type\": \"fouled\"              | \"type\": \"soiled\"           | $.events[0].event.type",
                "\"share\": 0.7                    | \"share\": 7                   | $.events[0].event.share",
                "\"part\": \"NECK\"                | \"part\": \"NOSE\"             | $.events[0].event.part",
                "\"NECK_PER_DAY\": 0.01            | \"NECK_PER_DAY\": 7            | $.tank",
                "\"NECK_PER_DAY\": 0.01            | \"NECK_PER_WEEK\": 0.1         | $.tank.parameters.NECK_PER_WEEK",
                "\"cause\": \"NECK_DIRTY\"         | \"cause\": \"NECK\"            | $.faults[0].cause",
                "\"ROUND\": 6                      | \"ROUND\": -6                  | $.offers",
                "\"right\": 2                      | \"right\": 3                   | $.coaching.questions[0].right",
                "\"level\": \"FIRST\"              | \"level\": \"EASY\"            | $.level",
                "\"told\": [\"Training             | \"told\": [\"\", \"Training    | $.told",
                "\"teaches\":                      | \"taeches\":                   | $.taeches",
                "\"name\": \"quiet-morning\"       | \"name\": \"Quiet morning\"    | $.name",
                "\"unit\": {                       | \"unit\": \"lantern\", \"x\": { | $.x",
                "\"litres\": 300                   | \"liters\": 300                | $.tank.liters",
            })
    void aSlipIsToldWithItsPlace(String before, String after, String path) {
        assertThat(SOUND).contains(before);
        String slipped = SOUND.replace(before, after);
        DocumentException told =
                catchThrowableOfType(DocumentException.class, () -> ScenarioJson.readScenario(slipped));
        assertThat(told).as(slipped).isNotNull();
        assertThat(told.path()).isEqualTo(path);
        assertThat(told.tryThis()).isNotBlank();
    }

    @Test
    void aFaultSheetThatDoesNotAddUpIsToldWithItsPlace() {
        String slipped = Fixtures.text("session-whole.json").replace("\"NECK_DIRTY\": 0.75", "\"NECK_DIRTY\": 0.65");
        assertThatThrownBy(() -> ScenarioJson.readSession(slipped))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("$.steps[5].faults")
                .hasMessageContaining("add up to");
    }

    @Test
    void anAuthorMayLeaveOutWhatIsUsual() {
        Scenario scenario = ScenarioJson.readScenario("""
                {"version": 2, "name": "bare", "title": "Bare", "level": "FIRST", "teaches": "One thing.", "told": [],
                 "unit": "seahorse-room", "tank": {"litres": 300, "feedGramsPerDay": 1.8},
                 "start": {"settings": {"weirCrestMm": 162, "flowLitresPerHour": 1200, "airLitresPerHour": 70,
                   "waterCelsius": 25, "practicalSalinity": 35}, "arrivesAtHour": 8},
                 "coaching": {"guidance": "FULL"}, "goals": {"lastsHours": 24}}
                """);
        assertThat(scenario.offers()).isEqualTo(Offers.EVERYTHING);
        assertThat(scenario.faults()).isEmpty();
        assertThat(scenario.goals().onTarget()).isTrue();
        assertThat(scenario.tank().mediaUnderWater()).isEqualTo(0.3);
    }

    @Test
    void onlyBuiltInScenariosHaveAName() {
        assertThatThrownBy(() -> ScenarioJson.builtIn("../session")).isInstanceOf(IllegalArgumentException.class);
    }
}
