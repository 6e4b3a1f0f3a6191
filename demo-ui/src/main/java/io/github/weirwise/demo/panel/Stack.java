package io.github.weirwise.demo.panel;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;

/**
 * Screens that lie one on another, with one in sight. The hidden ones are laid out beforehand, so that turning to one costs
 * no more than painting it; a hidden screen that has become invalid is laid out when {@link #settle} comes to it.
 */
public class Stack extends JPanel {
    private static final long serialVersionUID = 1L;

    private transient Optional<JComponent> shown = Optional.empty();

    /** An empty stack. */
    public Stack() {
        super(new BorderLayout());
        setOpaque(false);
    }

    /** Keeps a screen ready, out of sight. */
    public final void keep(JComponent screen) {
        if (screen.getParent() != this) {
            screen.setVisible(false);
            add(screen);
        }
    }

    /** Turns to a screen. */
    public final void hold(JComponent screen) {
        keep(screen);
        if (shown.filter(now -> now == screen).isEmpty()) {
            shown.ifPresent(now -> now.setVisible(false));
            shown = Optional.of(screen);
        }
        screen.setVisible(true);
        revalidate();
        repaint();
    }

    /** Lets a screen go. */
    public final void drop(JComponent screen) {
        remove(screen);
        shown = shown.filter(now -> now != screen);
    }

    /** Lays out one hidden screen that needs it; tells whether there was one. */
    public final boolean settle() {
        for (Component screen : getComponents()) {
            if (!screen.isVisible() && (!screen.isValid() || !screen.getSize().equals(getSize()))) {
                screen.setBounds(0, 0, getWidth(), getHeight());
                screen.validate();
                return true;
            }
        }
        return false;
    }

    @Override
    public void doLayout() {
        shown.ifPresent(screen -> screen.setBounds(0, 0, getWidth(), getHeight()));
    }

    @Override
    public Dimension getPreferredSize() {
        return shown.map(Component::getPreferredSize).orElseGet(Dimension::new);
    }

    @Override
    public Dimension getMinimumSize() {
        return shown.map(Component::getMinimumSize).orElseGet(Dimension::new);
    }
}
