package io.github.weirwise.demo.desk;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.json.Request;
import io.github.weirwise.practice.Act;
import io.github.weirwise.practice.FreePlay;
import io.github.weirwise.practice.Look;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.unit.Settings;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The tuning of the invented tank, free practice with a journal: its time runs as fast as one likes, and while a hand acts. */
public final class TankDesk extends Desk implements TankTime {
    private static final Duration PAST = Duration.ofHours(6);

    private final History history = new History();
    private final Scenes scenes = new Scenes();
    private final Instant start;
    private FreePlay play;
    /** The tank before the knob that is in hand was turned; empty when none is. */
    private Optional<FreePlay> inHand = Optional.empty();

    private Lever knobInHand = Lever.WEIR;

    /** The work on a tank at its first moment. */
    public TankDesk(FreePlay play) {
        super(play.unit(), InventedTank.told(), Journal.EMPTY);
        this.play = play;
        start = play.now();
        history.note(play);
    }

    /** The tank as it is. */
    public FreePlay tank() {
        return play;
    }

    private void lives(FreePlay next) {
        play = next;
        inHand = Optional.empty();
        history.note(play);
    }

    @Override
    public Instant now() {
        return play.now();
    }

    @Override
    public Instant start() {
        return start;
    }

    @Override
    public String title() {
        return unit().name();
    }

    /** As the knobs stand; a stopped injector draws no air. */
    @Override
    public Settings settings() {
        TankState set = play.truth();
        return told().withWeirCrestMm(set.of(Stock.WEIR_CREST_MM))
                .withFlowLitresPerHour(set.of(Stock.FLOW_LITRES_PER_HOUR))
                .withAirLitresPerHour(set.is(Stock.INJECTOR_ON) ? set.of(Stock.AIR_LITRES_PER_HOUR) : 0);
    }

    @Override
    public List<History.Point> points() {
        return history.points();
    }

    /** What a person sees who stands there; figures are for those who read them. */
    @Override
    public Scene scene() {
        Scene scene = scenes.of(play, history.cup()).withoutFigures();
        return Forecast.newest(journal())
                .filter(told -> told.until().isAfter(now()))
                .map(told -> scene.expecting(told.levelMm(), told.mlPerDay()))
                .orElse(scene);
    }

    /** What was in hand is put back as it was; nothing else can be undone at the tank. */
    @Override
    protected void setTo(Settings settings) {
        inHand.ifPresent(this::lives);
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
        return entries.get(entries.size() - 1) instanceof Reading || inHand.isPresent();
    }

    /** Sets the weir. */
    public void moveWeir(double crestMm) {
        double wanted = unit().weir().clampMm(crestMm);
        if (wanted != settings().weirCrestMm()) {
            turn(Lever.WEIR, tank -> tank.setWeir(wanted));
        }
    }

    /** Sets the flow. */
    public void setFlow(double litresPerHour) {
        if (litresPerHour != settings().flowLitresPerHour()) {
            turn(Lever.FLOW, tank -> tank.act(new Act.SetFlow(litresPerHour)));
        }
    }

    /** Sets the air. */
    public void setAir(double litresPerHour) {
        if (litresPerHour != settings().airLitresPerHour()) {
            turn(Lever.AIR, tank -> tank.act(new Act.SetAir(litresPerHour)));
        }
    }

    /** A knob that is turned on without time between counts as turned once. */
    private void turn(Lever knob, UnaryOperator<FreePlay> to) {
        List<JournalEntry> kept = new ArrayList<>(journal().entries());
        FreePlay before = play;
        if (inHand.isPresent() && knobInHand == knob && kept.removeAll(play.noted())) {
            before = inHand.get();
        }
        lives(to.apply(before));
        kept.addAll(play.noted());
        inHand = Optional.of(before);
        knobInHand = knob;
        rewrite(kept);
    }

    @Override
    protected List<JournalEntry> take(Advice given) {
        FreePlay done = play.follow(given.step());
        if (done == play) {
            return List.of();
        }
        lives(done);
        return done.noted();
    }

    /** Looks at what is looked at on every round, and notes it. */
    public Reading look() {
        return look(Look.ROUND);
    }

    /** Looks at the named things one after another and notes what is seen as one reading. */
    public Reading look(List<LookKind> kinds) {
        List<Observation> seen = new ArrayList<>();
        for (LookKind kind : kinds) {
            seen.addAll(seen(Look.of(kind)).observations());
        }
        Reading all = new Reading(now(), "", seen);
        note(all);
        return all;
    }

    private Reading look(Look look) {
        Reading reading = seen(look);
        note(reading);
        return reading;
    }

    private Reading seen(Look look) {
        lives(play.look(look));
        return (Reading) play.noted().get(0);
    }

    @Override
    public void run(Duration time) {
        live(time);
        changed();
    }

    private void live(Duration time) {
        inHand = Optional.empty();
        play = history.run(play, time);
    }

    @Override
    public boolean settled() {
        return play.settled();
    }

    @Override
    public void runUntilSettled() {
        inHand = Optional.empty();
        play = history.runUntilSettled(play);
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
            lives(again(entry));
        }
        runTo(saved.now());
        rewrite(saved.journal().entries());
    }

    private FreePlay again(JournalEntry entry) {
        if (entry instanceof WeirMove move) {
            return play.setWeir(move.toCrestMm());
        }
        if (entry instanceof SettingChange change) {
            return play.act(
                    change.what() == SettingChange.Knob.FLOW
                            ? new Act.SetFlow(change.litresPerHour())
                            : new Act.SetAir(change.litresPerHour()));
        }
        if (entry instanceof Service service) {
            return play.act(new Act.ServicePart(service.part()));
        }
        if (entry instanceof Happening happening && happening.kind() == Happening.Kind.PUMP_STOPPED) {
            return play.act(new Act.StopAir());
        }
        if (entry instanceof Happening happening && happening.kind() == Happening.Kind.PUMP_RESTARTED) {
            return play.act(new Act.StartAir());
        }
        boolean emptied = entry instanceof Reading reading
                && reading.find(Observation.CupVolume.class).isPresent();
        return emptied ? play.cupEmptied() : play;
    }

    private void runTo(Instant moment) {
        if (moment.isAfter(now())) {
            live(Duration.between(now(), moment));
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
