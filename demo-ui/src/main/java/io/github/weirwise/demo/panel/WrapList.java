package io.github.weirwise.demo.panel;

import java.awt.EventQueue;
import java.awt.Rectangle;
import javax.swing.JList;
import javax.swing.ListModel;

/**
 * A list whose lines wrap at its width; when the width changes, the heights of its lines are measured anew.
 *
 * @param <T> what a line stands for
 */
public final class WrapList<T> extends JList<T> {
    private static final long serialVersionUID = 1L;
    private static final int ANY_HEIGHT = 24;

    private int measuredWidth;

    /** A list of a model. */
    public WrapList(ListModel<T> model) {
        super(model);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public void doLayout() {
        super.doLayout();
        measure();
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        measure();
    }

    /** Cell heights are kept by the look and feel until something about the cells changes. */
    private void measure() {
        if (getWidth() != measuredWidth && getWidth() > 0) {
            measuredWidth = getWidth();
            setFixedCellHeight(ANY_HEIGHT);
            setFixedCellHeight(-1);
            revalidate();
            EventQueue.invokeLater(this::revalidate);
        }
    }

    /** The width that lines may take. */
    public static int roomFor(JList<?> list) {
        Rectangle seen = list.getVisibleRect();
        int width = list.getWidth() > 0 ? list.getWidth() : seen.width;
        return Math.max(120, width);
    }
}
