package io.github.weirwise.demo.care;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.FieldRow;
import io.github.weirwise.demo.panel.NumberBox;
import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** One reading of the form: takes numbers out of boxes, and tells at each box what cannot be taken. */
final class SiteReader {
    private final Dress dress;
    private final Map<FieldRow, Unit> units;
    private final List<FieldRow> faults = new ArrayList<>();

    /** @param units what is typed in each box that has limits of its own */
    SiteReader(Dress dress, Map<FieldRow, Unit> units) {
        this.dress = dress;
        this.units = units;
    }

    /** Boxes that cannot be taken, in the order in which they were read. */
    List<FieldRow> faults() {
        return List.copyOf(faults);
    }

    /** The number in a box; empty, and told there unless it may be, when there is none. */
    OptionalDouble number(FieldRow row, boolean mayBeEmpty) {
        try {
            OptionalDouble value = row.value();
            row.right();
            if (value.isEmpty() && !mayBeEmpty) {
                missing(row);
            }
            return value;
        } catch (NumberBox.NotANumber e) {
            fault(row, dress.text("own.notANumber", e.typed()));
            return OptionalDouble.empty();
        }
    }

    void missing(FieldRow row) {
        fault(row, dress.text("own.missing"));
    }

    void curve(FieldRow row) {
        fault(row, dress.text("own.curve"));
    }

    void wholeNumber(FieldRow row, int most) {
        fault(row, dress.text("own.outOfRange", QuantityRange.of(new Range(0, most), Unit.COUNT)));
    }

    /** Makes something of numbers; what its records refuse is told at the box with the number's name. */
    <T> Optional<T> make(Collection<FieldRow> rows, Supplier<T> maker) {
        try {
            return Optional.of(maker.get());
        } catch (OutOfRangeException e) {
            outOfRange(rows, e);
        } catch (IllegalArgumentException e) {
            rows.stream().findFirst().ifPresent(row -> fault(row, dress.text("own.withOthers")));
        }
        return Optional.empty();
    }

    void outOfRange(Collection<FieldRow> rows, OutOfRangeException e) {
        FieldRow at = rows.stream()
                .filter(row -> row.component().equals(e.name()))
                .findFirst()
                .orElseGet(() -> rows.iterator().next());
        fault(at, limits(at, e));
    }

    private String limits(FieldRow row, OutOfRangeException e) {
        try {
            Unit unit = units.getOrDefault(row, Unit.PLAIN);
            double scale = row.component().equals("chamberLitresPerMm") ? SiteForm.ML_PER_LITRE : 1;
            Range range = e.limits();
            return dress.text(
                    "own.outOfRange", QuantityRange.of(new Range(scale * range.low(), scale * range.high()), unit));
        } catch (IllegalArgumentException none) {
            // What the other numbers leave is nothing at all.
            return dress.text("own.withOthers");
        }
    }

    private void fault(FieldRow row, String words) {
        row.wrong(words);
        if (!faults.contains(row)) {
            faults.add(row);
        }
    }
}
