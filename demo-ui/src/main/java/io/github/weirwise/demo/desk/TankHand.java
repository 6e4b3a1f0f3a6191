package io.github.weirwise.demo.desk;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.SafeWay;
import io.github.weirwise.advice.Step;
import io.github.weirwise.demo.tank.Looker;
import io.github.weirwise.demo.tank.TrainingTank;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.Part;
import java.util.ArrayList;
import java.util.List;

/** Does on the invented tank what was advised, and gives back what belongs into the journal. */
public final class TankHand {
    private final TrainingTank tank;
    private final Looker looker;

    /** A hand on a tank, with the eyes that read it. */
    public TankHand(TrainingTank tank, Looker looker) {
        this.tank = tank;
        this.looker = looker;
    }

    /** Takes the step now; waiting is left to the caller. */
    public List<JournalEntry> take(Advice advice) {
        Step step = advice.step();
        if (step instanceof Step.MoveWeir move) {
            return List.of(moveWeir(move.toCrestMm(), move.probe()));
        }
        if (step instanceof Step.Look look) {
            return List.of(looker.read(tank, List.of(look.what())));
        }
        if (step instanceof Step.ServicePart service) {
            return service.parts().stream().map(this::serve).toList();
        }
        if (step instanceof Step.MakeSafe safe) {
            return makeSafe(safe);
        }
        return List.of();
    }

    /** Does once more what a journal tells. */
    void again(JournalEntry entry) {
        if (entry instanceof WeirMove move) {
            tank.setWeir(move.toCrestMm());
        } else if (entry instanceof SettingChange change) {
            tank.set(
                    change.what() == SettingChange.Knob.FLOW
                            ? tank.settings().withFlowLitresPerHour(change.litresPerHour())
                            : tank.settings().withAirLitresPerHour(change.litresPerHour()));
        } else if (entry instanceof Service service) {
            tank.set(tank.settings().withCondition(served(tank.settings().condition(), service.part())));
        } else if (entry instanceof Reading reading
                && reading.find(Observation.CupVolume.class).isPresent()) {
            tank.emptyCup();
        }
    }

    private JournalEntry serve(Part part) {
        tank.set(tank.settings().withCondition(served(tank.settings().condition(), part)));
        return new Service(tank.now(), part);
    }

    private WeirMove moveWeir(double toCrestMm, boolean probe) {
        tank.setWeir(toCrestMm);
        return new WeirMove(tank.now(), tank.settings().weirCrestMm(), probe);
    }

    private List<JournalEntry> makeSafe(Step.MakeSafe safe) {
        List<JournalEntry> done = new ArrayList<>();
        tank.emptyCup();
        if (safe.byMm() != 0) {
            done.add(moveWeir(safe.toCrestMm(), false));
        }
        if (safe.how() == SafeWay.START_PUMPS) {
            done.add(new Happening(tank.now(), Happening.Kind.PUMP_RESTARTED));
        }
        if (safe.airLitresPerHour() != tank.settings().airLitresPerHour()) {
            tank.set(tank.settings().withAirLitresPerHour(safe.airLitresPerHour()));
            done.add(new SettingChange(tank.now(), SettingChange.Knob.AIR, safe.airLitresPerHour()));
        }
        return done;
    }

    private static Condition served(Condition condition, Part part) {
        return switch (part) {
            case AIR_LINE -> condition.withAirLineOpening(1);
            case INJECTOR_PUMP, INJECTOR_NOZZLE, SEATING -> condition.withInjectorHealth(1);
            case NECK_AND_CUP -> condition.withNeckFouling(0);
            case CUP_VENT -> condition.withBackPressurePa(0);
            case FILTER_PAD, SUMP_LEVEL -> condition.withLevelBeyondWeirMm(0);
            case WEIR_PLATE -> condition.withWeirSlipMm(0);
            case WATER_SURFACE -> condition.withFilmBreaker(0);
            default -> condition;
        };
    }
}
