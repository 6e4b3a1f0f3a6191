package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Words;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.function.DoubleConsumer;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/**
 * The unit in cross-section. The weir is dragged by its grip or moved with the arrow keys, {@value #FINE_MM} mm at a
 * time and {@value #COARSE_MM} mm with Shift. What stands still is kept as an image; bubbles and foam are painted anew.
 */
public final class UnitPicture extends JComponent {
    private static final long serialVersionUID = 1L;

    /** One press of an arrow key. */
    public static final double FINE_MM = 0.5;
    /** The same with Shift. */
    public static final double COARSE_MM = 5;

    private transient Scene scene;
    private transient Words words;
    private transient Palette palette;
    private transient DoubleConsumer weirMoved = crest -> {};
    private transient BufferedImage stillLayer;
    private transient Layers layers;
    private double seconds;
    private double creptMm;

    /** A picture of a scene. */
    public UnitPicture(Scene scene, Words words, Palette palette) {
        this.scene = scene;
        this.words = words;
        this.palette = palette;
        setFocusable(true);
        setOpaque(true);
        setName("unitPicture");
        setMinimumSize(new Dimension(360, 340));
        setPreferredSize(new Dimension(620, 600));
        bindKeys();
        WeirDrag drag = new WeirDrag(this);
        addMouseListener(drag);
        addMouseMotionListener(drag);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        });
    }

    /** Who is told when the weir is moved here; gets the wanted crest in mm. */
    public void onWeirMoved(DoubleConsumer listener) {
        weirMoved = listener;
    }

    public Scene scene() {
        return scene;
    }

    /** Shows another scene. */
    public void show(Scene other) {
        if (other.equals(scene)) {
            return;
        }
        String before = describe();
        scene = other;
        stillLayer = null;
        String after = describe();
        if (!after.equals(before) && accessibleContext != null) {
            accessibleContext.firePropertyChange(
                    AccessibleContext.ACCESSIBLE_DESCRIPTION_PROPERTY, before, after);
        }
        repaint();
    }

    /** Other colours or words. */
    public void dress(Words otherWords, Palette otherPalette) {
        words = otherWords;
        palette = otherPalette;
        stillLayer = null;
        repaint();
    }

    /** Moves bubbles and foam on. */
    public void animate(double bubbleSeconds, double foamCreptMm) {
        seconds = bubbleSeconds;
        creptMm = foamCreptMm;
        repaint();
    }

    /** What the picture shows, in words. */
    public String describe() {
        return words.say(PictureWords.of(scene));
    }

    void moveWeirTo(double crestMm) {
        double step = Math.round(crestMm / FINE_MM) * FINE_MM;
        weirMoved.accept(scene.unit().weir().clampMm(step));
    }

    private void bindKeys() {
        bind("raise", KeyStroke.getKeyStroke(KeyEvent.VK_UP, 0), FINE_MM);
        bind("lower", KeyStroke.getKeyStroke(KeyEvent.VK_DOWN, 0), -FINE_MM);
        bind("raiseMore", KeyStroke.getKeyStroke(KeyEvent.VK_UP, KeyEvent.SHIFT_DOWN_MASK), COARSE_MM);
        bind("lowerMore", KeyStroke.getKeyStroke(KeyEvent.VK_DOWN, KeyEvent.SHIFT_DOWN_MASK), -COARSE_MM);
    }

    private void bind(String name, KeyStroke key, double byMm) {
        getInputMap().put(key, name);
        getActionMap().put(name, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                moveWeirTo(scene.settings().weirCrestMm() + byMm);
            }
        });
    }

    View view() {
        return layers().brush.view();
    }

    /** Where the weir can be taken hold of, in pixels. */
    public Rectangle weirHandle() {
        return layers().vessel.weirHandle(scene).getBounds();
    }

    /** The row of a height over the chamber floor, in pixels. */
    public double rowOfMm(double heightMm) {
        return view().y(heightMm);
    }

    /** The column of the unit's axis, in pixels. */
    public double axisPx() {
        return view().x(layers().brush.section().axisMm);
    }

    private Layers layers() {
        Layers wanted = layers;
        if (wanted == null || !wanted.fits(this)) {
            wanted = new Layers(this);
            layers = wanted;
            stillLayer = null;
        }
        return wanted;
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D graphics = (Graphics2D) g.create();
        try {
            Layers painters = layers();
            paintStill(graphics, painters);
            Ink ink = new Ink(graphics);
            painters.bubbles.paint(ink, scene, seconds);
            painters.foam.paint(ink, scene, creptMm);
            painters.cup.paint(ink, scene);
            painters.vessel.columnWalls(ink);
            painters.labels.paint(ink, scene);
            painters.stairs.paint(ink, scene, stairsBox());
            if (isFocusOwner()) {
                Rectangle2D ring = weirHandle();
                ink.draw(ring, palette.accent(), 2.5);
            }
        } finally {
            graphics.dispose();
        }
    }

    private void paintStill(Graphics2D graphics, Layers painters) {
        AffineTransform device = graphics.getTransform();
        double scale = Math.max(device.getScaleX(), 0.1);
        int width = (int) Math.ceil(getWidth() * scale);
        int height = (int) Math.ceil(getHeight() * scale);
        if (stillLayer == null || stillLayer.getWidth() != width || stillLayer.getHeight() != height) {
            stillLayer = new BufferedImage(Math.max(1, width), Math.max(1, height), BufferedImage.TYPE_INT_RGB);
            Graphics2D layer = stillLayer.createGraphics();
            try {
                layer.scale(scale, scale);
                layer.setColor(palette.paper());
                layer.fillRect(0, 0, getWidth() + 1, getHeight() + 1);
                painters.vessel.paint(new Ink(layer), scene);
            } finally {
                layer.dispose();
            }
        }
        Graphics2D plain = (Graphics2D) graphics.create();
        try {
            plain.scale(1 / scale, 1 / scale);
            plain.drawImage(stillLayer, 0, 0, null);
        } finally {
            plain.dispose();
        }
    }

    private Rectangle2D stairsBox() {
        Section section = layers().brush.section();
        double left = view().x(section.axisMm + section.cupRadiusMm + 16);
        double right = getWidth() - 12;
        double top = 12;
        double bottom = view().y(section.wallTopMm + 34);
        double width = Math.min(290, right - left);
        return new Rectangle2D.Double(right - width, top, width, Math.max(60, bottom - top));
    }

    /** The painters for one size and dress of the component. */
    private static final class Layers {
        private final int width;
        private final int height;
        private final io.github.weirwise.skimmer.SkimmerUnit unit;
        private final Brush brush;
        private final VesselPainter vessel;
        private final BubblePainter bubbles;
        private final FoamPainter foam;
        private final CupPainter cup;
        private final LabelPainter labels;
        private final StairsPainter stairs;

        Layers(UnitPicture picture) {
            width = picture.getWidth();
            height = picture.getHeight();
            unit = picture.scene.unit();
            Section section = new Section(unit);
            Rectangle2D area = new Rectangle2D.Double(8, 8, Math.max(50, width - 16), Math.max(50, height - 16));
            brush = new Brush(
                    section, View.fit(section.bounds(), area), picture.palette, picture.words, picture.getFont());
            vessel = new VesselPainter(brush);
            bubbles = new BubblePainter(brush);
            foam = new FoamPainter(brush);
            cup = new CupPainter(brush);
            labels = new LabelPainter(brush);
            stairs = new StairsPainter(brush);
        }

        boolean fits(UnitPicture picture) {
            return width == picture.getWidth()
                    && height == picture.getHeight()
                    && unit.equals(picture.scene.unit())
                    && brush.palette() == picture.palette
                    && brush.words().equals(picture.words)
                    && brush.font().equals(picture.getFont());
        }
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
                    return words.of("picture.name");
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
