package io.github.weirwise.demo.panel;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Insets;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;

/** Text that wraps at the width it is given and takes the height it needs. */
public final class Prose extends JTextArea {
    private static final long serialVersionUID = 1L;
    private static final int USUAL_WIDTH = 380;
    /** At another scale a line may be some pixels wider than it was measured. */
    private static final int SPARE_PX = 14;

    /** An empty text. */
    public Prose() {
        setLineWrap(true);
        setWrapStyleWord(true);
        setEditable(false);
        setFocusable(false);
        setOpaque(false);
        setBackground(new Color(0, 0, 0, 0));
        setBorder(BorderFactory.createEmptyBorder(0, 0, 0, SPARE_PX));
        setMargin(new Insets(0, 0, 0, 0));
        setFont(javax.swing.UIManager.getFont("Label.font"));
    }

    /** A text for a renderer: as it is when it fits into a width, else as a paragraph of that width. */
    public static String wrapped(String text, int width, int textWidth) {
        return WrappedLine.wrapped(text, width, textWidth);
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(0, 0, 0, SPARE_PX));
        setFont(javax.swing.UIManager.getFont("Label.font"));
    }

    @Override
    public Dimension getPreferredSize() {
        if (getWidth() <= 0) {
            setSize(USUAL_WIDTH, Short.MAX_VALUE);
        }
        Dimension size = super.getPreferredSize();
        return new Dimension(40, size.height);
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(40, getPreferredSize().height);
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean otherWidth = width != getWidth();
        super.setBounds(x, y, width, height);
        if (otherWidth) {
            revalidate();
            // While a layout is under way the line above is lost, so the height is asked for once more after it.
            EventQueue.invokeLater(this::revalidate);
        }
    }
}
