package io.github.weirwise.demo.window;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.demo.chart.ChartCard;
import io.github.weirwise.demo.chart.StripDrawing;
import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.desk.TankTime;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Group;
import io.github.weirwise.demo.panel.JournalCard;
import io.github.weirwise.demo.panel.Pieces;
import io.github.weirwise.demo.panel.Pieces.Piece;
import io.github.weirwise.demo.panel.Place;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.panel.SettingsCard;
import io.github.weirwise.demo.panel.Slices;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.demo.round.ReadSketch;
import io.github.weirwise.demo.round.RoundPanel;
import io.github.weirwise.demo.round.SumsCard;
import java.awt.BorderLayout;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** The round of one unit, own or invented, and what stands behind it: the last days and the journal. */
final class RoundUse implements Use {
    private final Desk desk;
    private final Adviser adviser;
    private final Background background;
    private final Saving saving;
    private final JPanel controls = new JPanel(new BorderLayout());
    private final Optional<ReadSketch> sketch;
    private final JPanel choice = new JPanel(new MigLayout("insets 0, gapx 6"));
    private final Group group = new Group();
    private final Map<String, JToggleButton> buttons = new LinkedHashMap<>();
    private final Map<String, JComponent> pages = new LinkedHashMap<>();
    private final Place place = new Place();
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fill, wrap 1, gapy 8", "[grow,fill]", "[][grow,fill]"));
    private final Slices slices;
    private final Pieces pieces;
    private Optional<RoundPanel> round = Optional.empty();
    private Map<String, String> left = Map.of();
    private Consumer<Map<String, String>> typed = kept -> {};
    private Optional<BiConsumer<Duration, Runnable>> passing = Optional.empty();
    private Dress dress;

    RoundUse(Desk desk, Adviser adviser, Background background, Saving saving, Dress dress) {
        this.desk = desk;
        this.adviser = adviser;
        this.background = background;
        this.saving = saving;
        this.dress = dress;
        sketch = desk instanceof FileDesk ? Optional.of(new ReadSketch(desk, dress)) : Optional.empty();
        slices = new Slices(background);
        pieces = new Pieces(slices, panel, controls);
        controls.setOpaque(false);
        panel.setOpaque(false);
        choice.setOpaque(false);
        panel.add(choice);
        panel.add(place.outside(), "grow, push, wmin 0, hmin 0");
        round();
        pieces.add(this::settings);
        pieces.add(this::sums);
        pieces.add(this::days);
        pieces.add(this::journal);
        desk.onChange(this::refresh);
    }

    /** Lets the time until the next look go by as this does it. */
    void passTimeBy(BiConsumer<Duration, Runnable> other) {
        passing = Optional.of(other);
        round.ifPresent(each -> each.passTimeBy(other));
    }

    private Piece settings() {
        if (!(desk instanceof TankDesk tank)) {
            return Piece.still(other -> {});
        }
        SettingsCard settings = SettingsCard.of(tank, dress);
        controls.add(settings);
        return new Piece(settings::refresh, settings::dress);
    }

    private void round() {
        RoundPanel made = new RoundPanel(desk, this::work, saving, dress);
        List<Runnable> steps = made.steps();
        steps.forEach(step -> pieces.add(() -> {
            step.run();
            return Piece.still(other -> {});
        }));
        pieces.add(() -> {
            passing.ifPresent(made::passTimeBy);
            made.again(left);
            made.onTyped(() -> typed.accept(made.kept()));
            round = Optional.of(made);
            page("round.page.round", made);
            turn("round.page.round");
            if (sketch.isPresent()) {
                background.soon(made::goTo);
            }
            return new Piece(made::refresh, made::dress);
        });
    }

    private Piece sums() {
        SumsCard sums = new SumsCard(desk, dress);
        page("round.page.sums", sums);
        return new Piece(sums::refresh, sums::dress);
    }

    private Piece days() {
        ChartCard days = new ChartCard("days", daysDrawing(), dress);
        page("round.page.days", days);
        return new Piece(() -> days.show(daysDrawing()), days::dress);
    }

    private StripDrawing daysDrawing() {
        return new StripDrawing(StripOf.desk(desk, dress));
    }

    private Piece journal() {
        JournalCard journal = new JournalCard(desk, dress);
        page("round.page.journal", journal);
        return new Piece(journal::refresh, journal::dress);
    }

    private void page(String key, JComponent page) {
        JToggleButton button = new JToggleButton();
        button.setName(key);
        button.addActionListener(e -> turn(key));
        Buttons.name(button, dress, key);
        group.add(button);
        buttons.put(key, button);
        choice.add(button);
        pages.put(key, page);
        place.keep(page);
    }

    private void turn(String key) {
        buttons.get(key).setSelected(true);
        place.hold(pages.get(key));
    }

    Desk desk() {
        return desk;
    }

    /** Goes on to the one thing to do. */
    void ask() {
        round.ifPresent(RoundPanel::ask);
    }

    /** Works out the next step from all that is in the journal. */
    private void work() {
        var journalNow = desk.journal();
        var now = desk.now();
        Supplier<Advice> work = () -> adviser.advise(desk.unit(), desk.told(), journalNow, now);
        background.run(work, given -> {
            if (journalNow.equals(desk.journal())) {
                desk.advised(given);
            }
        });
    }

    /** Gives what is typed and not noted yet to this, whenever it changes. */
    void onTyped(Consumer<Map<String, String>> listener) {
        typed = listener;
    }

    /** Puts back what was typed and not noted when the window closed. */
    void again(Map<String, String> kept) {
        left = kept;
        round.ifPresent(made -> made.again(kept));
    }

    @Override
    public String key() {
        return "use.tune";
    }

    @Override
    public Optional<JComponent> picture() {
        return sketch.map(each -> each);
    }

    @Override
    public JComponent controls() {
        return controls;
    }

    @Override
    public JComponent panel() {
        return panel;
    }

    @Override
    public Scene scene() {
        return desk.scene();
    }

    @Override
    public void moveWeir(double crestMm) {
        if (desk instanceof TankDesk tank) {
            tank.moveWeir(crestMm);
        }
    }

    @Override
    public Optional<TankTime> time() {
        return desk instanceof TankTime clock ? Optional.of(clock) : Optional.empty();
    }

    @Override
    public String title(Dress other) {
        return other.text(desk instanceof TankTime ? "tune.invented" : "tune.own", desk.title());
    }

    @Override
    public void refresh() {
        pieces.refresh();
        sketch.ifPresent(ReadSketch::repaint);
    }

    @Override
    public void dress(Dress other) {
        dress = other;
        buttons.forEach((key, button) -> Buttons.name(button, other, key));
        sketch.ifPresent(each -> each.dress(other));
        pieces.dress(other);
    }

    @Override
    public void build(Runnable between, Runnable last) {
        slices.between(between);
        slices.add(last);
        slices.start();
    }

    @Override
    public void onChange(Runnable listener) {
        desk.onChange(listener);
    }
}
