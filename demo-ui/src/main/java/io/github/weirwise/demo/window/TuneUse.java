package io.github.weirwise.demo.window;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.demo.chart.ChartCard;
import io.github.weirwise.demo.chart.StripDrawing;
import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.TankTime;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.JournalCard;
import io.github.weirwise.demo.panel.Pieces;
import io.github.weirwise.demo.panel.Pieces.Piece;
import io.github.weirwise.demo.panel.SeeCard;
import io.github.weirwise.demo.panel.SettingsCard;
import io.github.weirwise.demo.panel.Slices;
import io.github.weirwise.demo.panel.StepCard;
import io.github.weirwise.demo.picture.Scene;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The tuning of one unit: what is seen, the next step, what was noted, and the last days. */
final class TuneUse implements Use {
    private final Desk desk;
    private final Adviser adviser;
    private final Background background;
    private final JPanel controls = new JPanel(new BorderLayout());
    private final JPanel past = new JPanel(new CardLayout());
    private final JButton toJournal = new JButton();
    private final JButton toDays = new JButton();
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fill, wrap 1, gap 10", "[grow,fill]", "[][grow,fill][]"));
    private final Slices slices;
    private final Pieces pieces;
    private Dress dress;

    TuneUse(Desk desk, Adviser adviser, Background background, Dress dress) {
        this.desk = desk;
        this.adviser = adviser;
        this.background = background;
        this.dress = dress;
        slices = new Slices(background);
        pieces = new Pieces(slices, panel, controls);
        controls.setOpaque(false);
        panel.setOpaque(false);
        past.setOpaque(false);
        toJournal.setName("past.journal");
        toDays.setName("past.days");
        toJournal.addActionListener(e -> turn("journal", toDays));
        toDays.addActionListener(e -> turn("days", toJournal));
        pieces.add(this::settings);
        pieces.add(this::see);
        pieces.add(this::step);
        pieces.add(this::days);
        pieces.add(this::journal);
        desk.onChange(this::refresh);
    }

    private Piece settings() {
        SettingsCard settings = SettingsCard.of(desk, dress);
        controls.add(settings);
        return new Piece(settings::refresh, settings::dress);
    }

    private Piece see() {
        SeeCard see = new SeeCard(desk, dress);
        panel.add(see, "hmin pref");
        return new Piece(see::refresh, see::dress);
    }

    private Piece step() {
        StepCard step = new StepCard(desk, this::ask, dress);
        panel.add(step, "grow, push, h 150:250:");
        return new Piece(step::refresh, step::dress);
    }

    private Piece days() {
        ChartCard days = new ChartCard("days", daysDrawing(), dress);
        days.besideHeading(toJournal);
        Buttons.name(toJournal, dress, "past.journal");
        past.add(days, "days");
        panel.add(past, "grow, h 160:190:260");
        return new Piece(() -> days.show(daysDrawing()), other -> {
            days.dress(other);
            Buttons.name(toJournal, other, "past.journal");
        });
    }

    private StripDrawing daysDrawing() {
        return new StripDrawing(StripOf.desk(desk, dress));
    }

    private Piece journal() {
        JournalCard journal = new JournalCard(desk, dress);
        journal.besideHeading(toDays);
        Buttons.name(toDays, dress, "past.days");
        past.add(journal, "journal");
        return new Piece(journal::refresh, other -> {
            journal.dress(other);
            Buttons.name(toDays, other, "past.days");
        });
    }

    private void turn(String page, JButton back) {
        ((CardLayout) past.getLayout()).show(past, page);
        back.requestFocusInWindow();
    }

    Desk desk() {
        return desk;
    }

    /** Asks for the next step from all that is in the journal. */
    void ask() {
        var journalNow = desk.journal();
        var now = desk.now();
        background.<Advice>run(() -> adviser.advise(desk.unit(), desk.told(), journalNow, now), given -> {
            if (journalNow.equals(desk.journal())) {
                desk.advised(given);
            }
        });
    }

    @Override
    public String key() {
        return "use.tune";
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
        desk.moveWeir(crestMm);
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
    }

    @Override
    public void dress(Dress other) {
        dress = other;
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
