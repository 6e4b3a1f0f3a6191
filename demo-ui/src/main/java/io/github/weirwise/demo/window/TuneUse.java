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
import io.github.weirwise.demo.panel.SeeCard;
import io.github.weirwise.demo.panel.SettingsCard;
import io.github.weirwise.demo.panel.StepCard;
import io.github.weirwise.demo.picture.Scene;
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
    private final SettingsCard settings;
    private final SeeCard see;
    private final StepCard step;
    private final JournalCard journal;
    private final ChartCard strip;
    private final JPanel past = new JPanel(new CardLayout());
    private final JButton toJournal = new JButton();
    private final JButton toDays = new JButton();
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fill, wrap 1, gap 10", "[grow,fill]", "[][grow,fill][]"));
    private Dress dress;

    TuneUse(Desk desk, Adviser adviser, Background background, Dress dress) {
        this.desk = desk;
        this.adviser = adviser;
        this.background = background;
        this.dress = dress;
        settings = SettingsCard.of(desk, dress);
        see = new SeeCard(desk, dress);
        step = new StepCard(desk, this::ask, dress);
        journal = new JournalCard(desk, dress);
        strip = new ChartCard("days", new StripDrawing(StripOf.desk(desk, dress)), dress);
        panel.setOpaque(false);
        panel.add(see, "hmin pref");
        panel.add(step, "grow, push, h 150:250:");
        panel.add(past, "grow, h 160:190:260");
        past.setOpaque(false);
        past.add(strip, "days");
        past.add(journal, "journal");
        strip.besideHeading(toJournal);
        journal.besideHeading(toDays);
        toJournal.setName("past.journal");
        toDays.setName("past.days");
        toJournal.addActionListener(e -> turn("journal", toDays));
        toDays.addActionListener(e -> turn("days", toJournal));
        dress(dress);
        desk.onChange(this::refresh);
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
        return settings;
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
        settings.refresh();
        see.refresh();
        step.refresh();
        journal.refresh();
        strip.show(new StripDrawing(StripOf.desk(desk, dress)));
    }

    @Override
    public void dress(Dress other) {
        dress = other;
        settings.dress(other);
        see.dress(other);
        step.dress(other);
        journal.dress(other);
        strip.dress(other);
        Buttons.name(toJournal, other, "past.journal");
        Buttons.name(toDays, other, "past.days");
    }

    @Override
    public void onChange(Runnable listener) {
        desk.onChange(listener);
    }
}
