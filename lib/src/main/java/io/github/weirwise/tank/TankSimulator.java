package io.github.weirwise.tank;

import io.github.weirwise.report.Require;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Takes a tank from one moment to a later one, by ordinary differential equations between events (Dormand &amp; Prince's
 * embedded pair of orders 5 and 4, steps by error control, with event detection).
 *
 * <p>A pure function: the same plan, law, state and events give the same later state, bit for bit; states can be kept and
 * branched. Holds nothing that changes and is thread-safe if its law is.
 */
public final class TankSimulator {
    private final TankPlan plan;
    private final SkimmerLaw law;

    /** A simulator whose skimmer is the plan's own unit. */
    public TankSimulator(TankPlan plan) {
        this(plan, SkimmerLaw.of(plan.unit()));
    }

    /** A simulator with another behaviour of the skimmer. */
    public TankSimulator(TankPlan plan, SkimmerLaw law) {
        this.plan = Objects.requireNonNull(plan, "plan");
        this.law = Objects.requireNonNull(law, "law");
    }

    /** The plan. */
    public TankPlan plan() {
        return plan;
    }

    /**
     * The tank at a later hour.
     *
     * @param from where to begin
     * @param untilHours hour of the tank's clock to end at, at most 100 years later
     * @param events what happens; those from {@code from} on and before {@code untilHours} count, others are left alone,
     *     so that a run can be cut anywhere
     * @throws io.github.weirwise.report.OutOfRangeException if the end lies before the start
     */
    public TankState advance(TankState from, double untilHours, List<? extends TankEvent> events) {
        return run(from, untilHours, events, Double.POSITIVE_INFINITY).end();
    }

    /**
     * The same with states on the way.
     *
     * @param from where to begin
     * @param untilHours hour of the tank's clock to end at
     * @param events what happens
     * @param everyHours distance of the states to keep, above 0; they are read off the finished steps, so the result does
     *     not depend on it. A state at the hour of an event is the one before it
     * @throws io.github.weirwise.report.OutOfRangeException if the end lies before the start
     */
    public TankRun run(TankState from, double untilHours, List<? extends TankEvent> events, double everyHours) {
        Require.inRange(
                "untilHours", untilHours, from.hours(), from.hours() + 876600, "h", "give a later hour of the clock");
        if (!(everyHours > 0)) {
            throw new IllegalArgumentException("everyHours must be above 0, got " + everyHours);
        }
        List<TankState> samples = new ArrayList<>();
        TankDraft draft = new TankDraft(from);
        TankClock clock = new TankClock(plan, law, draft, everyHours, samples);
        clock.runUntil(untilHours, events);
        return new TankRun(draft.state(), samples);
    }

    /**
     * The tank at the same moment with something done to it: what hands change shows at once, foam and water follow with time.
     *
     * @param from the moment
     * @param events what is done, in this order; their hours are not looked at
     */
    public TankState done(TankState from, List<? extends TankEvent> events) {
        TankDraft draft = new TankDraft(from);
        EventEffects effects = new EventEffects(plan);
        events.forEach(event -> effects.apply(draft, event));
        new TankWatch(plan, draft).look();
        return draft.state();
    }

    /** What the skimmer sees at a moment of the tank. */
    public Settings settings(TankState state) {
        TankDraft draft = new TankDraft(state);
        TankRates rates = new TankRates(plan, law);
        rates.begin(draft);
        return rates.view().settings(rates.look(state.hours(), draft.y), draft, draft.y);
    }

    /** The skimmer at rest as it would settle at a moment of the tank: the plan's unit with {@link #settings}. */
    public OperatingPoint operatingPoint(TankState state) {
        return OperatingPoint.of(plan.unit(), settings(state));
    }
}
