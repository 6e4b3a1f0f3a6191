package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What docs/service.md says about stamps, steps that were not followed and parts that are none, asked through the service. */
class StampsTest {
    private static final Pattern NUMBER = Pattern.compile("\\d+\\.\\d+(E-?\\d+)?");
    private static final String LEVEL = entry(
            "reading",
            24,
            "\"observations\": [{\"type\": \"funnelLevel\", \"mm\": 22}, "
                    + "{\"type\": \"cupVolume\", \"ml\": 320, \"hours\": 24}]");
    private static final String MOVE = entry("weirMove", 24, "\"toCrestMm\": 204");

    private static String entry(String type, int hour, String members) {
        String at = String.format(Locale.ROOT, "2026-03-%02dT%02d:00:00Z", 2 + hour / 24, hour % 24);
        return "{\"type\": \"" + type + "\", \"at\": \"" + at + "\", " + members + "}";
    }

    private static String advice(String more, String... entries) {
        String reply = WeirwiseJson.reply("{\"version\": 2, \"unit\": \"jetty\", \"settings\": {\"weirCrestMm\": 206, "
                + "\"flowLitresPerHour\": 2200, \"airLitresPerHour\": 150, \"waterCelsius\": 25, \"practicalSalinity\": 35}, "
                + "\"journal\": [" + String.join(", ", entries) + "], \"now\": \"2026-03-04T08:00:00Z\"" + more + "}");
        assertThat(reply).doesNotContain("\"error\":");
        // An entry more is a step of the clock more, which rounds the last digits otherwise.
        return NUMBER.matcher(reply)
                .replaceAll(found -> String.format(Locale.ROOT, "%.4g", Double.parseDouble(found.group())));
    }

    @Test
    void whatIsReadCountsBeforeWhatIsDoneAtTheSameInstant() {
        assertThat(advice("", MOVE, LEVEL)).isEqualTo(advice("", LEVEL, MOVE));
        assertThat(advice("", LEVEL, MOVE.replace("2026-03-03T00", "2026-03-02T23")))
                .as("a reading after the move")
                .isNotEqualTo(advice("", LEVEL, MOVE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"YES", "NO", "OPEN"})
    void noAnswerDependsOnWhetherAnAdviceWasFollowed(String followed) {
        String given = entry("adviceGiven", 25, "\"step\": \"Raise the weir.\", \"followed\": \"" + followed + "\"");
        assertThat(advice("", LEVEL, given)).isEqualTo(advice("", LEVEL));
    }

    @ParameterizedTest
    @ValueSource(strings = {"WATER_SURFACE", "ADDITIVES", "SUMP_LEVEL"})
    void aServiceOfWhatPassesByItselfChangesNoAnswer(String part) {
        String service = entry("service", 25, "\"part\": \"" + part + "\"");
        assertThat(advice("", LEVEL, service)).isEqualTo(advice("", LEVEL));
    }

    @ParameterizedTest
    @ValueSource(strings = {"RETURN_WATER", "SALT_MIX"})
    void aServiceOfWhatStaysIsOne(String part) {
        String service = entry("service", 25, "\"part\": \"" + part + "\"");
        assertThat(advice("", LEVEL, service)).isNotEqualTo(advice("", LEVEL));
    }

    @Test
    void whatCannotBeReadJustNowIsForgottenWithTheRequest() {
        String before = advice("", LEVEL);
        advice(
                ", \"options\": {\"cannotMeasure\": [\"CUP_VOLUME\", \"FUNNEL_LEVEL\", \"AIR_FLOW\", \"NECK_AND_CUP\"]}",
                LEVEL);
        assertThat(advice("", LEVEL)).isEqualTo(before);
    }

    /** The cup at the floodLook is full, the foam runs: the next answer acts. */
    @Test
    void aFloodLookIsAnsweredAtOnceAndCalmFoamEndsTheAlarm() {
        String runs = entry("reading", 49, "\"observations\": [{\"type\": \"foamLook\", \"look\": \"STREAMING\"}]");
        String full = entry(
                "reading",
                49,
                "\"observations\": [{\"type\": \"foamLook\", \"look\": \"RUNNY\"}, {\"type\": \"cupVolume\", \"ml\": 1500, \"hours\": 1, \"full\": true}]");
        String floor = entry("happening", 49, "\"kind\": \"FLOOD\"");
        String calm = entry("reading", 50, "\"observations\": [{\"type\": \"foamLook\", \"look\": \"STIFF\"}]");
        for (String seen : new String[] {runs, full, floor}) {
            assertThat(advice("", LEVEL, seen)).as(seen).contains("\"type\":\"makeSafe\"");
            assertThat(advice("", LEVEL, seen, calm)).as(seen).doesNotContain("\"type\":\"makeSafe\"");
        }
    }

    @Test
    void entriesAfterNowAreLeftOut() {
        assertThat(advice("", LEVEL, entry("weirMove", 60, "\"toCrestMm\": 190")))
                .isEqualTo(advice("", LEVEL));
    }
}
