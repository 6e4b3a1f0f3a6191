package io.github.weirwise.practice;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankEvent;
import java.time.Instant;
import java.util.List;

/**
 * What an act does to a bench, and what of it belongs into the journal. Practice and free play act through this.
 *
 * @param bench the bench with the act on it, at the same moment
 * @param noted entries for the journal
 */
record Doing(Bench bench, List<JournalEntry> noted) {
    /** A move up to this size counts as a probe. */
    private static final double PROBE_MM = 2;

    static Doing of(Bench bench, Act act) {
        double now = bench.hours();
        Instant at = SessionClock.at(now);
        if (act instanceof Act.MoveWeir move) {
            return weir(bench, bench.tank().of(Stock.WEIR_CREST_MM) + move.byMm());
        }
        if (act instanceof Act.ServicePart service) {
            return new Doing(new PartInTank(bench, service.part()).done(), List.of(new Service(at, service.part())));
        }
        if (act instanceof Act.SetFlow flow) {
            return happened(
                    bench,
                    new TankEvent.FlowSet(now, flow.litresPerHour()),
                    new SettingChange(at, SettingChange.Knob.FLOW, flow.litresPerHour()));
        }
        if (act instanceof Act.SetAir air) {
            return happened(
                    bench,
                    new TankEvent.AirSet(now, air.litresPerHour()),
                    new SettingChange(at, SettingChange.Knob.AIR, air.litresPerHour()));
        }
        return switch (act.kind()) {
            case STOP_AIR ->
                happened(bench, new TankEvent.InjectorPump(now, false), new Happening(at, Happening.Kind.PUMP_STOPPED));
            case START_AIR ->
                happened(
                        bench, new TankEvent.InjectorPump(now, true), new Happening(at, Happening.Kind.PUMP_RESTARTED));
            case TAKE_OUT_FOOD -> happened(bench, new TankEvent.SolidsRemoved(now, 0.9));
            case MOVE_WEIR, SERVICE, SET_FLOW, SET_AIR -> throw new IllegalStateException("taken above: " + act);
        };
    }

    /** The weir set to a mark, as far as it travels. */
    static Doing weir(Bench bench, double toCrestMm) {
        double before = bench.tank().of(Stock.WEIR_CREST_MM);
        double crest = bench.plan().unit().weir().clampMm(toCrestMm);
        boolean probe = Math.abs(toCrestMm - before) <= PROBE_MM;
        return happened(
                bench,
                new TankEvent.WeirSet(bench.hours(), crest),
                new WeirMove(SessionClock.at(bench.hours()), crest, probe));
    }

    private static Doing happened(Bench bench, TankEvent event, JournalEntry... noted) {
        return new Doing(bench.withEvents(List.of(event)), List.of(noted));
    }
}
