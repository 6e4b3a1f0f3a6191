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
import javax.swing.Icon;
import javax.swing.JLabel;
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

    private static int textLeft(JLabel label) {
        Icon icon = label.getIcon();
        return label.getInsets().left + (icon == null ? 0 : icon.getIconWidth() + label.getIconTextGap());
    }

    private static List<String> lines(JLabel label, int room) {
        return broken(
                label.getText(),
                label.getFontMetrics(label.getFont()),
                room - textLeft(label) - label.getInsets().right - SPARE_PX);
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

    /** The size of a label whose text is broken into lines. */
    static Dimension size(JLabel label, int room) {
        Insets around = label.getInsets();
        int icon = label.getIcon() == null ? 0 : label.getIcon().getIconHeight();
        int text = lines(label, room).size()
                * label.getFontMetrics(label.getFont()).getHeight();
        return new Dimension(room, Math.max(icon, text) + around.top + around.bottom);
    }

    /** Paints a label whose text is broken into lines. */
    static void paint(JLabel label, Graphics g, int room) {
        Graphics2D graphics = (Graphics2D) g.create();
        try {
            FontMetrics metrics = label.getFontMetrics(label.getFont());
            Insets around = label.getInsets();
            if (label.getIcon() != null) {
                int first = (metrics.getHeight() - label.getIcon().getIconHeight()) / 2;
                label.getIcon().paintIcon(label, graphics, around.left, around.top + Math.max(0, first));
            }
            graphics.setColor(label.getForeground());
            graphics.setFont(label.getFont());
            int y = around.top + metrics.getAscent();
            for (String line : lines(label, room)) {
                FlatUIUtils.drawString(label, graphics, line, textLeft(label), y);
                y += metrics.getHeight();
            }
        } finally {
            graphics.dispose();
        }
    }

    @Override
    public Dimension getPreferredSize() {
        return size(this, room);
    }

    @Override
    protected void paintComponent(Graphics g) {
        g.setColor(getBackground());
        g.fillRect(0, 0, getWidth(), getHeight());
        paint(this, g, room);
    }
}
