package io.github.weirwise.demo.strip;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Unit;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** Shows the strip of the last days; the chart is drawn into an image elsewhere and follows within moments. */
public final class DaysStrip extends JComponent {
    private static final long serialVersionUID = 1L;

    private static final int FONT_SIZE = 12;

    private static final ExecutorService DRAWING = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "strip-drawing");
        thread.setDaemon(true);
        return thread;
    });

    private final transient AtomicReference<Order> wanted = new AtomicReference<>();
    private transient StripData data;
    private transient Words words;
    private transient Palette palette;
    private transient Drawn drawn;
    private transient Order asked;

    private record Order(
            StripData data, int width, int height, double scale, Words words, Palette palette, Font font) {}

    private record Drawn(Order order, BufferedImage image) {}

    /** A strip of some data. */
    public DaysStrip(StripData data, Words words, Palette palette) {
        this.data = data;
        this.words = words;
        this.palette = palette;
        setOpaque(true);
        setFocusable(true);
        setFont(new Font(Font.SANS_SERIF, Font.PLAIN, FONT_SIZE));
        setName("daysStrip");
        setMinimumSize(new Dimension(280, 150));
        setPreferredSize(new Dimension(520, 230));
    }

    /** Shows other data. */
    public void show(StripData other) {
        data = other;
        repaint();
    }

    /** Other colours or words. */
    public void dress(Words otherWords, Palette otherPalette) {
        words = otherWords;
        palette = otherPalette;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D graphics = (Graphics2D) g.create();
        try {
            graphics.setColor(palette.paper());
            graphics.fillRect(0, 0, getWidth(), getHeight());
            double scale = Math.max(0.1, graphics.getTransform().getScaleX());
            Order order = new Order(data, getWidth(), getHeight(), scale, words, palette, getFont());
            bring(order);
            if (drawn != null
                    && drawn.order().width() == getWidth()
                    && drawn.order().height() == getHeight()) {
                graphics.scale(1 / drawn.order().scale(), 1 / drawn.order().scale());
                graphics.drawImage(drawn.image(), 0, 0, null);
                graphics.scale(drawn.order().scale(), drawn.order().scale());
            }
            if (isFocusOwner()) {
                graphics.setColor(palette.accent());
                graphics.drawRect(1, 1, getWidth() - 3, getHeight() - 3);
            }
        } finally {
            graphics.dispose();
        }
    }

    private void bring(Order order) {
        if (drawn != null && drawn.order().equals(order)) {
            return;
        }
        if (!isShowing()) {
            drawn = draw(order);
        } else if (!order.equals(asked)) {
            asked = order;
            if (wanted.getAndSet(order) == null) {
                DRAWING.execute(this::work);
            }
        }
    }

    private void work() {
        Order order = wanted.getAndSet(null);
        if (order != null) {
            Drawn made = draw(order);
            EventQueue.invokeLater(() -> {
                drawn = made;
                repaint();
            });
        }
    }

    private static Drawn draw(Order order) {
        int width = Math.max(1, (int) Math.ceil(order.width() * order.scale()));
        int height = Math.max(1, (int) Math.ceil(order.height() * order.scale()));
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setColor(order.palette().paper());
            graphics.fillRect(0, 0, width, height);
            graphics.scale(order.scale(), order.scale());
            new StripChart(order.data(), order.words(), order.palette(), order.font())
                    .draw(graphics, new Rectangle2D.Double(0, 0, order.width(), order.height()));
        } finally {
            graphics.dispose();
        }
        return new Drawn(order, image);
    }

    /** What the strip shows, in words. */
    public String describe() {
        if (data.points().isEmpty()) {
            return words.of("strip.empty");
        }
        var first = data.points().get(0);
        var last = data.points().get(data.points().size() - 1);
        return words.of(
                "strip.describe",
                words.say(first.submergenceMm(), Unit.MILLIMETRE),
                words.say(last.submergenceMm(), Unit.MILLIMETRE),
                words.say(first.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                words.say(last.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                data.marks().size());
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.CANVAS;
                }

                @Override
                public String getAccessibleName() {
                    return words.of("strip.name");
                }

                @Override
                public String getAccessibleDescription() {
                    return describe();
                }
            };
        }
        return accessibleContext;
    }
}
