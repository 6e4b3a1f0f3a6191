package io.github.weirwise.demo.window;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.LearningStep;
import io.github.weirwise.demo.chart.ChartCard;
import io.github.weirwise.demo.chart.StripData;
import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.desk.Learning;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.desk.TankTime;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.JournalCard;
import io.github.weirwise.demo.panel.Pieces.Piece;
import io.github.weirwise.demo.panel.Room;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.panel.SettingsCard;
import io.github.weirwise.demo.panel.Tabs;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.demo.round.LearnCard;
import io.github.weirwise.demo.round.ReadSketch;
import io.github.weirwise.demo.round.RoundPanel;
import io.github.weirwise.demo.round.ScorePage;
import io.github.weirwise.demo.round.SumsCard;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComponent;

/** The round of one unit, own or invented, and what stands behind it: the last days and the journal. */
final class RoundUse extends UseOfPieces {
    static final String KEY = "use.tune";

    private final Desk desk;
    private final Adviser adviser;
    private final Background background;
    private final Saving saving;
    private final Optional<ReadSketch> sketch;
    private final Tabs tabs = new Tabs();
    private Optional<ChartCard> below = Optional.empty();
    private Optional<RoundPanel> round = Optional.empty();
    private Map<String, String> left = Map.of();
    private Consumer<Map<String, String>> typed = kept -> {};
    private Optional<BiConsumer<Duration, Runnable>> passing = Optional.empty();

    RoundUse(Desk desk, Adviser adviser, Background background, Saving saving, Dress dress) {
        super(KEY, "[grow,fill]", background, dress);
        this.desk = desk;
        this.adviser = adviser;
        this.background = background;
        this.saving = saving;
        sketch = desk instanceof FileDesk ? Optional.of(new ReadSketch(desk, dress)) : Optional.empty();
        panel().add(tabs, "grow, push, wmin 0, hmin 0");
        round();
        pieces().add(this::settings);
        pieces().also(this::sums);
        pieces().also(this::days);
        pieces().also(this::score);
        pieces().also(this::learn);
        pieces().also(this::journal);
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
        SettingsCard settings = new SettingsCard(tank, dress());
        controls().add(settings);
        return new Piece(settings::refresh, settings::dress);
    }

    private void round() {
        RoundPanel made = new RoundPanel(desk, this::work, saving, dress());
        tabs.add("round.page.round", made, new Piece(made::refresh, made::dress), dress());
        made.steps().forEach(pieces()::also);
        pieces().add(() -> {
            passing.ifPresent(made::passTimeBy);
            made.again(left);
            made.onTyped(() -> typed.accept(made.kept()));
            made.below(new Room(() -> {
                ChartCard days = new ChartCard("days", daysDrawing(), dress());
                below = Optional.of(days);
                return days;
            }));
            round = Optional.of(made);
            if (sketch.isPresent()) {
                background.soon(made::goTo);
            }
            return new Piece(
                    () -> {
                        tabs.refresh();
                        below.filter(ChartCard::isShowing).ifPresent(days -> days.show(daysDrawing()));
                    },
                    other -> {
                        tabs.dress(other);
                        below.ifPresent(days -> days.dress(other));
                    });
        });
    }

    private void sums() {
        SumsCard sums = new SumsCard(desk, dress());
        tabs.add("round.page.sums", sums, new Piece(sums::refresh, sums::dress), dress());
    }

    private void days() {
        ChartCard days = new ChartCard("days", daysDrawing(), dress());
        tabs.add("round.page.days", days, new Piece(() -> days.show(daysDrawing()), days::dress), dress());
    }

    private StripData daysDrawing() {
        return StripOf.desk(desk, dress());
    }

    private void score() {
        ScorePage score = new ScorePage(desk, background, dress());
        tabs.add("round.page.score", score, new Piece(score::refresh, score::dress), dress());
    }

    private void learn() {
        LearnCard learn = new LearnCard(desk, background, this::turnAndAsk, dress());
        tabs.add("round.page.learn", learn, new Piece(learn::refresh, learn::dress), dress());
    }

    private void turnAndAsk() {
        tabs.turn("round.page.round");
        ask();
    }

    private void journal() {
        JournalCard journal = new JournalCard(desk, dress());
        tabs.add("round.page.journal", journal, new Piece(journal::refresh, journal::dress), dress());
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
                advised(given);
            }
        });
    }

    /** While a plan to learn the unit runs its step stands in the adviser's place, unless something is to be made safe. */
    private void advised(Advice given) {
        Optional<Learning> runs = Learning.in(desk.journal()).filter(Learning::runs);
        Optional<Advice> step =
                runs.flatMap(each -> LearningStep.of(each.plan(), given, desk.unit(), desk.settings(), desk.now()));
        if (runs.isPresent() && step.isEmpty()) {
            desk.note(List.of(Learning.end(desk.now())), () -> desk.advised(given));
        } else {
            desk.advised(step.orElse(given));
        }
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
    public Optional<JComponent> picture() {
        return sketch.map(each -> each);
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
        super.refresh();
        sketch.ifPresent(ReadSketch::anew);
    }

    @Override
    public void dress(Dress other) {
        super.dress(other);
        sketch.ifPresent(each -> each.dress(other));
    }

    @Override
    public void onChange(Runnable listener) {
        desk.onChange(listener);
    }
}
