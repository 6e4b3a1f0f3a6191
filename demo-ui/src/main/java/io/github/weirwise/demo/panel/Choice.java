package io.github.weirwise.demo.panel;

import java.awt.Insets;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;

/**
 * A row of pictures of which one, or none, is picked: a press picks, a second press lets go, arrow keys walk along.
 *
 * @param <T> what is picked
 */
public final class Choice<T> {
    private final List<T> values;
    private final List<JToggleButton> buttons = new ArrayList<>();
    private final JPanel row;
    private Runnable changed = () -> {};

    /** A choice among values; its buttons are called by name and value. */
    public Choice(String name, List<T> values) {
        this.values = List.copyOf(values);
        row = new JPanel(new MigLayout("insets 0, gapx 4, nogrid"));
        row.setOpaque(false);
        row.setName(name);
        for (int i = 0; i < values.size(); i++) {
            JToggleButton button = new JToggleButton();
            button.setMargin(new Insets(3, 4, 3, 4));
            button.setHorizontalTextPosition(SwingConstants.CENTER);
            button.setVerticalTextPosition(SwingConstants.BOTTOM);
            button.setIconTextGap(2);
            button.setName(name + "." + values.get(i));
            button.addActionListener(e -> only(button));
            buttons.add(button);
            row.add(button);
        }
        for (int i = 0; i < buttons.size(); i++) {
            walk(i, KeyEvent.VK_RIGHT, Math.min(i + 1, buttons.size() - 1));
            walk(i, KeyEvent.VK_LEFT, Math.max(i - 1, 0));
        }
    }

    private void walk(int from, int key, int to) {
        Buttons.onKey(
                buttons.get(from),
                JComponent.WHEN_FOCUSED,
                KeyStroke.getKeyStroke(key, 0),
                () -> buttons.get(to).requestFocusInWindow());
    }

    private void only(JToggleButton picked) {
        buttons.stream().filter(button -> button != picked).forEach(button -> button.setSelected(false));
        changed.run();
    }

    /** Calls this after every press. */
    public void onChange(Runnable listener) {
        changed = listener;
    }

    /** Picks one. */
    public void pick(T value) {
        buttons.get(values.indexOf(value)).setSelected(true);
    }

    /** The first button. */
    public JComponent first() {
        return buttons.get(0);
    }

    /** What is picked, if anything is. */
    public Optional<T> picked() {
        for (int i = 0; i < buttons.size(); i++) {
            if (buttons.get(i).isSelected()) {
                return Optional.of(values.get(i));
            }
        }
        return Optional.empty();
    }

    /** Lets go of what was picked. */
    public void clear() {
        buttons.forEach(button -> button.setSelected(false));
    }

    /** Sets icons, short labels and full names. */
    public void show(Function<T, Icon> icon, Function<T, String> label, Function<T, String> name, float fontSize) {
        for (int i = 0; i < values.size(); i++) {
            JToggleButton button = buttons.get(i);
            button.setIcon(icon.apply(values.get(i)));
            button.setText(label.apply(values.get(i)));
            button.setFont(button.getFont().deriveFont(fontSize));
            button.setToolTipText(name.apply(values.get(i)));
            button.getAccessibleContext().setAccessibleName(name.apply(values.get(i)));
        }
    }

    /** The buttons in their row. */
    public JPanel row() {
        return row;
    }
}
