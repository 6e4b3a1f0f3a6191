package io.github.weirwise.practice;

import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.tank.TankEvent;
import io.github.weirwise.tank.TankParameter;
import io.github.weirwise.tank.TankPart;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;

/** Scenarios that are legal and nothing else: every number anywhere in its range, its ends preferred. */
public final class RandomScenario {
    private final Random random;

    /** One of a seed. */
    public RandomScenario(long seed) {
        random = new Random(new SplittableRandom(seed).nextLong());
    }

    /**
     * The next.
     *
     * @param mostDays longest history and course, so that a test ends in time
     */
    public Scenario next(double mostDays) {
        Scenario base = ScenarioJson.builtIn(any(ScenarioJson.BUILT_IN));
        SkimmerUnit unit = any(LanternQuay.units());
        double arrives = number(0, 167.99);
        double days = number(0, mostDays);
        double lasts = number(1, 24 * mostDays);
        ScenarioStart start = new ScenarioStart(
                settings(unit), random.nextInt(3) == 0, arrives, days, readings(arrives - 24 * days, arrives));
        List<ScenarioEvent> events = new ArrayList<>();
        int many = random.nextInt(12);
        for (int i = 0; i < many; i++) {
            events.add(new ScenarioEvent(event(number(arrives - 24 * days, arrives + lasts)), Optional.empty()));
        }
        Goals goals = new Goals(lasts, random.nextBoolean(), List.of(), random.nextBoolean(), 3, 0);
        return new Scenario(
                base.name(),
                base.title(),
                base.level(),
                base.teaches(),
                base.told(),
                unit,
                tank(),
                start,
                events,
                List.of(),
                List.of(new HiddenFault(any(List.of(Cause.values())), arrives, "anything")),
                base.offers(),
                base.coaching(),
                goals,
                base.limits());
    }

    private ScenarioTank tank() {
        Map<TankParameter, Double> parameters = new EnumMap<>(TankParameter.class);
        for (TankParameter each : TankParameter.values()) {
            if (random.nextInt(4) == 0) {
                parameters.put(each, number(each.limit().low(), each.limit().high()));
            }
        }
        return new ScenarioTank(
                logarithmic(40, 1e5),
                random.nextInt(4) == 0 ? number(0, 1e4) : number(0, 50),
                number(0, 3),
                number(0.5, 2),
                number(0, 1),
                random.nextBoolean() ? 0 : logarithmic(0.1, 1e4),
                parameters);
    }

    private Settings settings(SkimmerUnit unit) {
        boolean wild = random.nextInt(3) == 0;
        double crest = unit.weir().clampMm(number(1, 2000));
        return new Settings(
                wild ? number(1, 2000) : crest,
                wild ? number(0, 1e5) : unit.ratedFlowLitresPerHour(),
                wild ? number(0, 20000) : unit.ratedAirLitresPerHour(),
                number(5, 40),
                number(0, 42),
                Condition.REFERENCE.withSkimmableMgPerLitre(wild ? number(0, 500) : 2));
    }

    private List<Double> readings(double from, double to) {
        List<Double> hours = new ArrayList<>();
        int many = random.nextInt(4);
        for (int i = 0; i < many; i++) {
            hours.add(number(from, to));
        }
        hours.sort(null);
        return hours;
    }

    private TankEvent event(double at) {
        return switch (random.nextInt(20)) {
            case 0 -> new TankEvent.Fed(at, logarithmic(1, 1e5));
            case 1 -> new TankEvent.Overfed(at, logarithmic(1, 1e5), number(0, 1));
            case 2 -> new TankEvent.OilFilm(at, number(0, 1));
            case 3 -> new TankEvent.FoamingAgent(at, any(List.of(TankEvent.Agent.values())), number(0, 3));
            case 4 -> new TankEvent.Poured(at, logarithmic(1, 1e5), number(0, 42));
            case 5 -> new TankEvent.ReservoirFilled(at, number(0, 42));
            case 6 -> new TankEvent.TopOffSet(at, any(List.of(TankEvent.TopOff.values())));
            case 7 -> new TankEvent.WaterChanged(at, logarithmic(1, 1e5), number(0, 42));
            case 8 -> new TankEvent.ReturnPump(at, random.nextBoolean());
            case 9 -> new TankEvent.InjectorPump(at, random.nextBoolean());
            case 10 -> new TankEvent.PowerCut(at, logarithmic(1e-3, 1000));
            case 11 -> new TankEvent.AirLine(at, random.nextBoolean());
            case 12 -> new TankEvent.WeirSet(at, number(1, 2000));
            case 13 -> new TankEvent.WeirSlipped(at, number(-100, 100));
            case 14 -> new TankEvent.FlowSet(at, number(0, 1e5));
            case 15 -> new TankEvent.AirSet(at, number(0, 20000));
            case 16 -> new TankEvent.TemperatureSet(at, number(6, 39));
            case 17 -> new TankEvent.CupPressure(at, number(0, 2000));
            case 18 -> new TankEvent.AnimalDied(at, logarithmic(1, 1e6));
            default -> part(at);
        };
    }

    private TankEvent part(double at) {
        TankPart part = any(List.of(TankPart.values()));
        return random.nextBoolean() ? new TankEvent.Fouled(at, part, number(0, 1)) : new TankEvent.Serviced(at, part);
    }

    private double number(double low, double high) {
        return switch (random.nextInt(6)) {
            case 0 -> low;
            case 1 -> high;
            default -> low + random.nextDouble() * (high - low);
        };
    }

    private double logarithmic(double low, double high) {
        return Math.max(low, Math.min(high, low * Math.pow(high / low, number(0, 1))));
    }

    private <T> T any(List<T> some) {
        return some.get(random.nextInt(some.size()));
    }
}
