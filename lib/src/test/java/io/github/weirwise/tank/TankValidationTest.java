package io.github.weirwise.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of the tank's check files, one published or recalled value each, named with its source. */
class TankValidationTest {
    static final List<String> FILES = List.of(
            "ashrae-evaporation",
            "clegg-whitfield-1995",
            "dickson-1990",
            "ebeling-timmons-bisogni-2006",
            "emerson-1975",
            "iapws-if97",
            "kinyage",
            "nijhof-bovendeur-1990",
            "salt-balance",
            "shah-2014",
            "smith-lof-jones-1993",
            "timmons-ebeling",
            "us-epa-1989");
    private static final Pattern FIELD = Pattern.compile("\"([^\"]*)\"(?:,|$)|([^,]*)(?:,|$)");

    record Row(
            String id, String quantity, Map<String, Double> inputs, double expected, double tolerance, String source) {
        @Override
        public String toString() {
            return id + ": " + quantity + " (" + source + ")";
        }
    }

    static Stream<Row> rows() {
        return FILES.stream().flatMap(file -> read(file).stream());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void aTankFormulaMeetsItsPublishedValue(Row row) {
        double ours = TankQuantities.all()
                .get(row.quantity())
                .applyAsDouble(symbol -> row.inputs().get(symbol));
        assertThat(ours).as(row.toString()).isCloseTo(row.expected(), within(row.tolerance()));
    }

    private static List<Row> read(String file) {
        String path = "/io/github/weirwise/checks/" + file + ".csv";
        try (InputStream in = TankValidationTest.class.getResourceAsStream(path)) {
            List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            return lines.stream().skip(1).map(TankValidationTest::row).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(path, e);
        }
    }

    private static Row row(String line) {
        List<String> cells = new ArrayList<>();
        Matcher matcher = FIELD.matcher(line);
        while (cells.size() < 8 && matcher.find()) {
            cells.add(matcher.group(1) != null ? matcher.group(1) : matcher.group(2));
        }
        double expected = Double.parseDouble(cells.get(3));
        String tolerance = cells.get(5);
        double allowed = tolerance.endsWith("%")
                ? Double.parseDouble(tolerance.substring(0, tolerance.length() - 1)) / 100 * Math.abs(expected)
                : Double.parseDouble(tolerance);
        return new Row(cells.get(0), cells.get(1), inputs(cells.get(2)), expected, allowed, cells.get(6));
    }

    private static Map<String, Double> inputs(String text) {
        Map<String, Double> inputs = new HashMap<>();
        for (String part : text.split(";")) {
            String[] pair = part.trim().split("=");
            if (pair.length == 2) {
                inputs.put(pair[0], Double.valueOf(pair[1]));
            }
        }
        return inputs;
    }
}
