package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Palette;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** A sheet of paper with a heading on which one thing is told. */
public class Card extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int ARC = 10;

    private final JLabel heading = new Caption();
    private final JPanel besideHeading = new JPanel(new MigLayout("insets 0, gapx 6"));
    private final JPanel body;
    private transient Palette palette;

    /** An empty card whose body is laid out by MigLayout constraints. */
    protected Card(Palette palette, String columns, String rows) {
        super(new MigLayout("insets 10 14 12 14, fill, wrap 2, gapy 6", "[grow,fill][]", "[][grow,fill]"));
        this.palette = palette;
        setOpaque(false);
        heading.setFont(
                heading.getFont().deriveFont(Font.BOLD, heading.getFont().getSize2D() * 1.08f));
        body = new JPanel(new MigLayout("insets 0, fillx, hidemode 3", columns, rows));
        body.setOpaque(false);
        besideHeading.setOpaque(false);
        add(heading);
        add(besideHeading);
        add(body, "span 2, grow");
        setBorder(BorderFactory.createEmptyBorder());
    }

    /** Where the content goes. */
    protected final JPanel body() {
        return body;
    }

    /** Puts something at the right end of the heading. */
    protected final void beside(JComponent part) {
        besideHeading.add(part);
    }

    /** Sets the heading, which is also the card's accessible name. */
    protected final void head(String text) {
        heading.setText(text);
        getAccessibleContext().setAccessibleName(text);
    }

    protected final Palette palette() {
        return palette;
    }

    /** Other colours. */
    protected final void paper(Palette other) {
        palette = other;
        heading.setForeground(other.ink());
        Font plain = UIManager.getFont("Label.font");
        heading.setFont(plain.deriveFont(Font.BOLD, plain.getSize2D() * 1.08f));
        repaint();
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D graphics = (Graphics2D) g.create();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setColor(palette.paper());
            graphics.fillRoundRect(0, 0, getWidth() - 1, getHeight() - 1, ARC, ARC);
            graphics.setColor(palette.rule());
            graphics.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, ARC, ARC);
        } finally {
            graphics.dispose();
        }
    }
}
