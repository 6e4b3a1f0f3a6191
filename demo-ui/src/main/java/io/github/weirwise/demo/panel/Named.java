package io.github.weirwise.demo.panel;

import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComboBox;

/**
 * A value with the words that stand for it in a list.
 *
 * @param value the value; empty for "nothing"
 * @param words what is shown
 */
public record Named<T>(Optional<T> value, String words) {
    @Override
    public String toString() {
        return words;
    }

    /** Fills a list anew, keeping what was picked; {@code nothing} may be null when something must be picked. */
    public static <T> void fill(JComboBox<Named<T>> box, T[] values, String nothing, Function<T, String> say) {
        int picked = Math.max(0, box.getSelectedIndex());
        box.removeAllItems();
        if (nothing != null) {
            box.addItem(new Named<>(Optional.empty(), nothing));
        }
        for (T value : values) {
            box.addItem(new Named<>(Optional.of(value), say.apply(value)));
        }
        box.setSelectedIndex(Math.min(picked, box.getItemCount() - 1));
    }

    /** What is picked in a list. */
    public static <T> Optional<T> picked(JComboBox<Named<T>> box) {
        int index = box.getSelectedIndex();
        return index < 0 ? Optional.empty() : box.getItemAt(index).value();
    }
}
