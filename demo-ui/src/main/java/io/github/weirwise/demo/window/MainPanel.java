package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.desk.TankTime;
import io.github.weirwise.demo.desk.TryDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Theme;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Group;
import io.github.weirwise.demo.panel.Place;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.panel.Slices;
import io.github.weirwise.demo.panel.Stack;
import io.github.weirwise.demo.picture.UnitPicture;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.unit.LanternQuay;
import java.awt.EventQueue;
import java.awt.Graphics;
import java.awt.Window;
import java.awt.event.WindowEvent;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** Everything in the window: the unit with its clock on the left, what the chosen use needs on the right. */
public final class MainPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Adviser adviser;
    private final transient Background background;
    private final transient Supplier<TankDesk> anew;
    private final transient Later<TankDesk> invented;
    private final transient Asking asking;
    private final transient Papers papers;
    private final transient Saving saving;
    private final transient OwnUnits own;
    private transient Optional<Unfinished> unfinished = Optional.empty();
    private transient Optional<Keeping> keeping = Optional.empty();
    private final transient Menus menus;
    private final transient Uses uses = new Uses(this::made);
    private final Map<String, JToggleButton> useButtons = new LinkedHashMap<>();
    private final JToggleButton still = new JToggleButton();
    private final PictureCard pictureCard;
    private final TroubleBar trouble;
    private final JPanel left =
            new JPanel(new MigLayout("insets 0, fill, wrap 1, gapy 0, hidemode 3", "[grow,fill]", "[grow,fill][]"));
    private final Stack controls = new Stack();
    private final Place right = new Place();
    private final transient PracticeSide practice;
    private transient Use use;
    private transient boolean begun;
    private transient volatile boolean painted;
    private transient volatile boolean complete;
    private transient volatile boolean ready;
    private transient Dress dress;

    /** The window's content, with the start page open; the invented tank is made when it is first wanted. */
    public MainPanel(Supplier<TankDesk> invented, Adviser adviser, Background background, Asking asking, Dress dress) {
        super(new MigLayout("insets 10 12 12 12, fill, gap 10", "[52%,grow,fill][48%,grow,fill]", "[][grow,fill]"));
        anew = invented;
        this.invented = new Later<>(invented, background);
        this.asking = asking;
        this.adviser = adviser;
        this.background = background;
        this.dress = dress;
        papers = new Papers(background, asking, this::tune, this::tell);
        menus = new Menus(deeds(), this::redress, dress);
        saving = (name, text) -> papers.save(name, text, this.dress);
        practice = new PracticeSide(
                background, asking, papers, saving, this::tell, this::dress, () -> choose("use.practise"));
        own = new OwnUnits(background, asking, papers, this::tell, this::dress);
        uses.add(StartUse.KEY, this::start);
        uses.add("use.try", () -> new TryUse(new TryDesk(LanternQuay.jetty()), background, this.dress));
        uses.add(RoundUse.KEY, () -> round(this.invented.now().orElseThrow()));
        uses.add("use.practise", practice::use);
        uses.add(
                "use.care", () -> new CareUse(this::desk, () -> tune().picture(), background, own, saving, this.dress));
        trouble = new TroubleBar(dress);
        pictureCard = new PictureCard(crest -> use.moveWeir(crest), dress);
        Buttons.set(still, "still", () -> pictureCard.motion().run(!still.isSelected()));
        put();
        turn(StartUse.KEY);
        dress(dress);
        if (background == Background.AT_ONCE) {
            begin();
        }
    }

    /** Whatever else there is to make is made when the first picture is in sight. */
    @Override
    public void paint(Graphics g) {
        super.paint(g);
        if (!painted) {
            painted = true;
            EventQueue.invokeLater(this::begin);
        }
    }

    private StartUse start() {
        Map<String, Map<String, Runnable>> cards = new LinkedHashMap<>();
        cards.put("own", ways("start.begin", () -> papers.begin(dress), "start.open", () -> papers.open(dress)));
        cards.put("invented", ways("start.tuneInvented", this::tuneInvented, "start.try", () -> choose("use.try")));
        cards.get("invented").put("start.anew", this::beginAnew);
        cards.put("practice", Map.of("start.practise", () -> choose("use.practise")));
        return new StartUse(own.list(), own::look, cards, background, dress);
    }

    private static Map<String, Runnable> ways(String one, Runnable first, String other, Runnable second) {
        Map<String, Runnable> ways = new LinkedHashMap<>();
        ways.put(one, first);
        ways.put(other, second);
        return ways;
    }

    private RoundUse round(Desk desk) {
        return new RoundUse(desk, adviser, background, saving, dress);
    }

    /** The rest of the first screen is made once something of it is in sight; the other uses follow while nobody waits. */
    void begin() {
        if (begun) {
            return;
        }
        begun = true;
        use.build(() -> {}, () -> {
            complete = true;
            if (background != Background.AT_ONCE) {
                invented.then(tank -> background.soon(this::buildNext));
            }
        });
    }

    /** Whether anything of the window was seen. */
    public boolean painted() {
        return painted;
    }

    /** Whether all of the first screen is there. */
    public boolean complete() {
        return complete;
    }

    /** Whether all screens are there, so that turning to one makes nothing new. */
    public boolean ready() {
        return ready;
    }

    private void buildNext() {
        Optional<String> next =
                uses.keys().stream().filter(key -> !uses.has(key)).findFirst();
        next.ifPresentOrElse(
                key -> {
                    uses.get(key);
                    background.soon(() -> build(uses.get(key)));
                },
                () -> {
                    settle();
                    ready = true;
                });
    }

    private void build(Use next) {
        right.keep(next.panel());
        controls.keep(next.controls());
        pictureCard.prepare(
                next,
                background,
                () -> next.build(this::settle, () -> {
                    Slices slices = new Slices(background);
                    PaintAhead.paint(next.controls(), slices);
                    PaintAhead.paint(next.panel(), slices);
                    slices.add(() -> background.soon(this::buildNext));
                    slices.start();
                }));
    }

    private void settle() {
        controls.setVisible(use.controls().getComponentCount() > 0);
        right.settle();
        controls.settle();
    }

    private void made(Use one) {
        one.onChange(this::refresh);
        if (one instanceof PractiseUse practise) {
            practise.pages().moves(pictureCard.motion()::runs);
        }
        if (one instanceof RoundUse tune) {
            tune.desk().onTrouble(this::tell);
            keeping.ifPresent(each -> each.tuneAt(tune.desk()));
            papers.watch(tune.desk());
            if (tune.desk() instanceof TankTime) {
                tune.passTimeBy((wait, then) -> pictureCard.clock().pass(Optional.of(wait), then));
            }
        }
    }

    private void put() {
        JPanel head = new JPanel(new MigLayout("insets 3 0 3 0, fillx, gapx 6"));
        head.setOpaque(false);
        head.add(menus.bar(), "gapright 8");
        Group group = new Group();
        for (String key : uses.keys()) {
            JToggleButton button = new JToggleButton();
            button.setName(key);
            button.addActionListener(e -> choose(key));
            group.add(button);
            useButtons.put(key, button);
            head.add(button);
        }
        head.add(still, "pushx, alignx right");
        left.setOpaque(false);
        left.add(pictureCard, "grow, push");
        left.add(controls, "gaptop 10");
        JPanel above = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy 10, hidemode 3", "[grow,fill]", ""));
        above.setOpaque(false);
        above.add(head);
        above.add(trouble);
        add(above, "span 2, growx, wrap");
        add(left, "grow, wmin 0, hmin 0");
        add(right.outside(), "grow, wmin 0, hmin 0");
    }

    /** Goes over to another use; one that needs the invented tank waits for it. */
    public void choose(String key) {
        boolean tank = key.equals(RoundUse.KEY) || key.equals("use.care");
        if (tank && !uses.has(RoundUse.KEY)) {
            invented.then(there -> turn(key));
        } else {
            turn(key);
        }
    }

    private void turn(String key) {
        use = uses.get(key);
        useButtons.get(key).setSelected(true);
        controls.hold(use.controls());
        right.hold(use.panel());
        if (begun) {
            use.build(this::settle, () -> {});
        }
        pictureCard.turn(use);
        use.refresh();
        refresh();
        title();
        revalidate();
        repaint();
    }

    /** The window's title names the file that is worked on. */
    private void title() {
        if (SwingUtilities.getWindowAncestor(this) instanceof JFrame frame) {
            boolean file = use.key().equals(RoundUse.KEY) || use.key().equals("use.care");
            frame.setTitle(
                    file && desk() instanceof FileDesk at
                            ? dress.text("window.title", at.path().getFileName(), dress.text("window.name"))
                            : dress.text("window.name"));
        }
    }

    private Map<String, Runnable> deeds() {
        return Map.of(
                "menu.begin", () -> papers.begin(dress),
                "menu.open", () -> papers.open(dress),
                "menu.invented", this::tuneInvented,
                "menu.trainer", () -> practice.openTrainer(),
                "menu.quit", this::quit);
    }

    private void quit() {
        Window window = SwingUtilities.getWindowAncestor(this);
        if (window != null) {
            window.dispatchEvent(new WindowEvent(window, WindowEvent.WINDOW_CLOSING));
        }
    }

    /** Other words or colours, with the look and feel that belongs to them. */
    private void redress(Dress other) {
        if (other.palette() != dress.palette()) {
            Theme.install(other.palette());
            Window window = SwingUtilities.getWindowAncestor(this);
            SwingUtilities.updateComponentTreeUI(window == null ? this : window);
        }
        dress(other);
    }

    /** Keeps unfinished work from now on, and takes up what was left the last time. */
    public void keep(Kept kept, Supplier<TankDesk> untouched) {
        Unfinished work = new Unfinished(kept, background, this::tell);
        Keeping tuning = new Keeping(work, untouched, this::tuneAgain);
        unfinished = Optional.of(work);
        keeping = Optional.of(tuning);
        tuning.begin();
        if (uses.has(RoundUse.KEY)) {
            tuning.tuneAt(desk());
        }
        practice.keep(work);
        own.keep(work, kept);
    }

    /** The window closes: what is not kept yet is kept. */
    void close() {
        unfinished.ifPresent(Unfinished::close);
    }

    /** Looks whether another program has written to the open journal; also done every few seconds. */
    void lookAtJournal() {
        papers.look();
    }

    /** Another invented tank in the place of the one there is; where it is looked after it comes in sight. */
    private void tuneAgain(TankDesk other) {
        invented.is(other);
        if (uses.has(RoundUse.KEY) && desk() instanceof TankDesk) {
            put(round(other));
            if (use.key().equals(RoundUse.KEY)) {
                turn(RoundUse.KEY);
            }
        }
    }

    /** Lets go of the invented tank's days, after a second word. */
    private void beginAnew() {
        if (asking.sure(dress.text("start.sureAnew"), dress)) {
            background.run(anew, other -> {
                tuneAgain(other);
                tuneInvented();
            });
        }
    }

    /** Takes up the tuning of a unit with its journal file. */
    public void tune(FileDesk file) {
        file.writeIn(background);
        new JournalPatience(file, this::tell, trouble::withdraw);
        RoundUse round = round(file);
        own.opened(file, round);
        take(round);
        if (!file.spoilt().isEmpty()) {
            tell(Words.phrase(
                    "trouble.spoilt",
                    file.spoilt().size(),
                    file.spoilt().get(0).number(),
                    file.spoilt().get(0).problem()));
        }
    }

    /** Goes back to tuning the invented tank. */
    public void tuneInvented() {
        invented.then(tank -> take(round(tank)));
    }

    private void take(RoundUse tune) {
        put(tune);
        turn(RoundUse.KEY);
    }

    private void put(RoundUse tune) {
        if (uses.has(RoundUse.KEY)) {
            right.drop(tune().panel());
            controls.drop(tune().controls());
        }
        uses.put(tune);
    }

    /** Asks for the next step in the tuning. */
    public void ask() {
        tune().ask();
    }

    private RoundUse tune() {
        return (RoundUse) uses.get(RoundUse.KEY);
    }

    /** Tells that something went wrong. */
    void tell(Phrase phrase) {
        trouble.tell(phrase);
        revalidate();
    }

    private void refresh() {
        controls.setVisible(use.controls().getComponentCount() > 0);
        pictureCard.refresh(use);
    }

    /** Starts or stops the bubbles. */
    public void setStill(boolean on) {
        still.setSelected(on);
        pictureCard.motion().run(!on);
    }

    public Dress dress() {
        return dress;
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        setBackground(other.palette().ground());
        useButtons.forEach((key, button) -> Buttons.name(button, other, key));
        Buttons.name(still, other, "window.still");
        pictureCard.dress(other);
        menus.dress(other);
        trouble.dress(other);
        practice.dress(other);
        uses.made().forEach(one -> one.dress(other));
        refresh();
    }

    /** The picture; there once a use was turned to that shows one. */
    public UnitPicture picture() {
        return pictureCard.picture();
    }

    /** The desk that is tuned at. */
    public Desk desk() {
        return tune().desk();
    }
}
