package io.github.weirwise.demo.panel;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Insets;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;
import javax.swing.text.View;

/** Text that wraps at the width it is given and takes the height it needs. */
public final class Prose extends JTextArea {
    private static final long serialVersionUID = 1L;
    private static final int USUAL_WIDTH = 380;
    /** At another scale a line may be some pixels wider than it was measured. */
    private static final int SPARE_PX = 24;

    /** A line that just fits when it is measured may be broken when it is painted, and one line more be wanted. */
    private static final int UNSURE_PX = 2;

    private static final int LEAST_WIDTH = 40;

    private int width;

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
        ((DefaultCaret) getCaret()).setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        setFont(javax.swing.UIManager.getFont("Label.font"));
    }

    /** Text that nobody edits needs no caret that follows it about. */
    @Override
    public void setText(String text) {
        if (!text.equals(getText())) {
            super.setText(text);
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(0, 0, 0, SPARE_PX));
        setFont(javax.swing.UIManager.getFont("Label.font"));
    }

    /** As high as the text is at the width given last; asking changes nothing. */
    @Override
    public Dimension getPreferredSize() {
        return new Dimension(LEAST_WIDTH, heightAt(width > 0 ? width : USUAL_WIDTH));
    }

    private int heightAt(int ofWidth) {
        Insets around = getInsets();
        View text = getUI().getRootView(this);
        text.setSize(Math.max(1, ofWidth - around.left - around.right - UNSURE_PX), Short.MAX_VALUE);
        return (int) Math.ceil(text.getPreferredSpan(View.Y_AXIS)) + around.top + around.bottom;
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    /** A part that is hidden gets no width; it keeps the one it had, else it would ask to be laid out for ever. */
    @Override
    public void setBounds(int x, int y, int newWidth, int height) {
        super.setBounds(x, y, newWidth, height);
        // MigLayout tries a part that has no size yet at one pixel's width or height; that is no size to wrap for.
        if (height > 1 && newWidth > 1 && newWidth != width) {
            int before = getPreferredSize().height;
            width = newWidth;
            if (getPreferredSize().height != before) {
                revalidate();
                // While a layout is under way the line above is lost, so the height is asked for once more after it.
                EventQueue.invokeLater(this::revalidate);
            }
        }
    }
}
