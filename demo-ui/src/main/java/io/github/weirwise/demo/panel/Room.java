package io.github.weirwise.demo.panel;

import java.awt.BorderLayout;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** Room that is left over: what it can hold is made when there is enough of it for the first time, and is seen only then. */
public final class Room extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int LEAST_PX = 260;

    private final transient Supplier<? extends JComponent> maker;

    /** Room for what is made by this. */
    public Room(Supplier<? extends JComponent> maker) {
        super(new BorderLayout());
        this.maker = maker;
        setOpaque(false);
    }

    @Override
    public void doLayout() {
        boolean enough = getHeight() >= LEAST_PX;
        if (enough && getComponentCount() == 0) {
            add(maker.get());
        }
        if (getComponentCount() > 0) {
            getComponent(0).setVisible(enough);
        }
        super.doLayout();
    }
}
