package io.github.weirwise.evidence;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** Which function of the library answers which check rows: by the prefix of the row's id. */
final class Formulas {
    /** A function of the library under the name by which rows of the same formula are counted together. */
    record Formula(String name, ToDoubleFunction<CheckRow> function) {}

    private final Map<String, Formula> byPrefix = new TreeMap<>();

    static Formulas all() {
        Formulas formulas = new Formulas();
        WaterFormulas.addTo(formulas);
        HydraulicFormulas.addTo(formulas);
        BubbleFormulas.addTo(formulas);
        FoamFormulas.addTo(formulas);
        ColourFormulas.addTo(formulas);
        TankFormulas.addTo(formulas);
        return formulas;
    }

    void add(String prefix, String name, ToDoubleFunction<CheckRow> function) {
        if (byPrefix.put(prefix, new Formula(name, function)) != null) {
            throw new IllegalStateException("two formulas for " + prefix);
        }
    }

    Formula of(CheckRow row) {
        Formula formula = byPrefix.get(row.prefix());
        if (formula == null) {
            throw new IllegalStateException("no formula for row " + row.id());
        }
        return formula;
    }

    double ours(CheckRow row) {
        return of(row).function().applyAsDouble(row);
    }
}
