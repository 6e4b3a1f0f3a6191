package io.github.weirwise.demo.panel;

import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** Something that is painted, and told in words to whoever does not see it. */
public abstract class Told extends JComponent {
    private static final long serialVersionUID = 1L;

    private String told = "";

    /** What it shows, as a name. */
    protected abstract String title();

    /** What it shows, in words. */
    public abstract String describe();

    /** Shows something else, and tells so. */
    protected final void change(Runnable change) {
        change.run();
        anew();
    }

    /** Shows what is so now, and tells it when it is something else than before. */
    public final void anew() {
        if (accessibleContext != null) {
            String before = told;
            told = describe();
            if (!told.equals(before)) {
                accessibleContext.firePropertyChange(AccessibleContext.ACCESSIBLE_DESCRIPTION_PROPERTY, before, told);
            }
        }
        repaint();
    }

    @Override
    public final AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            told = describe();
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
