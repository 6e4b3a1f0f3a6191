package io.github.weirwise.demo.panel;

import java.awt.Component;
import java.awt.Container;
import javax.swing.JComponent;
import javax.swing.LayoutFocusTraversalPolicy;

/**
 * While a panel is put together anew the focus stays with the panel when what has it goes away. AWT would pass it on to whatever
 * comes next, and forget the keys that wait for that when that goes away too.
 */
public final class HeldFocus extends LayoutFocusTraversalPolicy {
    private static final long serialVersionUID = 1L;

    private final JComponent holder;

    /** Lets a panel hold the focus. */
    public HeldFocus(JComponent holder) {
        this.holder = holder;
        holder.setFocusTraversalPolicy(this);
    }

    /** Changes what is in the panel; before and after, the focus goes round as everywhere. */
    public void during(Runnable change) {
        boolean before = holder.isFocusTraversalPolicyProvider();
        holder.setFocusTraversalPolicyProvider(true);
        try {
            change.run();
        } finally {
            holder.setFocusTraversalPolicyProvider(before);
        }
    }

    @Override
    public Component getComponentAfter(Container within, Component part) {
        return holder;
    }
}
