package io.github.weirwise.demo;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.accessibility.AccessibleContext;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JTable;
import javax.swing.JTree;
import javax.swing.border.TitledBorder;
import javax.swing.text.JTextComponent;

/** Gathers everything that a tree of components says: to the eye, in tool tips, and to a screen reader. */
public final class ShownTexts {
    private final Set<String> texts = new LinkedHashSet<>();

    private ShownTexts() {}

    /** All that is said below a component, and by it. */
    public static Set<String> of(Component root) {
        ShownTexts all = new ShownTexts();
        all.take(root);
        return all.texts;
    }

    private void take(Component part) {
        heard(part);
        seen(part);
        List<Component> inside = new ArrayList<>();
        if (part instanceof JMenu menu) {
            inside.addAll(List.of(menu.getMenuComponents()));
        }
        if (part instanceof Container container) {
            inside.addAll(List.of(container.getComponents()));
        }
        inside.forEach(this::take);
    }

    private void heard(Component part) {
        AccessibleContext context = part.getAccessibleContext();
        if (context != null) {
            add(context.getAccessibleName());
            add(context.getAccessibleDescription());
        }
    }

    private void seen(Component part) {
        if (part instanceof JLabel label) {
            add(label.getText());
        } else if (part instanceof AbstractButton button) {
            add(button.getText());
        } else if (part instanceof JTextComponent text) {
            add(text.getText());
        } else if (part instanceof JComboBox<?> box) {
            for (int i = 0; i < box.getItemCount(); i++) {
                add(String.valueOf(box.getItemAt(i)));
            }
        } else if (part instanceof JList<?> list) {
            for (int i = 0; i < list.getModel().getSize(); i++) {
                add(String.valueOf(list.getModel().getElementAt(i)));
            }
        } else if (part instanceof JTree tree) {
            for (int i = 0; i < tree.getRowCount(); i++) {
                add(String.valueOf(tree.getPathForRow(i).getLastPathComponent()));
            }
        } else if (part instanceof JTable table) {
            for (int column = 0; column < table.getColumnCount(); column++) {
                add(table.getColumnName(column));
                for (int row = 0; row < table.getRowCount(); row++) {
                    add(String.valueOf(table.getValueAt(row, column)));
                }
            }
        }
        if (part instanceof JComponent component) {
            add(component.getToolTipText());
            if (component.getBorder() instanceof TitledBorder border) {
                add(border.getTitle());
            }
        }
    }

    private void add(String text) {
        if (text != null && !text.isBlank()) {
            texts.add(text.replaceAll("<[^>]+>", ""));
        }
    }
}
