package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.setup.Installation;
import io.github.weirwise.setup.LanternQuaySites;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

class DocumentsTest {
    private static final List<String> LEAVES_OUT_WHAT_IS_USUAL =
            List.of("request.json", "scenario.json", "installation.json");

    static List<String> fixtures() {
        return Fixtures.VERSION_2;
    }

    /** All that a fixture says is kept; what may be left out is filled in, so the second writing equals the first. */
    @ParameterizedTest
    @MethodSource("fixtures")
    void everyFixtureOfVersion1IsReadAndWrittenWithoutLoss(String name) {
        String once = Fixtures.readAndWrite(name, Fixtures.text(name));
        assertThat(Fixtures.readAndWrite(name, once)).isEqualTo(once);
        if (!LEAVES_OUT_WHAT_IS_USUAL.contains(name)) {
            ObjectNode told = (ObjectNode) Fixtures.tree(Fixtures.text(name));
            told.remove(List.of("library", "operation")); // what stands round an answer is the service's
            assertThat(sameNumbers(Fixtures.tree(once))).isEqualTo(sameNumbers(told));
        }
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void theOrderOfMembersDoesNotMatterAndVersionMayStandAnywhere(String name) {
        String expected = Fixtures.readAndWrite(name, Fixtures.text(name));
        Random random = new Random(7);
        for (int i = 0; i < 40; i++) {
            JsonNode shuffled = shuffled(Fixtures.tree(Fixtures.text(name)), random);
            assertThat(Fixtures.readAndWrite(name, shuffled.toString())).isEqualTo(expected);
        }
    }

    @Test
    void aRequestMayNameABuiltInUnitAndLeaveOutWhatIsUsual() {
        Request request = WeirwiseJson.readRequest(Fixtures.text("request.json"));
        assertThat(request.unit()).isEqualTo(LanternQuay.jetty());
        assertThat(request.settings().condition()).isEqualTo(Condition.REFERENCE);
        assertThat(request.now()).isEqualTo(Instant.parse("2026-03-02T08:05:00Z"));
        Reading reading = request.journal().last(Reading.class).orElseThrow();
        assertThat(reading.by()).isEmpty();
        assertThat(reading.find(Observation.CupVolume.class)).contains(new Observation.CupVolume(32, 24, false));
    }

    @Test
    void aUnitDocumentFitsIntoARequestWithItsVersion() {
        ObjectNode request = (ObjectNode) Fixtures.tree(Fixtures.text("request.json"));
        request.set("unit", Fixtures.tree(Fixtures.text("unit.json")));
        assertThat(WeirwiseJson.readRequest(request.toString()).unit())
                .isEqualTo(WeirwiseJson.readUnit(Fixtures.text("unit.json")));
    }

    @Test
    void wholeNumbersMayBeWrittenWithADecimalPoint() {
        String text = Fixtures.text("unit.json").replace("\"columns\": 2", "\"columns\": 2.0");
        assertThat(WeirwiseJson.readUnit(text).columns()).isEqualTo(2);
    }

    @Test
    void timesMayCarryAnOffset() {
        String text = Fixtures.text("request.json").replace("2026-03-02T08:05:00Z", "2026-03-02T10:05:00+02:00");
        assertThat(WeirwiseJson.readRequest(text).now()).isEqualTo(Instant.parse("2026-03-02T08:05:00Z"));
    }

    @Test
    void operatingPointsOfAllUnitsOverAllCrestsSurviveTheWayThere() {
        for (SkimmerUnit unit : FirstRoundUnits.units()) {
            for (double crest = unit.weir().lowestCrestMm();
                    crest <= unit.weir().highestCrestMm();
                    crest += 5) {
                Settings settings = unit.ratedSettings(crest);
                OperatingPoint point = OperatingPoint.of(unit, settings);
                assertThat(WeirwiseJson.readOperatingPoint(WeirwiseJson.writeOperatingPoint(point)))
                        .isEqualTo(point);
                assertThat(WeirwiseJson.readSettings(WeirwiseJson.writeSettings(settings)))
                        .isEqualTo(settings);
            }
            assertThat(WeirwiseJson.readUnit(WeirwiseJson.writeUnit(unit))).isEqualTo(unit);
        }
    }

    @Test
    void installationsSurviveTheWayThere() {
        for (Installation site : LanternQuaySites.all()) {
            Installation again = WeirwiseJson.readInstallation(WeirwiseJson.writeInstallation(site));
            assertThat(again).isEqualTo(site);
            assertThat(FitCheck.of(again).answers()).isEqualTo(FitCheck.of(site).answers());
        }
    }

    @Test
    void whatNobodyKnowsIsLeftOut() {
        String text = Fixtures.text("installation.json").replace("\"ratedKilograms\": 1200, ", "");
        Installation site = WeirwiseJson.readInstallation(text);
        assertThat(site.stand().ratedKilograms()).isEmpty();
        assertThat(WeirwiseJson.writeInstallation(site)).doesNotContain("ratedKilograms", "null");
    }

    @Test
    void adviceOfEveryKindSurvivesTheWayThere() {
        for (Advice advice : SampleAdvice.all()) {
            assertThat(WeirwiseJson.readAdvice(WeirwiseJson.writeAdvice(advice)))
                    .isEqualTo(advice);
        }
    }

    @Test
    void sentencesComeWithTheirEnglishWords() {
        OperatingPoint point = OperatingPoint.of(
                FirstRoundUnits.small(),
                FirstRoundUnits.small().ratedSettings(150).withFlowLitresPerHour(300));
        JsonNode first = Fixtures.tree(WeirwiseJson.writeOperatingPoint(point))
                .get("warnings")
                .get(0);
        assertThat(first.get("text").get("key").stringValue()).startsWith("unit.");
        assertThat(first.get("text").get("text").stringValue()).isNotBlank();
    }

    private static JsonNode shuffled(JsonNode node, Random random) {
        if (node.isArray()) {
            ArrayNode array = JsonNodeFactory.instance.arrayNode();
            node.forEach(each -> array.add(shuffled(each, random)));
            return array;
        }
        if (!node.isObject()) {
            return node;
        }
        List<String> names = new ArrayList<>(node.propertyNames());
        Collections.shuffle(names, random);
        ObjectNode object = JsonNodeFactory.instance.objectNode();
        names.forEach(name -> object.set(name, shuffled(node.get(name), random)));
        return object;
    }

    /** 22 and 22.0 are the same number, but not the same node; the words of a sentence may get better. */
    private static JsonNode sameNumbers(JsonNode node) {
        if (node.isArray()) {
            ArrayNode array = JsonNodeFactory.instance.arrayNode();
            node.forEach(each -> array.add(sameNumbers(each)));
            return array;
        }
        if (node.isObject()) {
            ObjectNode object = JsonNodeFactory.instance.objectNode();
            node.properties().forEach(each -> object.set(each.getKey(), sameNumbers(each.getValue())));
            if (object.has("key")) {
                object.remove("text");
            }
            return object;
        }
        return node.isNumber() ? JsonNodeFactory.instance.numberNode(node.doubleValue()) : node;
    }
}
