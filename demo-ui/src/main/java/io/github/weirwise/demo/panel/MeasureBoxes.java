package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.report.Bounds;
import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.awt.BorderLayout;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import javax.swing.JPanel;
import javax.swing.JTextField;

/**
 * A box for each of some measures. What is wrong is told at its box at once, with what is possible in the units that are typed;
 * a box that stays empty stands for a stated number, which is seen in it in grey.
 *
 * @param <E> the measures; a box is made when it is put somewhere
 */
public final class MeasureBoxes<E extends Enum<E> & MeasureBoxes.Measure> {
    /** What is measured. */
    public interface Measure {
        /** Name of its text. */
        String textKey();

        /** Whether nothing can stand for it. */
        default boolean needed() {
            return false;
        }

        /** Where it stands in the library's records. */
        Held<?> held();
    }

    /**
     * A number of a record.
     *
     * @param component name of the value
     * @param unit in which it is held
     * @param of takes it
     */
    public record Held<T>(String component, Unit unit, ToDoubleFunction<T> of) {}

    private static final String NAME = "name";
    private static final int AROUND_PX = 40;
    private static final int COLUMNS = 10;

    private final Map<E, NumberBox> boxes;
    private final Map<E, Prose> labels;
    private final Map<E, String> faults;
    private final ToDoubleFunction<E> assumed;
    private final Consumer<ToDoubleFunction<E>> maker;
    private Optional<JTextField> name = Optional.empty();
    private Runnable typed = () -> {};
    private Dress dress;

    /**
     * @param assumed what stands for an empty box; NaN for nothing
     * @param maker makes of numbers what they are for; throws when they cannot be
     */
    public MeasureBoxes(Class<E> kind, ToDoubleFunction<E> assumed, Consumer<ToDoubleFunction<E>> maker, Dress dress) {
        this.assumed = assumed;
        this.maker = maker;
        this.dress = dress;
        boxes = new EnumMap<>(kind);
        labels = new EnumMap<>(kind);
        faults = new EnumMap<>(kind);
    }

    /** A box scrolls into sight when it is reached, and what stands in it is typed over. */
    private void watch(NumberBox box) {
        box.onChange(this::check);
        box.field().addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                JTextField field = box.field();
                field.scrollRectToVisible(
                        new Rectangle(0, -AROUND_PX, field.getWidth(), field.getHeight() + 2 * AROUND_PX));
                field.selectAll();
            }
        });
    }

    /** Makes one: its name, and what is wrong with it, over its box, which is as wide as its place or has its own width. */
    public JPanel make(E measure, boolean fills) {
        NumberBox box = new NumberBox(measure.textKey(), measure.held().unit(), dress);
        Prose label = new Prose();
        label.setName(measure.textKey() + ".label");
        boxes.put(measure, box);
        labels.put(measure, label);
        watch(box);
        show(measure, label);
        // Plain layouts: there are many of these, and to lay out the first of each takes its time.
        JPanel row = new JPanel(new BorderLayout());
        row.setOpaque(false);
        box.field().setColumns(COLUMNS);
        box.field().putClientProperty("JTextField.trailingComponent", box.symbol());
        row.add(box.field(), fills ? BorderLayout.CENTER : BorderLayout.WEST);
        JPanel one = new JPanel(new BorderLayout());
        one.setOpaque(false);
        one.add(label, BorderLayout.NORTH);
        one.add(row, BorderLayout.SOUTH);
        return one;
    }

    /** What has these measures is named here; the name is kept with them. */
    public void named(JTextField field) {
        name = Optional.of(field);
        NumberBox.onTyping(field, () -> typed.run());
    }

    /** Calls this whenever something is typed. */
    public void onTyped(Runnable listener) {
        typed = listener;
    }

    /** The box of a measure. */
    public NumberBox box(E measure) {
        return boxes.get(measure);
    }

    /** All of them together; a wrong one is told, left out, and the others are tried again, so that each wrong one is told. */
    public void check() {
        faults.clear();
        Map<E, Double> numbers = numbers();
        Optional<E> wrong = refused(numbers);
        while (wrong.isPresent() && numbers.remove(wrong.get()) != null) {
            wrong = refused(numbers);
        }
        if (!go(numbers)) {
            // What is left empty does not go with what was typed: each typed one is tried by itself.
            numbers.forEach((each, value) -> {
                Map<E, String> before = new HashMap<>(faults);
                if (!refused(Map.of(each, value)).equals(Optional.of(each))) {
                    faults.clear();
                    faults.putAll(before);
                }
            });
        }
        labels.forEach(this::show);
        typed.run();
    }

    private Map<E, Double> numbers() {
        Map<E, Double> numbers = new HashMap<>();
        boxes.forEach((each, box) -> {
            try {
                box.value().ifPresent(value -> numbers.put(each, value));
            } catch (NumberBox.NotANumber e) {
                faults.put(each, dress.text("measure.notANumber", e.typed()));
            }
        });
        return numbers;
    }

    /** The box that cannot be taken, which is told what can; what is left empty stands for a stated number. */
    private Optional<E> refused(Map<E, Double> numbers) {
        try {
            maker.accept(each -> numbers.getOrDefault(each, assumed.applyAsDouble(each)));
            return Optional.empty();
        } catch (OutOfRangeException e) {
            List<E> named = boxes.keySet().stream()
                    .filter(each -> each.held().component().equals(e.name()))
                    .toList();
            Optional<E> wrong = named.stream()
                    .filter(each -> Double.valueOf(e.value()).equals(numbers.get(each)))
                    .findFirst()
                    .or(() -> named.stream().filter(numbers::containsKey).findFirst())
                    .or(() -> named.stream().findFirst());
            wrong.ifPresent(each -> faults.put(
                    each,
                    dress.text(
                            "measure.outOfRange",
                            new Bounds(
                                    e.limits().low(),
                                    e.limits().high(),
                                    each.held().unit()))));
            return wrong;
        } catch (IllegalArgumentException e) {
            // What does not go with the others is the box without which all goes.
            Optional<E> wrong = numbers.keySet().stream()
                    .filter(each -> {
                        Map<E, Double> others = new HashMap<>(numbers);
                        others.remove(each);
                        return go(others);
                    })
                    .findFirst();
            wrong.ifPresent(each -> faults.put(each, dress.text("measure.withOthers")));
            return wrong;
        }
    }

    private boolean go(Map<E, Double> numbers) {
        try {
            maker.accept(each -> numbers.getOrDefault(each, assumed.applyAsDouble(each)));
            return true;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private void show(E measure, Prose label) {
        NumberBox box = boxes.get(measure);
        String fault = faults.get(measure);
        double number = assumed.applyAsDouble(measure);
        String stated = measure.needed()
                ? dress.text("measure.needed")
                : Double.isNaN(number)
                        ? dress.text("measure.none")
                        : dress.text(
                                "measure.assumed",
                                dress.words()
                                        .book()
                                        .typed(number, measure.held().unit()));
        boolean empty = box.field().getText().isBlank();
        box.mark(fault != null);
        label.setText(fault == null ? box.name() : dress.text("ask.named", box.name(), fault));
        label.setForeground(
                fault == null ? dress.palette().ink() : dress.palette().danger());
        box.field().putClientProperty("JTextField.placeholderText", stated);
        box.field().getAccessibleContext().setAccessibleDescription(fault != null ? fault : empty ? stated : null);
        box.field().repaint();
    }

    /** How many boxes cannot be taken. */
    public int faults() {
        return faults.size();
    }

    /** The first box that cannot be taken, else the first that is needed and empty. */
    public Optional<NumberBox> firstFault() {
        return faults.keySet().stream().findFirst().or(this::missing).map(boxes::get);
    }

    private Optional<E> missing() {
        return boxes.keySet().stream()
                .filter(each ->
                        each.needed() && boxes.get(each).field().getText().isBlank())
                .findFirst();
    }

    /** All numbers, typed or assumed; only when nothing is wrong. */
    public ToDoubleFunction<E> values() {
        Map<E, Double> numbers = numbers();
        return each -> numbers.getOrDefault(each, assumed.applyAsDouble(each));
    }

    /** What was left empty, in words; empty when nothing was. */
    public String assumedWords() {
        return boxes.keySet().stream()
                .filter(each ->
                        boxes.get(each).field().getText().isBlank() && !Double.isNaN(assumed.applyAsDouble(each)))
                .map(each -> dress.text(
                        "ask.named",
                        boxes.get(each).name(),
                        Quantity.of(assumed.applyAsDouble(each), each.held().unit())))
                .collect(Collectors.joining("; "));
    }

    /** What was typed, by the names of the measures. */
    public Map<String, String> kept() {
        Map<String, String> kept = new HashMap<>();
        name.map(JTextField::getText).filter(text -> !text.isBlank()).ifPresent(text -> kept.put(NAME, text));
        boxes.entrySet().stream()
                .filter(each -> !each.getValue().field().getText().isBlank())
                .forEach(each ->
                        kept.put(each.getKey().name(), each.getValue().field().getText()));
        return kept;
    }

    /** Puts back what was typed. */
    public void again(Map<String, String> kept) {
        name.ifPresent(field -> field.setText(kept.getOrDefault(NAME, "")));
        boxes.forEach((each, box) -> box.field().setText(kept.getOrDefault(each.name(), "")));
    }

    /** Shows numbers in all boxes. */
    public void show(ToDoubleFunction<E> numbers) {
        boxes.forEach((each, box) -> {
            double value = numbers.applyAsDouble(each);
            if (Double.isNaN(value)) {
                box.clear();
            } else {
                box.show(value);
            }
        });
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        boxes.values().forEach(box -> box.dress(other));
        check();
    }
}
