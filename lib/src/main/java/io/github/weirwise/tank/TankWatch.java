package io.github.weirwise.tank;

import static io.github.weirwise.tank.TankDraft.*;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/** Watches the integration for vessels that fill or empty and keeps what happened. */
final class TankWatch {
    private static final double WITHIN_HOURS = 1e-6;
    private static final int TRIES = 100;
    /** Longer than any step: the sign is looked at at the ends of steps, which a rising vessel cannot fool. */
    private static final AdaptableInterval ONCE_A_STEP = (state, forward) -> 1e9;

    private final TankRates rates;
    private final TankDraft draft;
    private final List<TankOccurrence> occurrences = new ArrayList<>();

    TankWatch(TankPlan plan, TankRates rates, TankDraft draft) {
        this.rates = rates;
        this.draft = draft;
    }

    List<TankOccurrence> occurrences() {
        return occurrences;
    }

    void register(ODEIntegrator integrator, TankPlan plan) {
        TankBody body = plan.body();
        WasteRoute waste = plan.waste();
        if (waste.drained()) {
            add(
                    integrator,
                    TankOccurrence.Kind.CONTAINER_FULL,
                    () -> draft.containerFull = true,
                    s -> draft.containerFull ? -1 : s.getPrimaryState()[CONTAINER] - 1000 * waste.containerLitres());
        } else {
            add(
                    integrator,
                    TankOccurrence.Kind.CUP_FULL,
                    () -> draft.cupFull = true,
                    s -> draft.cupFull
                            ? -1
                            : s.getPrimaryState()[CUP] - plan.unit().cupMl());
        }
        add(
                integrator,
                TankOccurrence.Kind.RESERVOIR_EMPTY,
                () -> draft.reservoirEmpty = true,
                s -> draft.reservoirEmpty ? -1 : -s.getPrimaryState()[RESERVOIR]);
        add(integrator, TankOccurrence.Kind.SUMP_DRY, null, s -> body.pumpNeedsLitres() - sump(s));
        add(integrator, TankOccurrence.Kind.SUMP_OVERFLOW, null, s -> sump(s) - body.sumpCapacityLitres());
        double flood = TankOccurrence.FLOOD_MULTIPLE * plan.unit().target().skimmateMlPerDay();
        add(integrator, TankOccurrence.Kind.FLOOD, null, s -> s.getPrimaryState()[SKIMMATE] - flood);
        double dirty = plan.parameters().value(TankParameter.NECK_WASH_AT);
        add(integrator, TankOccurrence.Kind.NECK_NEEDS_WASHING, null, s -> s.getPrimaryState()[NECK] - dirty);
    }

    private double sump(ODEStateAndDerivative state) {
        return rates.look(state.getTime(), state.getPrimaryState()).sumpLitres;
    }

    private void add(
            ODEIntegrator integrator,
            TankOccurrence.Kind kind,
            Runnable consequence,
            ToDoubleFunction<ODEStateAndDerivative> sign) {
        integrator.addEventDetector(new Detector(kind, consequence, sign));
    }

    /** One sign to watch; rising through zero is the occurrence. */
    private final class Detector implements ODEEventDetector, ODEEventHandler {
        private final TankOccurrence.Kind kind;
        private final Runnable consequence;
        private final ToDoubleFunction<ODEStateAndDerivative> sign;
        private final BracketedUnivariateSolver<UnivariateFunction> solver =
                new BracketingNthOrderBrentSolver(0, WITHIN_HOURS, 0, 5);

        Detector(TankOccurrence.Kind kind, Runnable consequence, ToDoubleFunction<ODEStateAndDerivative> sign) {
            this.kind = kind;
            this.consequence = consequence;
            this.sign = sign;
        }

        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return ONCE_A_STEP;
        }

        @Override
        public int getMaxIterationCount() {
            return TRIES;
        }

        @Override
        public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
            return solver;
        }

        @Override
        public ODEEventHandler getHandler() {
            return this;
        }

        @Override
        public double g(ODEStateAndDerivative state) {
            return sign.applyAsDouble(state);
        }

        @Override
        public Action eventOccurred(ODEStateAndDerivative state, ODEEventDetector detector, boolean increasing) {
            if (!increasing) {
                return Action.CONTINUE;
            }
            occurrences.add(new TankOccurrence(state.getTime(), kind));
            if (consequence == null) {
                return Action.CONTINUE;
            }
            consequence.run();
            return Action.STOP;
        }
    }
}
