package io.github.weirwise.demo.window;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.ClockCard;
import io.github.weirwise.demo.panel.SeenCard;
import io.github.weirwise.demo.panel.SettingsCard;
import io.github.weirwise.demo.panel.StepCard;
import io.github.weirwise.demo.picture.UnitPicture;
import io.github.weirwise.demo.strip.DaysStrip;
import java.awt.Font;
import java.util.function.Supplier;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** Everything in the window: the unit on the left, what is seen, advised and remembered on the right. */
public final class MainPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final transient Adviser adviser;
    private final transient Background background;
    private final JLabel title = new JLabel();
    private final JToggleButton still = new JToggleButton();
    private final UnitPicture picture;
    private final SettingsCard settings;
    private final SeenCard seen;
    private final StepCard step;
    private final ClockCard clock;
    private final DaysStrip strip;
    private final PictureCard pictureCard;
    private final StripCard stripCard;
    private final transient Motion motion;
    private transient Dress dress;

    /** Where slow work is done; the tests do it at once. */
    public interface Background {
        /** Works something out and hands it over on the event thread. */
        <T> void run(Supplier<T> work, java.util.function.Consumer<T> then);

        /** At once and on the same thread. */
        Background AT_ONCE = new Background() {
            @Override
            public <T> void run(Supplier<T> work, java.util.function.Consumer<T> then) {
                then.accept(work.get());
            }
        };
    }

    /** The window's content for a desk. */
    public MainPanel(Desk desk, Adviser adviser, Background background, Dress dress) {
        super(new MigLayout("insets 10 12 12 12, fill, gap 10", "[52%,grow,fill][48%,grow,fill]", "[][grow,fill]"));
        this.desk = desk;
        this.adviser = adviser;
        this.background = background;
        this.dress = dress;
        picture = new UnitPicture(desk.scene(), dress.words(), dress.palette());
        picture.onWeirMoved(desk::moveWeir);
        settings = new SettingsCard(desk, dress);
        seen = new SeenCard(desk, dress);
        step = new StepCard(desk, this::ask, dress);
        clock = new ClockCard(desk, dress);
        strip = new DaysStrip(StripOf.desk(desk, dress), dress.words(), dress.palette());
        pictureCard = new PictureCard(picture, dress);
        stripCard = new StripCard(strip, dress);
        motion = new Motion(picture);
        still.setName("still");
        still.addActionListener(e -> motion.run(!still.isSelected()));
        title.setFont(title.getFont().deriveFont(Font.BOLD, title.getFont().getSize2D() * 1.3f));
        put();
        desk.onChange(this::refresh);
        dress(dress);
    }

    private void put() {
        JPanel head = new JPanel(new MigLayout("insets 0, fillx", "[grow][][]"));
        head.setOpaque(false);
        head.add(title, "growx");
        head.add(clock);
        head.add(still);
        JPanel left = new JPanel(new MigLayout("insets 0, fill, wrap 1, gapy 10", "[grow,fill]", "[grow,fill][]"));
        left.setOpaque(false);
        left.add(pictureCard, "grow, push");
        left.add(settings);
        JPanel right = new JPanel(new MigLayout("insets 0, fill, wrap 1, gapy 10", "[grow,fill]", "[][grow,fill][]"));
        right.setOpaque(false);
        right.add(seen);
        right.add(step, "grow, push");
        right.add(stripCard, "h 200:250:300");
        add(head, "span 2, growx, wrap");
        add(left, "grow, wmin 0");
        add(right, "grow, wmin 0");
    }

    /** Asks for the next step from all that is in the journal. */
    public void ask() {
        Desk at = desk;
        var unit = at.tank().unit();
        var journal = at.journal();
        var now = at.now();
        background.<Advice>run(() -> adviser.advise(unit, at.told(), journal, now), given -> {
            if (journal.equals(at.journal())) {
                at.advised(given);
            }
        });
    }

    private void refresh() {
        picture.show(desk.scene());
        settings.refresh();
        seen.refresh();
        step.refresh();
        clock.refresh();
        strip.show(StripOf.desk(desk, dress));
    }

    /** Starts or stops the bubbles. */
    public void setStill(boolean on) {
        still.setSelected(on);
        motion.run(!on);
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        setBackground(other.palette().ground());
        title.setText(other.text("window.title", desk.tank().unit().name()));
        Buttons.name(still, other, "window.still");
        picture.dress(other.words(), other.palette());
        pictureCard.dress(other);
        settings.dress(other);
        seen.dress(other);
        step.dress(other);
        clock.dress(other);
        strip.dress(other.words(), other.palette());
        stripCard.dress(other);
        refresh();
    }

    public UnitPicture picture() {
        return picture;
    }

    public Desk desk() {
        return desk;
    }
}
