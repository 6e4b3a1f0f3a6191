package io.github.weirwise.demo.panel;

import java.awt.Component;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;

/** A line of a list that wraps at the list's width instead of running out of sight. */
final class WrappedLine extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1L;
    private static final int MARGIN_PX = 40;

    @Override
    public Component getListCellRendererComponent(
            JList<?> list, Object value, int index, boolean selected, boolean focused) {
        super.getListCellRendererComponent(list, value, index, selected, focused);
        int width = WrapList.roomFor(list) - MARGIN_PX;
        setText(wrapped(String.valueOf(value), width, getFontMetrics(getFont()).stringWidth(String.valueOf(value))));
        return this;
    }

    /** The text as it is when it fits, else as a paragraph of a width. */
    static String wrapped(String text, int width, int textWidth) {
        if (textWidth <= width) {
            return text;
        }
        String safe = text.replace("&", "&amp;").replace("<", "&lt;");
        return "<html><body style='width:" + width + "pt'>" + safe;
    }
}
