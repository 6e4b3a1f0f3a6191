package io.github.weirwise.demo.panel;

import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;

/**
 * Buttons of which one is down. Tab stops at that one only, as Swing has it for groups; the arrow keys go on from there to
 * the others and press them.
 */
public final class Group {
    private final ButtonGroup group = new ButtonGroup();
    private final List<JToggleButton> buttons = new ArrayList<>();

    /** One more button at the end. */
    public void add(JToggleButton button) {
        group.add(button);
        buttons.add(button);
        bind(button, KeyEvent.VK_RIGHT, 1);
        bind(button, KeyEvent.VK_DOWN, 1);
        bind(button, KeyEvent.VK_LEFT, -1);
        bind(button, KeyEvent.VK_UP, -1);
    }

    private void bind(JToggleButton button, int key, int by) {
        String name = "walk" + key;
        button.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key, 0), name);
        button.getActionMap().put(name, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                int to = Math.floorMod(buttons.indexOf(button) + by, buttons.size());
                buttons.get(to).requestFocusInWindow();
                buttons.get(to).doClick();
            }
        });
    }
}
