package io.github.weirwise.demo.panel;

import com.formdev.flatlaf.ui.FlatUIUtils;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;

/**
 * A line of a list that wraps at the list's width instead of running out of sight. It breaks its text itself: a text in HTML
 * would do the same and take many times as long.
 */
public class WrappedLine extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1L;
    private static final int SPARE_PX = 16;

    private int room;

    @Override
    public Component getListCellRendererComponent(
            JList<?> list, Object value, int index, boolean selected, boolean focused) {
        super.getListCellRendererComponent(list, String.valueOf(value), index, selected, focused);
        setBorder(BorderFactory.createEmptyBorder(3, 6, 3, 6));
        room = WrapList.roomFor(list);
        return this;
    }

    private int textLeft() {
        return getInsets().left + (getIcon() == null ? 0 : getIcon().getIconWidth() + getIconTextGap());
    }

    private List<String> lines() {
        return broken(getText(), getFontMetrics(getFont()), room - textLeft() - getInsets().right - SPARE_PX);
    }

    /** A text in lines that are no wider than given, broken at spaces; a word that is too long stays whole. */
    public static List<String> broken(String text, FontMetrics metrics, int widthPx) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && metrics.stringWidth(longer) > widthPx) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    @Override
    public Dimension getPreferredSize() {
        Insets around = getInsets();
        int icon = getIcon() == null ? 0 : getIcon().getIconHeight();
        int text = lines().size() * getFontMetrics(getFont()).getHeight();
        return new Dimension(room, Math.max(icon, text) + around.top + around.bottom);
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D graphics = (Graphics2D) g.create();
        try {
            graphics.setColor(getBackground());
            graphics.fillRect(0, 0, getWidth(), getHeight());
            FontMetrics metrics = getFontMetrics(getFont());
            Insets around = getInsets();
            if (getIcon() != null) {
                int first = (metrics.getHeight() - getIcon().getIconHeight()) / 2;
                getIcon().paintIcon(this, graphics, around.left, around.top + Math.max(0, first));
            }
            graphics.setColor(getForeground());
            graphics.setFont(getFont());
            int y = around.top + metrics.getAscent();
            for (String line : lines()) {
                FlatUIUtils.drawString(this, graphics, line, textLeft(), y);
                y += metrics.getHeight();
            }
        } finally {
            graphics.dispose();
        }
    }
}
