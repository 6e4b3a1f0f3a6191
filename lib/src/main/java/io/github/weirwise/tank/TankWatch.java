package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;

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

/** Watches the integration for vessels that fill or empty. */
final class TankWatch {
    private static final double WITHIN_HOURS = 1e-6;
    private static final int TRIES = 100;
    /** Longer than any step: the sign is looked at at the ends of steps, which a rising vessel cannot fool. */
    private static final AdaptableInterval ONCE_A_STEP = (state, forward) -> 1e9;

    private TankWatch() {}

    static void register(ODEIntegrator integrator, TankPlan plan, TankDraft draft) {
        WasteRoute waste = plan.waste();
        integrator.addEventDetector(
                waste.drained()
                        ? new Detector(
                                () -> draft.y[CONTAINER_FULL] = 1,
                                y -> draft.is(CONTAINER_FULL) ? -1 : y[CONTAINER_ML] - 1000 * waste.containerLitres())
                        : new Detector(
                                () -> draft.y[CUP_FULL] = 1,
                                y -> draft.is(CUP_FULL)
                                        ? -1
                                        : y[CUP_ML] - plan.unit().cupMl()));
        integrator.addEventDetector(new Detector(
                () -> draft.y[RESERVOIR_EMPTY] = 1, y -> draft.is(RESERVOIR_EMPTY) ? -1 : -y[RESERVOIR_LITRES]));
    }

    /** One sign to watch; rising through zero has its consequence. */
    private static final class Detector implements ODEEventDetector, ODEEventHandler {
        private final Runnable consequence;
        private final ToDoubleFunction<double[]> sign;
        private final BracketedUnivariateSolver<UnivariateFunction> solver =
                new BracketingNthOrderBrentSolver(0, WITHIN_HOURS, 0, 5);

        Detector(Runnable consequence, ToDoubleFunction<double[]> sign) {
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
            return sign.applyAsDouble(state.getPrimaryState());
        }

        @Override
        public Action eventOccurred(ODEStateAndDerivative state, ODEEventDetector detector, boolean increasing) {
            if (!increasing) {
                return Action.CONTINUE;
            }
            consequence.run();
            return Action.STOP;
        }
    }
}
