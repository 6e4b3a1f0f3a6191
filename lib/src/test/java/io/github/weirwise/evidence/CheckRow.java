package io.github.weirwise.evidence;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One value to hold a formula against, as a line of a data file gives it.
 *
 * @param id formula and number, as {@code RHO-1}
 * @param quantity what it is, in words
 * @param inputs the numbers that go in, by name
 * @param expected the value
 * @param unit its unit; may be empty
 * @param tolerance greatest difference allowed, absolute
 * @param source where the value is published
 * @param howKnown read, from memory, or computed, with a remark
 */
record CheckRow(
        String id,
        String quantity,
        Map<String, Double> inputs,
        double expected,
        String unit,
        double tolerance,
        String source,
        String howKnown) {

    /** The same with other numbers going in. */
    CheckRow with(Map<String, Double> others) {
        return new CheckRow(id, quantity, others, expected, unit, tolerance, source, howKnown);
    }

    static CheckRow of(List<String> cells) {
        double expected = Double.parseDouble(cells.get(3));
        return new CheckRow(
                cells.get(0),
                cells.get(1),
                inputs(cells.get(2)),
                expected,
                cells.get(4),
                tolerance(cells.get(5), expected),
                cells.get(6),
                cells.get(7));
    }

    /** The part of the id that names the formula. */
    String prefix() {
        return id.substring(0, id.indexOf('-'));
    }

    /** The input of that name; a row without it is a mistake in the data file. */
    double in(String name) {
        Double value = inputs.get(name);
        if (value == null) {
            throw new IllegalStateException(id + " has no input " + name + ", only " + inputs.keySet());
        }
        return value;
    }

    /** Temperature on ITS-90, whichever scale the source uses. */
    double celsius() {
        if (inputs.containsKey("t68")) {
            return in("t68") / 1.00024;
        }
        return in(inputs.containsKey("t90") ? "t90" : "t");
    }

    boolean isComputed() {
        return howKnown.startsWith("computed");
    }

    boolean isRecalled() {
        return howKnown.startsWith("from memory");
    }

    boolean isMetBy(double ours) {
        return Math.abs(ours - expected) <= tolerance * (1 + 1e-9);
    }

    private static Map<String, Double> inputs(String cell) {
        Map<String, Double> inputs = new LinkedHashMap<>();
        for (String part : cell.split(";")) {
            if (!part.isBlank()) {
                String[] pair = part.trim().split("=");
                inputs.put(pair[0], Double.valueOf(pair[1]));
            }
        }
        return inputs;
    }

    private static double tolerance(String cell, double expected) {
        return cell.endsWith("%")
                ? Math.abs(expected) * Double.parseDouble(cell.substring(0, cell.length() - 1)) / 100
                : Double.parseDouble(cell);
    }
}
