package io.github.weirwise.demo.practice;

import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankEvent;

/** What a trainer can let happen at a press; sizes are our own, large enough to be noticed. */
enum Incident {
    FED_HEAVILY {
        @Override
        TankEvent at(double hours, PracticeSession session) {
            return new TankEvent.Overfed(hours, 20, 0.5);
        }
    },
    OIL {
        @Override
        TankEvent at(double hours, PracticeSession session) {
            return new TankEvent.OilFilm(hours, 0.6);
        }
    },
    CONDITIONER {
        @Override
        TankEvent at(double hours, PracticeSession session) {
            return new TankEvent.FoamingAgent(hours, TankEvent.Agent.CONDITIONER, 1.5);
        }
    },
    POWER_CUT {
        @Override
        TankEvent at(double hours, PracticeSession session) {
            return new TankEvent.PowerCut(hours, 2);
        }
    },
    AIR_LINE_IN_WATER {
        @Override
        TankEvent at(double hours, PracticeSession session) {
            return new TankEvent.AirLine(hours, true);
        }
    },
    WEIR_SLIPS {
        @Override
        TankEvent at(double hours, PracticeSession session) {
            return new TankEvent.WeirSlipped(hours, -6);
        }
    },
    SOMEONE_MOVED_IT {
        @Override
        TankEvent at(double hours, PracticeSession session) {
            double crest = session.scenario().unit().weir().clampMm(session.markMm() + 5);
            return new TankEvent.WeirSet(hours, crest);
        }
    },
    FLOW_FALLS {
        @Override
        TankEvent at(double hours, PracticeSession session) {
            return new TankEvent.FlowSet(hours, 0.7 * session.truth().of(Stock.FLOW_LITRES_PER_HOUR));
        }
    },
    VENT_BLOCKED {
        @Override
        TankEvent at(double hours, PracticeSession session) {
            return new TankEvent.CupPressure(hours, 120);
        }
    },
    TOP_OFF_STUCK {
        @Override
        TankEvent at(double hours, PracticeSession session) {
            return new TankEvent.TopOffSet(hours, TankEvent.TopOff.STUCK_OPEN);
        }
    },
    ANIMAL_DIED {
        @Override
        TankEvent at(double hours, PracticeSession session) {
            return new TankEvent.AnimalDied(hours, 60);
        }
    };

    /** The event in a session, at an hour of its clock. */
    abstract TankEvent at(double hours, PracticeSession session);
}
