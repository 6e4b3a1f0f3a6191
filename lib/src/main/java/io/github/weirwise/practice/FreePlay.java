package io.github.weirwise.practice;

import io.github.weirwise.advice.Step;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankEvent;
import io.github.weirwise.tank.TankParameters;
import io.github.weirwise.tank.TankPlan;
import io.github.weirwise.tank.TankProcess;
import io.github.weirwise.tank.TankStart;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.tank.WasteRoute;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmateStrength;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Free practice on the virtual tank of the sessions: no task, no questions, no end; the same tank, eye and hands, so that an act
 * does here what it does in a {@link PracticeSession}. Immutable and thread-safe; only the present is kept.
 *
 * <p>What is done shows at once; the minutes that it takes go by before anything else is done, so that a knob can be turned to
 * and fro first: keep the play from before, and turn that.
 */
public final class FreePlay {
    private static final double SETTLED_LOG = 0.05;
    private static final double LEAST_ML_PER_DAY = 0.05;
    /** So much water that what is skimmed in days does not change it. */
    private static final double STILL_LITRES = 1e5;

    /** A can of 5 L without a float: what runs over is on the floor. */
    private static final WasteRoute CAN = new WasteRoute(true, 5, false);

    private final Bench bench;
    private final SkimmerUnit told;
    private final boolean still;
    private final int seed;
    private final double beganAtHours;
    private final double handsBusyMinutes;
    private final List<JournalEntry> noted;
    /** Worked out when it is first asked for; immutable, so it does not matter which thread's is kept. */
    private OperatingPoint rest;

    private FreePlay(FreePlay from, Bench bench, double handsBusyMinutes, List<JournalEntry> noted) {
        this(from.told, from.still, from.seed, from.beganAtHours, bench, handsBusyMinutes, noted);
    }

    private FreePlay(
            SkimmerUnit told,
            boolean still,
            int seed,
            double beganAtHours,
            Bench bench,
            double handsBusyMinutes,
            List<JournalEntry> noted) {
        this.told = told;
        this.still = still;
        this.seed = seed;
        this.beganAtHours = beganAtHours;
        this.bench = bench;
        this.handsBusyMinutes = handsBusyMinutes;
        this.noted = List.copyOf(noted);
    }

    /**
     * A running tank, from the hour when somebody comes in; its cup has just been emptied. Hours when others took readings are
     * not looked at.
     *
     * @param unit the unit as its sheet describes it
     * @param tank the tank, hidden truth included
     * @param start how it begins
     * @param seed of the errors of reading
     */
    public static FreePlay begin(SkimmerUnit unit, ScenarioTank tank, ScenarioStart start, int seed) {
        return begin(unit, tank, start, seed, List.of());
    }

    /** The same with more to happen. */
    static FreePlay begin(SkimmerUnit unit, ScenarioTank tank, ScenarioStart start, int seed, List<TankEvent> events) {
        Bench bench = Bench.of(unit, tank, start, seed).withEvents(events);
        FreePlay first = new FreePlay(unit, false, seed, bench.hours(), bench, 0, List.of());
        return first.runTo(start.arrivesAtHour()).cupEmptied();
    }

    /**
     * A unit in water that stays as it is set; only the foam follows with time. It begins settled. A cup with a drain drains into a
     * can.
     *
     * @param unit the unit
     * @param settings everything of it; the level beyond the weir is a clean pad's
     */
    public static FreePlay still(SkimmerUnit unit, Settings settings) {
        WasteRoute waste = unit.cupDrainLitresPerHour().isPresent() ? CAN : WasteRoute.CUP_ONLY;
        TankPlan plan = TankPlan.around(unit, STILL_LITRES)
                .withWaste(waste)
                .withParameters(TankParameters.DEFAULT.only(TankProcess.SKIMMING, TankProcess.FOAM_LAG));
        TankState tank = TankStart.exactly(plan, settings).atHours(8);
        Bench bench = new Bench(plan, tank, List.of(), Bench.Emptied.now(tank), List.of());
        double restMlPerDay = bench.point().skimmateMlPerDay();
        TankState settled = tank.with(Stock.SKIMMATE_ML_PER_DAY, restMlPerDay).with(Stock.FILM_LOST, 0);
        FreePlay empty = new FreePlay(unit, true, 0, tank.hours(), bench, 0, List.of());
        return new FreePlay(empty, at(bench, settled), 0, List.of());
    }

    /** Lets the time run; hands that are busy finish first. */
    public FreePlay run(Duration time) {
        return runTo(bench.hours() + Math.max(time.toMillis() / 3.6e6, handsBusyMinutes / 60));
    }

    private FreePlay handsFree() {
        return handsBusyMinutes > 0 ? runTo(bench.hours() + handsBusyMinutes / 60) : this;
    }

    private FreePlay runTo(double untilHours) {
        if (!(untilHours > bench.hours())) {
            return this;
        }
        List<TankEvent> events = new ArrayList<>(bench.events());
        events.addAll(Bench.reservoirFilled(beganAtHours, bench.hours(), untilHours));
        TankState end = bench.simulator().advance(bench.tank(), untilHours, events);
        return new FreePlay(this, at(bench, still ? end.inWaterOf(bench.tank()) : end), 0, List.of());
    }

    /** Acts; {@link #noted()} has what belongs into the journal. */
    public FreePlay act(Act act) {
        FreePlay free = handsFree();
        return free.done(Doing.of(free.bench, act), Offers.EVERYTHING.minutes(act));
    }

    /** Sets the weir to a mark, as far as it travels. */
    public FreePlay setWeir(double crestMm) {
        FreePlay free = handsFree();
        return free.done(Doing.weir(free.bench, crestMm), Act.Kind.MOVE_WEIR.minutes());
    }

    private FreePlay done(Doing doing, double minutes) {
        return new FreePlay(this, doing.bench().atOnce(), minutes, doing.noted());
    }

    /** Does what an advised step asks for, looks included; nothing for waiting. */
    public FreePlay follow(Step step) {
        if (step instanceof Step.Look look) {
            return look(Look.of(look.what()));
        }
        FreePlay now = this;
        List<JournalEntry> all = new ArrayList<>();
        for (Act act : AdviserVisitor.acts(step)) {
            now = now.act(act);
            all.addAll(now.noted);
        }
        return now == this ? this : new FreePlay(now, now.bench, now.handsBusyMinutes, all);
    }

    /** Looks at something, which takes its minutes; {@link #noted()} has the reading. Measuring the cup empties it. */
    public FreePlay look(Look look) {
        FreePlay free = handsFree();
        FreePlay there = free.runTo(free.bench.hours() + look.minutes() / 60.0);
        JournalEntry seen = new Eye(there.bench, seed, 1).entry(look);
        Bench after = look.emptiesTheCup() ? there.bench.emptied().atOnce() : there.bench;
        return new FreePlay(there, after, 0, List.of(seen));
    }

    /** Empties the cup. */
    public FreePlay cupEmptied() {
        return new FreePlay(this, bench.emptied().atOnce(), handsBusyMinutes, List.of());
    }

    /**
     * The same with everything set anew, also what no hand can set; only in water that stays as it is set. What is in foam and
     * cup stays; a weir that moves costs the foam what it costs a hand.
     *
     * @throws IllegalStateException in a running tank
     */
    public FreePlay set(UnaryOperator<Settings> change) {
        if (!still) {
            throw new IllegalStateException("this tank runs; act on it");
        }
        Settings before = settings();
        Settings next = change.apply(before);
        TankState turned = bench.simulator().done(bench.tank(), turns(before, next));
        TankState exact = TankStart.exactly(bench.plan(), next);
        TankState seen =
                turned.inWaterOf(exact).with(Stock.OIL, exact.of(Stock.OIL)).with(Stock.AGENT, exact.of(Stock.AGENT));
        return new FreePlay(this, at(bench, seen), 0, List.of());
    }

    private List<TankEvent> turns(Settings before, Settings next) {
        double now = bench.hours();
        double slipMm = next.condition().weirSlipMm() - before.condition().weirSlipMm();
        List<TankEvent> turns = new ArrayList<>(List.of(
                new TankEvent.FlowSet(now, next.flowLitresPerHour()),
                new TankEvent.AirSet(now, next.airLitresPerHour()),
                new TankEvent.TemperatureSet(now, next.waterCelsius()),
                new TankEvent.CupPressure(now, next.condition().backPressurePa()),
                new TankEvent.WeirSlipped(now, slipMm)));
        if (next.weirCrestMm() != before.weirCrestMm()) {
            turns.add(new TankEvent.WeirSet(now, next.weirCrestMm()));
        }
        return turns;
    }

    private static Bench at(Bench bench, TankState tank) {
        List<TankEvent> toCome = bench.events().stream()
                .filter(event -> event.atHours() >= tank.hours())
                .toList();
        return new Bench(bench.plan(), tank, toCome, bench.lastEmptied(), List.of());
    }

    /** What the last act or look gives for the journal. */
    public List<JournalEntry> noted() {
        return noted;
    }

    /** The present on the journal's clock. */
    public Instant now() {
        return SessionClock.at(bench.hours());
    }

    /** The unit as its sheet describes it. */
    public SkimmerUnit unit() {
        return told;
    }

    /** How the unit is really set, with all that nobody is told. */
    public Settings settings() {
        return bench.settings();
    }

    /** How the unit would come to rest as it is now. */
    public OperatingPoint rest() {
        OperatingPoint known = rest;
        if (known == null) {
            known = bench.point();
            rest = known;
        }
        return known;
    }

    /** True state of the tank. */
    public TankState truth() {
        return bench.tank();
    }

    /** Where the skimmate goes. */
    public WasteRoute waste() {
        return bench.plan().waste();
    }

    /** What lies on the floor since cup or container was last emptied: who empties it wipes up. */
    public double spilledLitres() {
        return bench.spilledLitres();
    }

    /** Darkness of what stands in the cup; of what would come, when it is empty. */
    public double cupPtCo() {
        double mgPerLitre = bench.tank().collectedMgPerLitre();
        return mgPerLitre > 0 ? SkimmateStrength.darknessPtCo(mgPerLitre) : rest().darknessPtCo();
    }

    /** Whether the foam is within a twentieth of where it would come to rest. */
    public boolean settled() {
        double now = Math.max(LEAST_ML_PER_DAY, bench.tank().of(Stock.SKIMMATE_ML_PER_DAY));
        return Math.abs(Math.log(now / Math.max(LEAST_ML_PER_DAY, rest().skimmateMlPerDay()))) < SETTLED_LOG;
    }
}
