package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Words;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankEvent;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.BiFunction;

/** What a trainer can let happen at a press; sizes are our own, large enough to be noticed. */
enum Incident {
    FED_HEAVILY(TankEvent.Overfed.class, (hours, session) -> new TankEvent.Overfed(hours, 20, 0.5)),
    OIL(TankEvent.OilFilm.class, (hours, session) -> new TankEvent.OilFilm(hours, 0.6)),
    CONDITIONER(
            TankEvent.FoamingAgent.class,
            (hours, session) -> new TankEvent.FoamingAgent(hours, TankEvent.Agent.CONDITIONER, 1.5)),
    POWER_CUT(TankEvent.PowerCut.class, (hours, session) -> new TankEvent.PowerCut(hours, 2)),
    AIR_LINE_IN_WATER(TankEvent.AirLine.class, (hours, session) -> new TankEvent.AirLine(hours, true)),
    WEIR_SLIPS(TankEvent.WeirSlipped.class, (hours, session) -> new TankEvent.WeirSlipped(hours, -6)),
    SOMEONE_MOVED_IT(
            TankEvent.WeirSet.class,
            (hours, session) -> new TankEvent.WeirSet(
                    hours, session.scenario().unit().weir().clampMm(session.markMm() + 5))),
    FLOW_FALLS(
            TankEvent.FlowSet.class,
            (hours, session) ->
                    new TankEvent.FlowSet(hours, 0.7 * session.truth().of(Stock.FLOW_LITRES_PER_HOUR))),
    VENT_BLOCKED(TankEvent.CupPressure.class, (hours, session) -> new TankEvent.CupPressure(hours, 120)),
    TOP_OFF_STUCK(
            TankEvent.TopOffSet.class, (hours, session) -> new TankEvent.TopOffSet(hours, TankEvent.TopOff.STUCK_OPEN)),
    ANIMAL_DIED(TankEvent.AnimalDied.class, (hours, session) -> new TankEvent.AnimalDied(hours, 60));

    private final Class<? extends TankEvent> kind;
    private final BiFunction<Double, PracticeSession, TankEvent> made;

    Incident(Class<? extends TankEvent> kind, BiFunction<Double, PracticeSession, TankEvent> made) {
        this.kind = kind;
        this.made = made;
    }

    /** The event in a session, at an hour of its clock. */
    TankEvent at(double hours, PracticeSession session) {
        return made.apply(hours, session);
    }

    /** The incident that an event is of, if a trainer has it at a press. */
    static Optional<Incident> of(TankEvent event) {
        return Arrays.stream(values())
                .filter(each -> each.kind.isInstance(event))
                .findFirst();
    }

    Phrase words() {
        return Words.phrase("trainer.incident." + this);
    }
}
