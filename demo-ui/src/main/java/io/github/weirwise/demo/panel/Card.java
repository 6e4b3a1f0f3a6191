package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Arc2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.AbstractButton;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** A sheet of paper with a heading on which one thing is told. */
public class Card extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int ARC = 5;

    private final JLabel heading = new Caption();
    private final JPanel besideHeading = new JPanel(new MigLayout("insets 0, gapx 6, hidemode 3"));
    private final transient List<Consumer<Dress>> dressing = new ArrayList<>();
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
        add(heading, "wmin 0");
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
        // A long name is cut in the heading and told whole here.
        heading.setToolTipText(text);
        getAccessibleContext().setAccessibleName(text);
    }

    /** A card whose content speaks for itself is named to those who hear it only. */
    protected final void nameSilently(String text) {
        getAccessibleContext().setAccessibleName(text);
    }

    /** A button that is called and worded by a key. */
    protected final JButton button(String key, Runnable deed) {
        return worded(new JButton(), key, deed);
    }

    /** A button of any kind, called and worded by a key. */
    protected final <B extends AbstractButton> B worded(B button, String key, Runnable deed) {
        button.setName(key);
        button.addActionListener(e -> deed.run());
        onDress(dress -> Buttons.name(button, dress, key));
        return button;
    }

    /** Does this whenever the card is dressed. */
    protected final void onDress(Consumer<Dress> change) {
        dressing.add(change);
    }

    /** Heading, colours and everything that is worded by a key. */
    protected void dress(String title, Dress dress) {
        head(title);
        paper(dress.palette());
        dressing.forEach(each -> each.accept(dress));
    }

    /** Other colours. */
    protected final void paper(Palette other) {
        palette = other;
        heading.setForeground(other.ink());
        Font plain = UIManager.getFont("Label.font");
        heading.setFont(plain.deriveFont(Font.BOLD, plain.getSize2D() * 1.08f));
        repaint();
    }

    /** Only the corners are smoothed: to smooth a shape as large as a card is slow. */
    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D graphics = (Graphics2D) g.create();
        try {
            int right = getWidth() - 1;
            int bottom = getHeight() - 1;
            graphics.setColor(palette.paper());
            graphics.fillRect(ARC, 0, getWidth() - 2 * ARC, getHeight());
            graphics.fillRect(0, ARC, getWidth(), getHeight() - 2 * ARC);
            corner(graphics, 0, 0, 90);
            corner(graphics, right - 2 * ARC, 0, 0);
            corner(graphics, 0, bottom - 2 * ARC, 180);
            corner(graphics, right - 2 * ARC, bottom - 2 * ARC, 270);
            graphics.setColor(palette.rule());
            graphics.drawLine(ARC, 0, right - ARC, 0);
            graphics.drawLine(ARC, bottom, right - ARC, bottom);
            graphics.drawLine(0, ARC, 0, bottom - ARC);
            graphics.drawLine(right, ARC, right, bottom - ARC);
        } finally {
            graphics.dispose();
        }
    }

    private void corner(Graphics2D g, int x, int y, int fromDegrees) {
        Graphics2D graphics = (Graphics2D) g.create();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setColor(palette.paper());
            graphics.fill(new Arc2D.Double(x, y, 2 * ARC + 1, 2 * ARC + 1, fromDegrees, 90, Arc2D.PIE));
            graphics.setColor(palette.rule());
            graphics.draw(new Arc2D.Double(x, y, 2 * ARC, 2 * ARC, fromDegrees, 90, Arc2D.OPEN));
        } finally {
            graphics.dispose();
        }
    }
}
