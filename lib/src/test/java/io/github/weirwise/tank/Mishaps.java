package io.github.weirwise.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Years in which everything goes wrong now and then; seeded. */
final class Mishaps {
    private Mishaps() {}

    static List<TankEvent> year(long seed, TankPlan plan) {
        Random random = new Random(seed);
        List<TankEvent> events = new ArrayList<>(Routine.USUAL.events(plan, 0, 24 * 365));
        for (int i = 0; i < 150; i++) {
            events.add(one(random, 24 * 365 * random.nextDouble(), plan));
        }
        return events;
    }

    static TankEvent one(Random random, double at, TankPlan plan) {
        double some = random.nextDouble();
        TankPart part = TankPart.values()[random.nextInt(TankPart.values().length)];
        return switch (random.nextInt(22)) {
            case 0 -> new TankEvent.Fed(at, 5 * some);
            case 1 -> new TankEvent.Overfed(at, 20 * some, 0.7);
            case 2 -> new TankEvent.OilFilm(at, some);
            case 3 -> new TankEvent.FoamingAgent(at, TankEvent.Agent.CONDITIONER, 2 * some);
            case 4 -> new TankEvent.Poured(at, 15 * some, 0);
            case 5 -> new TankEvent.ReservoirFilled(at, 10 * some);
            case 6 -> new TankEvent.TopOffSet(at, TankEvent.TopOff.values()[random.nextInt(3)]);
            case 7 -> new TankEvent.WaterChanged(at, 60 * some, 34);
            case 8 -> new TankEvent.ReturnPump(at, some > 0.3);
            case 9 -> new TankEvent.InjectorPump(at, some > 0.3);
            case 10 -> new TankEvent.PowerCut(at, 0.1 + 10 * some);
            case 11 -> new TankEvent.AirLine(at, some > 0.7);
            case 12 -> new TankEvent.WeirSet(at, 140 + 50 * some);
            case 13 -> new TankEvent.WeirSlipped(at, 6 * some - 3);
            case 14 -> new TankEvent.FlowSet(at, 1500 * some);
            case 15 -> new TankEvent.AirSet(at, 100 * some);
            case 16 -> new TankEvent.TemperatureSet(at, 20 + 8 * some);
            case 17 -> new TankEvent.CupPressure(at, some > 0.7 ? 100 * some : 0);
            case 18 -> new TankEvent.AnimalDied(at, 100 * some);
            case 19 -> new TankEvent.SolidsRemoved(at, some);
            case 20 -> new TankEvent.Serviced(at, part);
            default -> new TankEvent.Fouled(at, part, some);
        };
    }
}
