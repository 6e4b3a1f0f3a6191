package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is no JSON by RFC 8259 is told in plain words, with the place and what was expected there. */
class SyntaxFaultTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{\"a\":NaN} | $.a | line 1, column 6: found \"NaN\", expected a value | finite numbers",
                "{\"a\":-Infinity} | $.a | column 6: found \"-Infinity\", expected a value | finite numbers",
                "{\"a\":+1} | $.a | column 6: found \"+1\", expected a value | no plus sign",
                "{\"a\":01} | $.a | column 6: found \"01\", expected a value | no leading zero",
                "{\"a\":1.} | $.a | column 6: found \"1.\", expected a value | numbers like",
                "{\"a\":-} | $.a | column 6: found \"-\", expected a value | numbers like",
                "{\"a\":.5} | $.a | column 6: found \".5\", expected a value | numbers like",
                "{\"a\":1_000} | $.a | column 6: found \"1_000\", expected a value | numbers like",
                "{\"a\":0x10} | $.a | column 6: found \"0x10\", expected a value | numbers like",
                "{\"a\":5mm} | $.a | found \"5mm\", expected a value | no unit",
                "{\"a\":5 mm} | $.a | found \"mm\", expected a comma or a closing brace | no unit",
                "{\"a\":1,5} | $.a | found \"5\", expected a name in double quotes | a point for decimals",
                "{\"a\":True} | $.a | found \"True\", expected a value | true and false only",
                "{\"a\":None} | $.a | found \"None\", expected a value | true and false only",
                "{'a':1} | $ | found \"'\", expected a name in double quotes or a closing brace | plain double quotes",
                "{a:1} | $ | found \"a\", expected a name in double quotes or a closing brace | double quotes",
                "{\"a\":\u201cx\u201d} | $.a | found \"\u201c\", expected a value | plain double quotes",
                "{\"a\" 1} | $.a | found \"1\", expected a colon and a value | numbers like",
                "{\"a\"=1} | $.a | found \"=\", expected a colon and a value | quotes and brackets",
                "{\"a\":1 \"b\":2} | $.a | found \"\"\", expected a comma or a closing brace | commas",
                "{\"a\":1;\"b\":2} | $.a | found \";\", expected a comma or a closing brace | commas",
                "{\"a\":1,} | $.a | found \"}\", expected a name in double quotes | commas",
                "{\"a\":[1,]} | $.a[1] | found \"]\", expected a value | commas",
                "{\"a\":[1 2]} | $.a[1] | found \"2\", expected a comma or ] | numbers like",
                "{\"a\":[1}} | $.a[0] | found \"}\", expected a comma or ] | brackets",
                "{\"a\":{\"b\":[{\"c\":}]}} | $.a.b[0].c | found \"}\", expected a value | brackets",
                "{/* x */} | $ | found \"/\", expected a name | leave comments out",
                "\uFEFF{} | $ | expected an object | byte order mark",
                "nonsense | $ | found \"nonsense\", expected an object, which begins with an opening brace | double quotes",
                "{\"a\":\"\\q\"} | $.a | column 8: a backslash stands before \"q\" | four digits",
                "{\"a\":\"\\uZZZZ\"} | $.a | a backslash stands before \"uZZZZ\" | four digits",
                "{\"a\":1,\"a\":2} | $.a | is given twice, the second time in line 1 | keep one",
                "{ | $ | ends at line 1, column 2 before it is complete: expected a name in double quotes or a closing brace | whole",
                "{\"a\" | $.a | expected a colon and a value | whole",
                "{\"a\": | $.a | expected a value | whole",
                "{\"a\":1 | $.a | expected a comma or a closing brace | whole",
                "{\"a\":tru | $.a | ends at line 1, column 9 | whole",
                "{\"a\":1. | $.a | ends at line 1, column 8 | whole",
                "{\"a\":\"xy | $.a | expected the closing quote of a text | whole",
                "{\"a\":\"\\u12 | $.a | expected the closing quote of a text | whole",
                "{\"a\":[1, | $.a[1] | expected a value | whole",
                "{\"ab | $ | expected the closing quote of a text | whole",
            })
    void theMistakeIsNamedWithItsPlaceAndWhatWasExpected(String text, String path, String problem, String tryThis) {
        DocumentException error = error(text);
        assertThat(error.path()).isEqualTo(path);
        assertThat(error.problem()).contains(problem);
        assertThat(error.tryThis()).contains(tryThis);
    }

    @Test
    void linesAreCounted() {
        assertThat(error("{\n  \"a\": 1,\n  \"b\": x\n}").problem()).contains("line 3, column 8");
    }

    @Test
    void controlCharactersAreNamedByTheirNumber() {
        assertThat(error("{\"a\":\"x\ny\"}").problem()).contains("U+000A");
        assertThat(error("{\"a\":\u0000}").problem()).contains("U+0000");
    }

    @Test
    void limitsAreToldWithBothNumbers() {
        assertThat(error("{\"a\":" + "[".repeat(70)).problem())
                .isEqualTo("objects and arrays lie 65 deep inside each other, may lie 64 deep");
        assertThat(error("{\"a\":" + "9".repeat(101) + "}").problem())
                .isEqualTo("a number has 101 characters, may have 100");
        assertThat(error("{\"a\":\"" + "x".repeat(20_001) + "\"}").problem())
                .isEqualTo("a text has 20001 characters, may have 20000");
        assertThat(error("{\"" + "x".repeat(201) + "\":1}").problem())
                .isEqualTo("a name has 201 characters, may have 200");
    }

    @Test
    void noErrorBorrowsWordsThatNoBundleHolds() {
        for (String document :
                List.of("[".repeat(70), "{\"a\":" + "9".repeat(101) + "}", "{\"a\":1,\"a\":2}", "{'a'", "")) {
            assertThat(error(document).problemWords().key()).startsWith("json.");
            assertThat(error(document).tryThisWords().key()).startsWith("json.");
        }
        DocumentException language = catchThrowableOfType(
                DocumentException.class,
                () -> new Shapes().of(ServiceOptions.class).read(Parser.parse("{\"language\":\"no such tag!\"}")));
        assertThat(language.path()).isEqualTo("$.language");
        assertThat(language.problem()).isEqualTo("'no such tag!' is no BCP 47 tag of a language");
    }

    private static DocumentException error(String document) {
        DocumentException error = catchThrowableOfType(DocumentException.class, () -> WeirwiseJson.readUnit(document));
        assertThat(error).isNotNull();
        return error;
    }
}
