package io.github.weirwise.evidence;

import java.util.Locale;
import java.util.function.DoubleFunction;

/**
 * One assumption of the fast form with two values, the ends of what may well be true.
 *
 * @param what its name, with a unit
 * @param used the value in use, in words
 * @param low the one value
 * @param high the other
 * @param scene the unit under a value
 */
record SensitivityRow(String what, String used, double low, double high, DoubleFunction<SensitivityScene> scene) {
    /** The row as a line of a table, against the unit as it is. */
    String against(SensitivityScene base) {
        SensitivityScene atLow = scene.apply(low);
        SensitivityScene atHigh = scene.apply(high);
        return String.format(
                Locale.ROOT,
                "| %s | %s | %s; %s | %s; %s | %s; %s | %s; %s | %s; %s |%n",
                what,
                used,
                plain(low),
                plain(high),
                shift(atLow.submergenceMm() - base.submergenceMm()),
                shift(atHigh.submergenceMm() - base.submergenceMm()),
                ratio(atLow.skimmateMlPerDay() / base.skimmateMlPerDay()),
                ratio(atHigh.skimmateMlPerDay() / base.skimmateMlPerDay()),
                ratio(atLow.answerTo(2)),
                ratio(atHigh.answerTo(2)),
                darkness(atLow, base),
                darkness(atHigh, base));
    }

    private static String darkness(SensitivityScene scene, SensitivityScene base) {
        return scene.skimmateMlPerDay() > 0 ? ratio(scene.darknessPtCo() / base.darknessPtCo()) : "-";
    }

    static String plain(double value) {
        String text = String.format(Locale.ROOT, "%.4f", value);
        return text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
    }

    private static String shift(double mm) {
        return Math.abs(mm) < 0.05 ? "0" : String.format(Locale.ROOT, "%+.1f", mm);
    }

    static String ratio(double value) {
        if (Double.isNaN(value)) {
            return "none";
        }
        if (value >= 100) {
            return String.format(Locale.ROOT, "%.0f", value);
        }
        return value >= 0.1 || value == 0 ? String.format(Locale.ROOT, "%.2f", value) : String.format("%.1g", value);
    }
}
