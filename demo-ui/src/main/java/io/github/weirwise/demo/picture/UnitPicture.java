package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Newest;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Told;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.util.function.DoubleConsumer;
import javax.swing.KeyStroke;

/**
 * The unit in cross-section. The weir is dragged by its grip or moved with the arrow keys, {@value #FINE_MM} mm at a
 * time and {@value #COARSE_MM} mm with Shift. What stands still is kept as images that a background thread paints; the bubbles are painted anew.
 */
public final class UnitPicture extends Told {
    private static final long serialVersionUID = 1L;

    /** One press of an arrow key. */
    public static final double FINE_MM = 0.5;
    /** The same with Shift. */
    public static final double COARSE_MM = 5;

    private static final int FONT_SIZE = 13;
    private static final double LEAST_CREEP_PX = 0.5;

    private transient Scene scene;
    private transient Words words;
    private transient Palette palette;
    private transient DoubleConsumer weirMoved = crest -> {};
    private transient Frame frame;
    private final transient Newest<Frame> maker = new Newest<>(this::take);
    private boolean names = true;
    private double scaleShown = 1;
    private double seconds;
    /** How far the drawn foam has crept, in rows of its cells. */
    private double rowsMoved;

    private double rowsPainted;

    private volatile long frames;

    /** A picture of a scene. */
    public UnitPicture(Scene scene, Words words, Palette palette) {
        this.scene = scene;
        this.words = words;
        this.palette = palette;
        setFocusable(true);
        setOpaque(true);
        setFont(new Font(Font.SANS_SERIF, Font.PLAIN, FONT_SIZE));
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
        change(() -> scene = other);
    }

    /** Other colours or words. */
    public void dress(Words otherWords, Palette otherPalette) {
        words = otherWords;
        palette = otherPalette;
        repaint();
    }

    /** Writes the names of the parts into the picture, or leaves them out. */
    public void name(boolean on) {
        names = on;
        repaint();
    }

    /** How many frames were painted so far. */
    public long frames() {
        return frames;
    }

    /** Moves bubbles and foam on to a time. */
    public void animate(double toSeconds) {
        double passed = Math.max(0, toSeconds - seconds);
        seconds = toSeconds;
        if (frame != null) {
            Sight sight = frame.sight();
            rowsMoved += passed * sight.rowsPerSecond();
            crept(sight.lipCellMm() * frame.view().pxPerMm() * scaleShown);
        }
        repaint();
    }

    /** Has the foam painted anew when it has moved so far that it can be seen. */
    private void crept(double rowPx) {
        if (Math.abs(rowsMoved - rowsPainted) * rowPx < LEAST_CREEP_PX) {
            return;
        }
        rowsPainted = rowsMoved;
        Frame shown = frame;
        double moved = rowsMoved;
        if (isShowing()) {
            maker.askAtLeisure(() -> shown.creep(moved));
        } else {
            shown.creep(moved);
        }
    }

    @Override
    public String describe() {
        return words.say(PictureWords.of(scene));
    }

    void moveWeirTo(double crestMm) {
        double step = Math.round(crestMm / FINE_MM) * FINE_MM;
        weirMoved.accept(scene.unit().weir().clampMm(step));
    }

    private void bindKeys() {
        bind(KeyEvent.VK_UP, 0, FINE_MM);
        bind(KeyEvent.VK_DOWN, 0, -FINE_MM);
        bind(KeyEvent.VK_UP, KeyEvent.SHIFT_DOWN_MASK, COARSE_MM);
        bind(KeyEvent.VK_DOWN, KeyEvent.SHIFT_DOWN_MASK, -COARSE_MM);
    }

    private void bind(int key, int shift, double byMm) {
        Buttons.onKey(
                this,
                WHEN_FOCUSED,
                KeyStroke.getKeyStroke(key, shift),
                () -> moveWeirTo(scene.settings().weirCrestMm() + byMm));
    }

    View view() {
        return frame().view();
    }

    /** Where the weir can be taken hold of, in pixels. */
    public Rectangle weirHandle() {
        return frame().weirHandle();
    }

    /** The newest frame; made here and now when there is none for this size and dress. */
    private Frame frame() {
        Frame.Order order = order(scaleShown);
        if (frame == null || !sameShape(frame.order(), order)) {
            frame = Frame.make(order, rowsMoved);
        }
        return frame;
    }

    private Frame.Order order(double scale) {
        return new Frame.Order(scene, getWidth(), getHeight(), scale, palette, words, getFont(), names);
    }

    private static boolean sameShape(Frame.Order have, Frame.Order want) {
        return have.widthPx() == want.widthPx()
                && have.heightPx() == want.heightPx()
                && have.deviceScale() == want.deviceScale()
                && have.palette() == want.palette()
                && have.words().equals(want.words())
                && have.font().equals(want.font())
                && have.names() == want.names()
                && have.scene().unit().equals(want.scene().unit());
    }

    /**
     * On a screen a scene or size is painted in the background, and the frame before stays until it is there; null before the
     * first one.
     */
    private Frame frameFor(Frame.Order order) {
        if (isShowing()) {
            if (frame == null || !frame.order().equals(order)) {
                double moved = rowsMoved;
                maker.ask(() -> Frame.make(order, moved));
            }
        } else if (frame == null || !frame.order().equals(order)) {
            frame = Frame.make(order, rowsMoved);
        }
        return frame;
    }

    private void take(Frame made) {
        if (sameShape(made.order(), order(scaleShown))) {
            frame = made;
            repaint();
        }
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D graphics = (Graphics2D) g.create();
        try {
            scaleShown = Math.max(0.1, graphics.getTransform().getScaleX());
            graphics.setColor(palette.paper());
            graphics.fillRect(0, 0, getWidth(), getHeight());
            Frame shown = frameFor(order(scaleShown));
            if (shown == null) {
                return;
            }
            shown.show(graphics, seconds);
            frames++;
            if (isFocusOwner()) {
                new Ink(graphics).draw(shown.weirHandle(), palette.accent(), 2.5);
            }
        } finally {
            graphics.dispose();
        }
    }

    @Override
    protected String title() {
        return words.of("picture.name");
    }
}
