package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Card;
import java.awt.AWTKeyStroke;
import java.awt.CardLayout;
import java.awt.KeyboardFocusManager;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.Set;
import java.util.Vector;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JToggleButton;
import javax.swing.table.DefaultTableModel;

/** A chart with its heading and its twin, a table of the same numbers, one key away. */
public final class ChartCard extends Card {
    private static final long serialVersionUID = 1L;
    private static final AWTKeyStroke TAB = AWTKeyStroke.getAWTKeyStroke(KeyEvent.VK_TAB, 0);
    private static final AWTKeyStroke SHIFT_TAB =
            AWTKeyStroke.getAWTKeyStroke(KeyEvent.VK_TAB, InputEvent.SHIFT_DOWN_MASK);

    private final String textKey;
    private final ChartView view;
    private transient Optional<JTable> table = Optional.empty();
    private final JToggleButton asTable = new JToggleButton();
    private final JPanel both = new JPanel(new CardLayout());
    private transient Dress dress;

    /** A card for a drawing; texts are {@code chart.title.key}, {@code chart.name.key}, {@code chart.table.key}. */
    public ChartCard(String textKey, Drawing drawing, Dress dress) {
        super(dress.palette(), "[grow,fill]", "[grow,fill]");
        this.textKey = textKey;
        this.dress = dress;
        view = new ChartView(textKey, drawing, dress);
        asTable.setName(textKey + ".asTable");
        asTable.addActionListener(e -> turn());
        both.setOpaque(false);
        both.add(view, "chart");
        beside(asTable);
        body().add(both, "grow, push");
        dress(dress);
    }

    private void turn() {
        if (asTable.isSelected()) {
            fill();
        }
        ((CardLayout) both.getLayout()).show(both, asTable.isSelected() ? "table" : "chart");
        if (asTable.isSelected()) {
            table().requestFocusInWindow();
        }
    }

    private JTable table() {
        JTable there = table.orElseGet(() -> {
            JTable made = new JTable();
            made.setName(textKey + ".table");
            made.setFillsViewportHeight(true);
            made.setDefaultEditor(Object.class, null);
            // In a table that is only read, Tab leaves it instead of walking through the cells.
            made.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, Set.of(TAB));
            made.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, Set.of(SHIFT_TAB));
            JScrollPane rows = new JScrollPane(made);
            made.getTableHeader().setFocusable(false);
            rows.setColumnHeaderView(made.getTableHeader());
            both.add(rows, "table");
            return made;
        });
        table = Optional.of(there);
        return there;
    }

    private void fill() {
        DefaultTableModel model =
                new DefaultTableModel(new Vector<>(view.drawing().columns(dress.words())), 0);
        view.drawing().rows(dress.words()).forEach(row -> model.addRow(new Vector<>(row)));
        table().setModel(model);
        table().getAccessibleContext()
                .setAccessibleName(dress.text("chart.asTable", asTable.getText(), dress.text("chart.name." + textKey)));
    }

    /** Shows another drawing. */
    public void show(Drawing drawing) {
        boolean same = drawing.equals(view.drawing());
        view.show(drawing);
        if (!same && asTable.isSelected()) {
            fill();
        }
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        head(other.text("chart.title." + textKey));
        paper(other.palette());
        view.dress(other);
        Buttons.name(asTable, other, "chart.table." + textKey);
        asTable.getAccessibleContext()
                .setAccessibleName(
                        other.text("chart.asTable", asTable.getText(), other.text("chart.title." + textKey)));
        if (asTable.isSelected()) {
            fill();
        }
    }
}
