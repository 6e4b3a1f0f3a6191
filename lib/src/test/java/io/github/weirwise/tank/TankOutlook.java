package io.github.weirwise.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * What lies ahead if things go on like this, and what the skimmer is worth: the tank run forward twice, as it is and with
 * the injector stopped.
 *
 * @param summary of the run as it is
 * @param organicsLessG organic matter that is not in the tank because of the skimmer; less than what the foam took, since
 *     some of that would have decayed by now
 * @param nitrateAvoidedG nitrate nitrogen that is not there because of the skimmer
 * @param daysUntilNeckWash until the neck needs washing, if within the horizon
 * @param daysUntilReservoirEmpty from now, if within the horizon
 */
public record TankOutlook(
        TankSummary summary,
        double organicsLessG,
        double nitrateAvoidedG,
        OptionalDouble daysUntilNeckWash,
        OptionalDouble daysUntilReservoirEmpty) {
    /** Film at which the neck needs washing; assumed. */
    private static final double NECK_WASH_AT = 0.4;

    private static final double EVERY_HOURS = 0.25;

    /** Rejects nulls. */
    public TankOutlook {
        Objects.requireNonNull(summary, "summary");
    }

    /**
     * Looks ahead.
     *
     * @param simulator the tank
     * @param now where it stands
     * @param days how far, above 0
     * @param events what is going to happen
     */
    public static TankOutlook of(
            TankSimulator simulator, TankState now, double days, List<? extends TankEvent> events) {
        double until = now.hours() + 24 * days;
        TankRun as = simulator.run(now, until, events, EVERY_HOURS);
        List<TankEvent> stopped = new ArrayList<>(events);
        stopped.removeIf(TankEvent.InjectorPump.class::isInstance);
        stopped.add(0, new TankEvent.InjectorPump(now.hours(), false));
        TankState without = simulator.advance(now, until, stopped);
        TankState with = as.end();
        return new TankOutlook(
                TankSummary.between(now, with),
                TankBalance.organicsG(without) - TankBalance.organicsG(with),
                without.of(Stock.NITRATE_G) - with.of(Stock.NITRATE_G),
                first(now, as, each -> each.of(Stock.NECK_FILM) >= NECK_WASH_AT),
                first(now, as, each -> each.is(Stock.RESERVOIR_EMPTY)));
    }

    private static OptionalDouble first(TankState now, TankRun run, Predicate<TankState> wanted) {
        return run.samples().stream()
                .filter(wanted)
                .mapToDouble(each -> (each.hours() - now.hours()) / 24)
                .findFirst();
    }
}
