package io.github.weirwise.demo.panel;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;

/**
 * Screens that lie one on another, with one in sight. Hidden ones are left alone while the window is laid out; each is laid
 * out when {@link #settle} comes to it, so that turning to one costs little more than painting it.
 */
public class Stack extends JPanel {
    private static final long serialVersionUID = 1L;

    private transient Optional<Layer> shown = Optional.empty();

    /** An empty stack. */
    public Stack() {
        super(new BorderLayout());
        setOpaque(false);
    }

    /** One screen, which is not laid out with the rest of the window while it is hidden. */
    private static final class Layer extends JPanel {
        private static final long serialVersionUID = 1L;

        Layer(JComponent screen) {
            super(new BorderLayout());
            setOpaque(false);
            setVisible(false);
            add(screen);
        }

        boolean holds(JComponent screen) {
            return getComponent(0) == screen;
        }

        @Override
        protected void validateTree() {
            if (isVisible()) {
                super.validateTree();
            }
        }

        void layOut() {
            synchronized (getTreeLock()) {
                super.validateTree();
            }
        }
    }

    private Optional<Layer> layer(JComponent screen) {
        for (Component each : getComponents()) {
            if (each instanceof Layer layer && layer.holds(screen)) {
                return Optional.of(layer);
            }
        }
        return Optional.empty();
    }

    private Layer layerFor(JComponent screen) {
        return layer(screen).orElseGet(() -> {
            Layer made = new Layer(screen);
            add(made);
            return made;
        });
    }

    /** Keeps a screen ready, out of sight. */
    public final void keep(JComponent screen) {
        layerFor(screen);
    }

    /** Turns to a screen. */
    public final void hold(JComponent screen) {
        Layer layer = layerFor(screen);
        shown.filter(now -> now != layer).ifPresent(now -> now.setVisible(false));
        shown = Optional.of(layer);
        layer.setVisible(true);
        revalidate();
        repaint();
    }

    /** Lets a screen go. */
    public final void drop(JComponent screen) {
        layer(screen).ifPresent(layer -> {
            remove(layer);
            shown = shown.filter(now -> now != layer);
        });
    }

    /** Lays out one hidden screen that needs it. */
    public final void settle() {
        for (Component each : getComponents()) {
            if (each instanceof Layer layer
                    && !layer.isVisible()
                    && (!layer.isValid() || !layer.getSize().equals(getSize()))) {
                layer.setBounds(0, 0, getWidth(), getHeight());
                layer.layOut();
                return;
            }
        }
    }

    @Override
    public void doLayout() {
        shown.ifPresent(layer -> layer.setBounds(0, 0, getWidth(), getHeight()));
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
