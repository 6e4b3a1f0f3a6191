package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Newest;
import io.github.weirwise.demo.panel.Told;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/** Shows a drawing; it is drawn into an image elsewhere and follows within moments. */
public final class ChartView extends Told {
    private static final long serialVersionUID = 1L;
    private static final int FONT_SIZE = 12;

    private final String textKey;
    private final transient Newest<Drawn> maker = new Newest<>(this::take);
    private transient Drawing drawing;
    private transient Dress dress;
    private transient Drawn drawn;
    private transient Order asked;

    private record Order(Drawing drawing, int width, int height, double scale, Dress dress, Font font) {}

    private record Drawn(Order order, BufferedImage image) {}

    /** A view of a drawing, named by a text. */
    public ChartView(String textKey, Drawing drawing, Dress dress) {
        this.textKey = textKey;
        this.drawing = drawing;
        this.dress = dress;
        setOpaque(true);
        setFocusable(true);
        setFont(new Font(Font.SANS_SERIF, Font.PLAIN, FONT_SIZE));
        setName(textKey);
        setMinimumSize(new Dimension(200, 110));
        setPreferredSize(new Dimension(420, 200));
    }

    /** Shows another drawing. */
    public void show(Drawing other) {
        if (other.equals(drawing)) {
            return;
        }
        change(() -> drawing = other);
    }

    public Drawing drawing() {
        return drawing;
    }

    /** Other colours or words. */
    public void dress(Dress other) {
        dress = other;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D graphics = (Graphics2D) g.create();
        try {
            graphics.setColor(dress.palette().paper());
            graphics.fillRect(0, 0, getWidth(), getHeight());
            double scale = Math.max(0.1, graphics.getTransform().getScaleX());
            bring(new Order(drawing, getWidth(), getHeight(), scale, dress, getFont()));
            if (drawn != null
                    && drawn.order().width() == getWidth()
                    && drawn.order().height() == getHeight()) {
                graphics.scale(1 / drawn.order().scale(), 1 / drawn.order().scale());
                graphics.drawImage(drawn.image(), 0, 0, null);
                graphics.scale(drawn.order().scale(), drawn.order().scale());
            }
            if (isFocusOwner()) {
                graphics.setColor(dress.palette().accent());
                graphics.drawRect(1, 1, getWidth() - 3, getHeight() - 3);
                graphics.drawRect(2, 2, getWidth() - 5, getHeight() - 5);
            }
        } finally {
            graphics.dispose();
        }
    }

    /** On a screen the image is made in the background; anywhere else at once. */
    private void bring(Order order) {
        if (drawn != null && drawn.order().equals(order)) {
            return;
        }
        if (!isShowing()) {
            drawn = draw(order);
        } else if (!order.equals(asked)) {
            asked = order;
            maker.ask(() -> draw(order));
        }
    }

    private void take(Drawn made) {
        drawn = made;
        repaint();
    }

    private static Drawn draw(Order order) {
        int width = Math.max(1, (int) Math.ceil(order.width() * order.scale()));
        int height = Math.max(1, (int) Math.ceil(order.height() * order.scale()));
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setColor(order.dress().palette().paper());
            graphics.fillRect(0, 0, width, height);
            graphics.scale(order.scale(), order.scale());
            Rectangle2D area = new Rectangle2D.Double(0, 0, order.width(), order.height());
            order.drawing().draw(graphics, area, order.dress(), order.font());
        } finally {
            graphics.dispose();
        }
        return new Drawn(order, image);
    }

    @Override
    public String describe() {
        return drawing.describe(dress.words());
    }

    @Override
    protected String title() {
        return dress.text("chart.name." + textKey);
    }
}
