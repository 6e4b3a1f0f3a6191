package io.github.weirwise.demo.round;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.NumberBox;
import io.github.weirwise.report.Bounds;
import io.github.weirwise.report.OutOfRangeException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** One reading of boxes: marks each box that cannot be taken, and says its name, its limits and its unit as they are typed. */
final class Faults {
    private final Dress dress;
    private final List<String> words = new ArrayList<>();
    private Optional<NumberBox> first = Optional.empty();

    Faults(Dress dress) {
        this.dress = dress;
    }

    /** The number in a box, if there is one that can be read. */
    OptionalDouble number(NumberBox box) {
        try {
            return box.value();
        } catch (NumberBox.NotANumber e) {
            tell(box, dress.text("fault.notANumber", box.name(), e.typed()));
            return OptionalDouble.empty();
        }
    }

    /** A box that belongs to another one is empty. */
    void missing(NumberBox box) {
        tell(box, dress.text("fault.missing", box.name()));
    }

    /** Makes something of the number in a box; what its record refuses is told at the box. */
    <T> Optional<T> make(NumberBox box, Supplier<T> maker) {
        try {
            return Optional.of(maker.get());
        } catch (OutOfRangeException e) {
            Bounds bounds = new Bounds(e.limits().low(), e.limits().high(), box.unit());
            tell(box, dress.text("fault.outOfRange", box.name(), Bounds.of(e.value(), box.unit()), bounds));
            return Optional.empty();
        }
    }

    private void tell(NumberBox box, String fault) {
        box.mark(true);
        box.field().getAccessibleContext().setAccessibleDescription(fault);
        words.add(fault);
        first = first.or(() -> Optional.of(box));
    }

    boolean none() {
        return words.isEmpty();
    }

    String words() {
        return String.join("\n", words);
    }

    /** Goes to the first box that cannot be taken. */
    void goTo() {
        first.ifPresent(box -> box.field().requestFocusInWindow());
    }
}
