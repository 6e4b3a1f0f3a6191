package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.report.Range;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** One reading of a form: takes numbers out of boxes, and tells at each box what cannot be taken. */
public final class FieldReader {
    private final Dress dress;
    private final List<FieldRow> faults = new ArrayList<>();

    /** A reading whose words are of this dress. */
    public FieldReader(Dress dress) {
        this.dress = dress;
    }

    /** Boxes that cannot be taken, in the order in which they were read. */
    public List<FieldRow> faults() {
        return List.copyOf(faults);
    }

    /** The number in a box; empty, and told there unless it may be, when there is none. */
    public OptionalDouble number(FieldRow row, boolean mayBeEmpty) {
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

    /** Tells that a number is missing. */
    public void missing(FieldRow row) {
        fault(row, dress.text("own.missing"));
    }

    /** Tells that points make no pump's curve. */
    public void curve(FieldRow row) {
        fault(row, dress.text("own.curve"));
    }

    /** Tells that a count is wanted. */
    public void wholeNumber(FieldRow row, int most) {
        fault(row, dress.text("own.outOfRange", row.typed(new Range(0, most))));
    }

    /** Makes something of numbers; what its records refuse is told at the box with the number's name. */
    public <T> Optional<T> make(Collection<FieldRow> rows, Supplier<T> maker) {
        try {
            return Optional.of(maker.get());
        } catch (OutOfRangeException e) {
            outOfRange(rows, e);
        } catch (IllegalArgumentException e) {
            rows.stream().findFirst().ifPresent(row -> fault(row, dress.text("own.withOthers")));
        }
        return Optional.empty();
    }

    /** Tells the limits at the box whose number is outside of them. */
    public void outOfRange(Collection<FieldRow> rows, OutOfRangeException e) {
        FieldRow at = rows.stream()
                .filter(row -> row.component().equals(e.name()))
                .findFirst()
                .orElseGet(() -> rows.iterator().next());
        fault(at, limits(at, e));
    }

    private String limits(FieldRow row, OutOfRangeException e) {
        try {
            return dress.text("own.outOfRange", row.typed(e.limits()));
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
