package io.github.weirwise.demo.desk;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.demo.tank.Looker;
import io.github.weirwise.demo.tank.TrainingTank;
import io.github.weirwise.json.Request;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.Settings;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The tuning of the invented tank: it can be looked at, and its time runs as fast as one likes. */
public final class TankDesk extends Desk implements TankTime {
    private static final Duration PAST = Duration.ofHours(6);

    private final TrainingTank tank;
    private final Looker looker;
    private final TankHand hand;
    private final History history = new History();

    /** The work on a tank, with scatter by a seed. */
    public TankDesk(TrainingTank tank, long seed) {
        super(tank.unit(), tank.settings().withCondition(Condition.REFERENCE), Journal.EMPTY);
        this.tank = tank;
        this.looker = new Looker(seed);
        this.hand = new TankHand(tank, looker);
        history.note(tank);
    }

    public TrainingTank tank() {
        return tank;
    }

    @Override
    public Instant now() {
        return tank.now();
    }

    @Override
    public Instant start() {
        return TrainingTank.START;
    }

    @Override
    public String title() {
        return unit().name();
    }

    @Override
    public Settings settings() {
        return tank.settings();
    }

    @Override
    public List<History.Point> points() {
        return history.points();
    }

    @Override
    public Scene scene() {
        return Scene.of(unit(), tank.settings(), tank.skimmateMlPerDay(), tank.cupMl(), tank.cupPtCo());
    }

    @Override
    protected void setTo(Settings settings) {
        tank.set(settings.withCondition(tank.settings().condition()));
        history.note(tank);
    }

    @Override
    protected void keep(JournalEntry entry) {
        // The invented tank's journal lives as long as the window.
    }

    @Override
    protected void discard(JournalEntry entry) {
        // See keep.
    }

    /** What was seen can be taken back at any time, what was done only before time has gone by. */
    @Override
    public boolean canUndo() {
        List<JournalEntry> entries = journal().entries();
        if (entries.isEmpty()) {
            return false;
        }
        JournalEntry last = entries.get(entries.size() - 1);
        boolean done = last instanceof WeirMove || last instanceof SettingChange;
        return last instanceof Reading || done && last.at().equals(now());
    }

    @Override
    public void moveWeir(double crestMm) {
        double wanted = unit().weir().clampMm(crestMm);
        if (wanted != settings().weirCrestMm()) {
            setTo(settings().withWeirCrestMm(wanted));
            noteAction(new WeirMove(now(), wanted, false));
        }
    }

    @Override
    public void setFlow(double litresPerHour) {
        if (litresPerHour != settings().flowLitresPerHour()) {
            setTo(settings().withFlowLitresPerHour(litresPerHour));
            noteAction(new SettingChange(now(), SettingChange.Knob.FLOW, litresPerHour));
        }
    }

    @Override
    public void setAir(double litresPerHour) {
        if (litresPerHour != settings().airLitresPerHour()) {
            setTo(settings().withAirLitresPerHour(litresPerHour));
            noteAction(new SettingChange(now(), SettingChange.Knob.AIR, litresPerHour));
        }
    }

    /** A knob that is turned on without time between counts as turned once. */
    private void noteAction(JournalEntry entry) {
        List<JournalEntry> kept = new ArrayList<>(journal().entries());
        kept.removeIf(old -> old.at().equals(entry.at()) && sameKnob(old, entry));
        kept.add(entry);
        rewrite(kept);
    }

    private static boolean sameKnob(JournalEntry old, JournalEntry entry) {
        if (old instanceof SettingChange before && entry instanceof SettingChange after) {
            return before.what() == after.what();
        }
        return old instanceof WeirMove && entry instanceof WeirMove;
    }

    @Override
    protected List<JournalEntry> take(Advice given) {
        List<JournalEntry> done = hand.take(given);
        history.note(tank);
        return done;
    }

    /** Looks at what is looked at on every round, and notes it. */
    public Reading look() {
        return look(Looker.ROUND);
    }

    /** Looks at the named things and notes what is seen. */
    public Reading look(List<LookKind> kinds) {
        Reading reading = looker.read(tank, kinds);
        note(reading);
        return reading;
    }

    @Override
    public void run(Duration time) {
        history.run(tank, time);
        changed();
    }

    @Override
    public boolean settled() {
        return tank.settled();
    }

    @Override
    public void runUntilSettled() {
        history.runUntilSettled(tank);
        changed();
    }

    /** The work so far; the tank's secrets are not in it. */
    public Request saved() {
        return new Request(unit(), told(), journal(), now());
    }

    /** Lets an untouched tank live through what was done to it before. */
    void liveAgain(Request saved) {
        for (JournalEntry entry : saved.journal().entries()) {
            runTo(entry.at());
            hand.again(entry);
            history.note(tank);
        }
        runTo(saved.now());
        rewrite(saved.journal().entries());
    }

    private void runTo(Instant moment) {
        if (moment.isAfter(now())) {
            history.run(tank, Duration.between(now(), moment));
        }
    }

    /** Lets a past day go by with its looks, so that there is something to see at the start. */
    public void liveThroughFirstDay() {
        run(PAST);
        look();
        run(Duration.ofHours(18));
        look();
    }
}
