package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every kind of damage gives one error that says where, what and what to try. */
class DocumentErrorsTest {
    private static final String WHOLE = Fixtures.text("request-whole.json");

    /** Replaces the first occurrence of a piece of the request by another. */
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            delimiter = '|',
            value = {
                "\"weirCrestMm\": 193 | \"weirCrestCm\": 19.3 | $.settings.weirCrestCm | right unit is weirCrestMm",
                "\"weirCrestMm\": 193 | \"weir_crest_in\": 7.6 | $.settings.weir_crest_in | right unit is weirCrestMm",
                "\"waterCelsius\" | \"waterFahrenheit\" | $.settings.waterFahrenheit | right unit is waterCelsius",
                "\"airLitresPerHour\" | \"airCfm\" | $.settings.airCfm | right unit is airLitresPerHour",
                "\"practicalSalinity\" | \"practicalSalinty\" | $.settings.practicalSalinty | did you mean practicalSalinity",
                "\"practicalSalinity\": 34.5 | \"practicalSalinity\": 1.0256 | $.settings.practicalSalinity | specific gravity",
                "\"now\" | \"colour\" | $.colour | names known here: unit, settings, journal, now",
                "\"weirCrestMm\": 193, | `` | $.settings.weirCrestMm | is missing",
                "\"version\": 2, | `` | $.version | is missing",
                "\"version\": 2 | \"version\": 3 | $.version | must be 2",
                "\"version\": 2 | \"version\": \"1\" | $.version | must be 2",
                "\"weirCrestMm\": 193 | \"weirCrestMm\": NaN | $.settings.weirCrestMm | line",
                "\"weirCrestMm\": 193 | \"weirCrestMm\": -Infinity | $.settings.weirCrestMm | line",
                "\"weirCrestMm\": 193 | \"weirCrestMm\": 1e999 | $.settings.weirCrestMm | too large",
                "\"weirCrestMm\": 193 | \"weirCrestMm\": \"193 mm\" | $.settings.weirCrestMm | must be a number",
                "\"weirCrestMm\": 193 | \"weirCrestMm\": null | $.settings.weirCrestMm | must be a number",
                "\"weirCrestMm\": 193 | \"weirCrestMm\": 19300 | $.settings.weirCrestMm | must be 1 to 2000 mm",
                "\"weirCrestMm\": 193 | \"weirCrestMm\": 193, \"weirCrestMm\": 194 | $.settings.weirCrestMm | given twice",
                "\"columns\": 2 | \"columns\": 2.5 | $.unit.columns | whole number",
                "\"columns\": 2 | \"columns\": 0 | $.unit.columns | must be 1 to 12",
                "\"neckBoreMm\": 50 | \"neckBoreMm\": 120 | $.unit.column.neckBoreMm | must be 5 to 110 mm",
                "\"low\": 700 | \"low\": 7000 | $.unit.target.darknessPtCo | from low to high",
                "\"low\": 700 | \"low\": -1 | $.unit.target.darknessPtCo | must be 0 to 100000 Pt-Co",
                "\"high\": 5000 | \"high\": 1.7976931348623157E308 | $.unit.target.darknessPtCo | 0 to 100000 Pt-Co",
                "\"name\": \"Staff training tank 4\" | \"name\": \" \" | $.unit.name | name must not be empty",
                "\"probe\": true | \"probe\": \"yes\" | $.journal[4].probe | true or false",
                "\"word\": \"DARK_TEA\" | \"word\": \"TEA\" | $.journal[1].observations[2].word | LIGHT_TEA, DARK_TEA",
                "\"type\": \"foamLook\" | \"type\": \"foam\" | $.journal[1].observations[4].type | funnelLevel",
                "\"type\": \"weirMove\", | `` | $.journal[4].type | is missing",
                "\"type\": \"weirMove\" | \"type\": 3 | $.journal[4].type | must be a text",
                "\"seconds\": 40 | \"seconds\": 0 | $.journal[1].observations[9].seconds | must be 1 to 36000 s",
                "2026-03-03T09:00:00Z | 2026-03-03 | $.now | date with time and zone",
                "2026-03-03T09:00:00Z | 3026-03-03T09:00:00Z | $.now | check the year",
                "\"now\": \"2026-03-03T09:00:00Z\" | \"now\": 1772528400 | $.now | time as text",
                "\"journal\": [ | \"journal\": 3, \"old\": [ | $.old | names known here",
                "Second line. | \\ud800 | $.journal[6].text | half a character",
            })
    void damageIsNamedWithItsPath(String piece, String damage, String path, String words) {
        String document = WHOLE.replaceFirst(
                java.util.regex.Pattern.quote(piece), java.util.regex.Matcher.quoteReplacement(damage));
        assertThat(document).isNotEqualTo(WHOLE);
        DocumentException error = error(document);
        assertThat(error.path()).isEqualTo(path);
        assertThat(error.getMessage()).contains(words);
        assertThat(error.tryThis()).isNotBlank();
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(
            strings = {
                "",
                "  \n",
                "\uFEFF",
                "null",
                "[]",
                "3",
                "\"text\"",
                "{",
                "{\"a\"",
                "{}{}",
                "}",
                "{'a':1}",
                "nonsense"
            })
    void whatIsNoObjectIsRefused(String document) {
        assertThat(error(document).path()).startsWith("$");
    }

    @Test
    void textAfterTheEndIsRefused() {
        assertThat(error(WHOLE + "{}").problem()).contains("after the end");
        assertThat(error(WHOLE + "x").problem()).contains("after the end");
    }

    @Test
    void deepNestingIsRefusedBeforeTheStackIsGone() {
        String deep = "{\"version\":2,\"unit\":" + "[".repeat(1_000_000);
        assertThat(error(deep).problem()).contains("64");
    }

    @Test
    void sizesAreLimited() {
        assertThat(error(" ".repeat(DocumentLimits.MOST_CHARACTERS) + "{}").problem())
                .contains("4000000");
        assertThat(error("{\"version\":2,\"unit\":\"" + "x".repeat(30_000) + "\"}")
                        .path())
                .isEqualTo("$.unit");
        assertThat(error("{\"version\":2,\"unit\":" + "9".repeat(200) + "}").path())
                .isEqualTo("$.unit");
        assertThat(error("{\"version\":2,\"" + "x".repeat(300) + "\":1}").problem())
                .contains("200");
        String many = WHOLE.replaceFirst("\"observations\": \\[", "\"observations\": [" + "1,".repeat(20_000));
        assertThat(error(many).problem()).contains("may have 20000");
    }

    @Test
    void aNoteThatIsTooLongIsReportedAtItsEntry() {
        DocumentException error = error(WHOLE.replace("Second line.", "x".repeat(2001)));
        assertThat(error.path()).isEqualTo("$.journal[6].text");
        assertThat(error.problem()).contains("must be 0 to 2000");
    }

    @Test
    void foreignTextInAMessageIsShortAndOnOneLine() {
        DocumentException error = error("{\"version\":2,\"\\n\\u001b[31m" + "a".repeat(150) + "\":2}");
        assertThat(error.getMessage())
                .doesNotContain("\n")
                .doesNotContain("\u001b")
                .hasSizeLessThan(400);
    }

    @Test
    void theErrorIsADocumentToo() {
        DocumentException error = error(WHOLE.replace("\"weirCrestMm\"", "\"weirCrestCm\""));
        assertThat(Fixtures.tree(WeirwiseJson.writeError(error))).isEqualTo(Fixtures.tree(Fixtures.text("error.json")));
    }

    private static DocumentException error(String document) {
        DocumentException error =
                catchThrowableOfType(DocumentException.class, () -> WeirwiseJson.readRequest(document));
        assertThat(error).isNotNull();
        return error;
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            delimiter = '|',
            value = {
                "\"rimMm\": 840 | \"rimMm\": 700 | $.tank.rimMm | must be 780 to 6000 mm",
                "\"waterLitres\": 500 | \"waterLitres\": 900 | $.tank.waterLitres | less what rock and sand take up",
                "\"pipes\": 2 | \"pipes\": 2.5 | $.drainage.pipes | whole number",
                "\"ELBOW_45\" | \"ELBOW_46\" | $.drainage.each.fittings[2] | ENTRANCE_SHARP",
                "\"headMm\": 2050 | \"headMm\": 3050 | $.pump | a pump's head falls",
                "\"breakBelowCrestMm\": 8 | \"breakBelowCrestMm\": 80 | $.returnLine.breakBelowCrestMm | above the mouth",
                "\"ratedKilograms\": 1200 | \"ratedKilograms\": null | $.stand.ratedKilograms | must be a number",
                "\"headroomMm\": 760 | \"headroomCm\": 76 | $.stand.headroomCm | right unit is headroomMm",
                "\"version\": 2 | \"version\": 3 | $.version | must be 2",
                "\"lengthMm\": 1200 | \"lengthMm\": 100 | $.tank | water",
            })
    void anInstallationsDamageIsNamedWithItsPath(String piece, String damage, String path, String words) {
        String sound = Fixtures.text("installation.json");
        DocumentException error = catchThrowableOfType(
                DocumentException.class,
                () -> WeirwiseJson.readInstallation(sound.replaceFirst(
                        java.util.regex.Pattern.quote(piece), java.util.regex.Matcher.quoteReplacement(damage))));
        assertThat(error).isNotNull();
        assertThat(error.path()).startsWith(path);
        assertThat(error.getMessage()).contains(words);
    }
}
