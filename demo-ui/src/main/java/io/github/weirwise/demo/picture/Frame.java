package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Words;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/**
 * One moment of the picture with all that does not move already painted into two images: what lies behind the bubbles and
 * what lies before them. Made on any thread, shown on the event thread.
 */
final class Frame {
    private static final double MARGIN_PX = 8;
    private static final double STAIRS_WIDTH_PX = 290;
    private static final double LEAST_STAIRS_PX = 190;
    /** Stairs that are narrower or lower than this cannot be read. */
    private static final double LEAST_STAIRS_WIDE_PX = 160;

    private static final double LEAST_STAIRS_HIGH_PX = 118;

    /** What a frame is made for. */
    record Order(
            Scene scene,
            int widthPx,
            int heightPx,
            double deviceScale,
            Palette palette,
            Words words,
            Font font,
            boolean names) {}

    private final Order order;
    private final Sight sight;
    private final Brush brush;
    private final VesselPainter vessel;
    private final BubblePainter bubbles;
    private final CupPainter cup;
    private final FoamPainter foam;
    private final BufferedImage behind;
    private final BufferedImage before;
    /** The newest foam; painted by one thread, shown by another. */
    private volatile BufferedImage creeping;

    private Frame(Order order) {
        this.order = order;
        sight = Sight.of(order.scene());
        Section section = new Section(order.scene().unit());
        Rectangle2D area = new Rectangle2D.Double(
                MARGIN_PX,
                MARGIN_PX,
                Math.max(50, order.widthPx() - 2 * MARGIN_PX),
                Math.max(50, order.heightPx() - 2 * MARGIN_PX));
        brush = new Brush(section, View.fit(section.bounds(), area), order.palette(), order.words(), order.font());
        vessel = new VesselPainter(brush);
        bubbles = new BubblePainter(brush);
        cup = new CupPainter(brush);
        foam = new FoamPainter(brush);
        Rectangle2D all = new Rectangle2D.Double(0, 0, order.widthPx(), order.heightPx());
        behind = image(all, BufferedImage.TYPE_INT_RGB);
        before = image(all, BufferedImage.TYPE_INT_ARGB_PRE);
    }

    /** Paints a frame with its foam so many rows on its way; the slow part, for any thread. */
    static Frame make(Order order, double rowsMoved) {
        Frame frame = new Frame(order);
        frame.paintBehind();
        frame.creep(rowsMoved);
        frame.paintBefore();
        return frame;
    }

    private BufferedImage image(Rectangle2D part, int type) {
        int width = (int) Math.ceil(part.getWidth() * order.deviceScale());
        int height = (int) Math.ceil(part.getHeight() * order.deviceScale());
        return new BufferedImage(Math.max(1, width), Math.max(1, height), type);
    }

    /** Paints the foam anew where it is now; for any thread. */
    Frame creep(double rowsMoved) {
        Rectangle room = foam.room().getBounds();
        BufferedImage image = image(room, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D layer = image.createGraphics();
        try {
            layer.scale(order.deviceScale(), order.deviceScale());
            layer.translate(-room.x, -room.y);
            foam.paint(new Ink(layer), sight, rowsMoved);
            creeping = image;
            return this;
        } finally {
            layer.dispose();
        }
    }

    Sight sight() {
        return sight;
    }

    private void paintBehind() {
        Graphics2D layer = behind.createGraphics();
        try {
            layer.setColor(order.palette().paper());
            layer.fillRect(0, 0, behind.getWidth(), behind.getHeight());
            layer.scale(order.deviceScale(), order.deviceScale());
            Ink ink = new Ink(layer);
            vessel.paint(ink, order.scene(), sight);
            cup.paintContents(ink, order.scene());
        } finally {
            layer.dispose();
        }
    }

    private void paintBefore() {
        Graphics2D layer = before.createGraphics();
        try {
            layer.scale(order.deviceScale(), order.deviceScale());
            Ink ink = new Ink(layer);
            if (!order.scene().figures()) {
                new FrothPainter(brush).paint(ink, order.scene(), sight);
            }
            cup.paintGlass(ink, order.scene(), sight);
            vessel.columnWalls(ink);
            write(ink);
            new AlarmPainter(brush).paint(ink, sight.alarms(), alarmsRoom());
        } finally {
            layer.dispose();
        }
    }

    /** Names and figures, each where it can be read. */
    void write(Ink ink) {
        NamePainter names = new NamePainter(brush);
        if (order.names()) {
            names.paint(ink, order.scene());
        }
        LabelPainter labels = new LabelPainter(brush);
        labels.paint(ink, order.scene(), names);
        if (order.scene().figures()) {
            Rectangle2D stairs = stairsBox(labels.weirTopPx(ink, order.scene()) - MARGIN_PX);
            boolean room = stairs.getWidth() >= LEAST_STAIRS_WIDE_PX && stairs.getHeight() >= LEAST_STAIRS_HIGH_PX;
            labels.weir(ink, order.scene(), !room);
            if (room) {
                new StairsPainter(brush).paint(ink, order.scene(), stairs);
            }
        }
    }

    /** Shows the frame with the bubbles where they are at a time. */
    void show(Graphics2D graphics, double seconds) {
        blit(graphics, behind, new Rectangle());
        bubbles.paint(new Ink(graphics), order.scene(), seconds);
        blit(graphics, creeping, foam.room().getBounds());
        blit(graphics, before, new Rectangle());
    }

    private void blit(Graphics2D graphics, BufferedImage image, Rectangle at) {
        Graphics2D plain = (Graphics2D) graphics.create();
        try {
            plain.translate(at.x, at.y);
            plain.scale(1 / order.deviceScale(), 1 / order.deviceScale());
            plain.drawImage(image, 0, 0, null);
        } finally {
            plain.dispose();
        }
    }

    Order order() {
        return order;
    }

    View view() {
        return brush.view();
    }

    Section section() {
        return brush.section();
    }

    Rectangle weirHandle() {
        return vessel.weirHandle(order.scene()).getBounds();
    }

    private Rectangle2D alarmsRoom() {
        return new Rectangle2D.Double(MARGIN_PX, 0, order.widthPx() - 2 * MARGIN_PX, order.heightPx() - 2.0);
    }

    /** The free corner over the biofilter side, and over what is written there. */
    private Rectangle2D stairsBox(double overPx) {
        Section section = brush.section();
        double right = order.widthPx() - 12.0;
        double besideWeir = view().x(section.chamberRightMm + 24);
        double left = right - besideWeir > LEAST_STAIRS_PX ? besideWeir : view().x(section.cupRightMm + 16);
        double bottom = Math.min(overPx, view().y(section.beyondWallTopMm + 34));
        double width = Math.min(STAIRS_WIDTH_PX, right - left);
        double top = 6;
        return new Rectangle2D.Double(right - width, top, width, Math.max(0, bottom - top));
    }
}
