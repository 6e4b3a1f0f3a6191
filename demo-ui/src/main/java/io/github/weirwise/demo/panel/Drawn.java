package io.github.weirwise.demo.panel;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** Something that is drawn, and told in words to whoever does not see it. */
public abstract class Drawn extends JComponent {
    private static final long serialVersionUID = 1L;

    private String told = "";

    /** A drawing called so, of a least and a wanted size. */
    protected Drawn(String name, Dimension least, Dimension wanted) {
        setName(name);
        setMinimumSize(least);
        setPreferredSize(wanted);
    }

    /** What it shows, as a name. */
    protected abstract String title();

    /** What it shows, in words. */
    public abstract String describe();

    /** Draws it, smoothly. */
    protected abstract void draw(Graphics2D graphics);

    /** Shows something else, and tells so. */
    protected final void change(Runnable change) {
        change.run();
        anew();
    }

    /** Draws what is so now, and tells it when it is something else than before. */
    public final void anew() {
        String now = describe();
        if (accessibleContext != null && !now.equals(told)) {
            accessibleContext.firePropertyChange(AccessibleContext.ACCESSIBLE_DESCRIPTION_PROPERTY, told, now);
        }
        told = now;
        repaint();
    }

    @Override
    protected final void paintComponent(Graphics g) {
        Graphics2D graphics = (Graphics2D) g.create();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            draw(graphics);
        } finally {
            graphics.dispose();
        }
    }

    @Override
    public final AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.CANVAS;
                }

                @Override
                public String getAccessibleName() {
                    return title();
                }

                @Override
                public String getAccessibleDescription() {
                    return describe();
                }
            };
        }
        return accessibleContext;
    }
}
