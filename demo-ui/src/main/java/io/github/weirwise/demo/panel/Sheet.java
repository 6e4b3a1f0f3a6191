package io.github.weirwise.demo.panel;

import java.awt.Component;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;

/** Content that is as wide as the scroll pane that holds it and as high as it needs, or as that where it can be made so. */
public final class Sheet extends JPanel implements Scrolled {
    private static final long serialVersionUID = 1L;

    /** An empty sheet of two columns, names and what belongs to them. */
    public Sheet() {
        this("[]10[grow,fill]");
    }

    /** An empty sheet with the given columns of MigLayout. */
    public Sheet(String columns) {
        super(new MigLayout("insets 0, fillx, hidemode 3", columns, ""));
        setOpaque(false);
    }

    /** Lets a part scroll up and down, without a frame and with what is behind it shining through. */
    public static JScrollPane around(Component part) {
        return Scrolled.around(part);
    }
}
