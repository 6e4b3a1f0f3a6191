package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import java.awt.Component;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultListModel;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;

/** A page with a sentence on top, a list of lines with their states, and all about the picked line below. */
public class ListPage extends Card {
    private static final long serialVersionUID = 1L;

    private final JPanel tools = new JPanel(new MigLayout("insets 0, gapx 6, hidemode 3, nogrid"));
    private final Prose summary = new Prose();
    private final DefaultListModel<Row> rows = new DefaultListModel<>();
    private final WrapList<Row> list = new WrapList<>(rows);
    private final Prose detail = new Prose();
    private transient Dress dress;

    protected ListPage(String name, Dress dress) {
        super(dress.palette(), "[grow,fill]", "[][][grow 60,fill][grow 40,fill]");
        this.dress = dress;
        list.setName(name + ".list");
        list.setCellRenderer(new Line());
        list.addListSelectionListener(e -> showDetail());
        detail.setName(name + ".detail");
        tools.setOpaque(false);
        body().add(tools, "growx, wrap");
        body().add(summary, "growx, wrap");
        JScrollPane lines =
                new JScrollPane(list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        body().add(lines, "grow, push, h 110:260:, wrap");
        JScrollPane about = Sheet.around(detail);
        body().add(about, "grow, push, h 90:180:");
    }

    private void showDetail() {
        Row row = list.getSelectedValue();
        detail.setText(row == null ? "" : row.detail());
        detail.setCaretPosition(0);
    }

    /** Shows other lines, keeping the place in the list. */
    protected final void show(String sentence, List<Row> lines) {
        summary.setText(sentence);
        int picked = Math.max(0, list.getSelectedIndex());
        if (!lines.equals(java.util.Collections.list(rows.elements()))) {
            rows.clear();
            lines.forEach(rows::addElement);
        }
        if (!lines.isEmpty()) {
            list.setSelectedIndex(Math.min(picked, lines.size() - 1));
        }
        showDetail();
    }

    /** Brings the last line into sight. */
    protected final void seeLast() {
        list.ensureIndexIsVisible(rows.size() - 1);
    }

    /** Calls this when another line is picked. */
    protected final void onPick(Runnable listener) {
        list.addListSelectionListener(e -> listener.run());
    }

    protected final Optional<Integer> picked() {
        return list.getSelectedIndex() < 0 ? Optional.empty() : Optional.of(list.getSelectedIndex());
    }

    /** A part of the row of tools; the next one begins a new row. */
    protected final void putLast(JComponent part) {
        tools.add(part, constraints(part) + ", wrap");
    }

    /** A part of the row of tools. */
    protected final void put(JComponent part) {
        tools.add(part, constraints(part));
    }

    private static String constraints(JComponent part) {
        if (part instanceof JComboBox) {
            return "wmin 60, pushx, growx";
        }
        return part instanceof JCheckBox ? "w pref+12!" : "w pref";
    }

    protected final Dress dress() {
        return dress;
    }

    @Override
    protected final void dress(String title, Dress other) {
        dress = other;
        super.dress(title, other);
        list.getAccessibleContext().setAccessibleName(title);
    }

    /** A line with its mark and its state in words. */
    private final class Line extends WrappedLine {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> within, Object value, int index, boolean selected, boolean focused) {
            Row row = (Row) value;
            super.getListCellRendererComponent(within, row, index, selected, focused);
            setIcon(new MarkIcon(row.mark(), dress.palette()));
            return this;
        }
    }
}
