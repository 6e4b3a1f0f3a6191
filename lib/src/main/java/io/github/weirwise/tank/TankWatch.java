package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;

import io.github.weirwise.report.Work;
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

/**
 * Watches the integration for vessels that fill or empty. One that is exactly full or empty already when it begins crosses nothing
 * any more (and the integrator would search without end for the moment when it does), so each leg begins with a {@link #look}.
 */
final class TankWatch {
    private static final double WITHIN_HOURS = 1e-6;
    private static final int TRIES = 100;
    /** Longer than any step: the sign is looked at at the ends of steps, which a rising vessel cannot fool. */
    private static final AdaptableInterval ONCE_A_STEP = (state, forward) -> 1e9;

    private final TankDraft draft;
    private final List<Detector> detectors;

    TankWatch(TankPlan plan, TankDraft draft) {
        this.draft = draft;
        WasteRoute waste = plan.waste();
        Detector full = waste.drained()
                ? new Detector(CONTAINER_FULL, y -> y[CONTAINER_ML] - 1000 * waste.containerLitres())
                : new Detector(CUP_FULL, y -> y[CUP_ML] - plan.unit().cupMl());
        detectors = List.of(full, new Detector(RESERVOIR_EMPTY, y -> -y[RESERVOIR_LITRES]));
    }

    void register(ODEIntegrator integrator) {
        detectors.forEach(integrator::addEventDetector);
    }

    /** Notes what is full or empty now. */
    void look() {
        for (Detector each : detectors) {
            if (each.sign(draft.y) >= 0) {
                draft.set(each.flag, true);
            }
        }
    }

    /** One sign to watch; rising through zero sets its flag, and a flag that is set leaves nothing to watch. */
    private final class Detector implements ODEEventDetector, ODEEventHandler {
        private final int flag;
        private final ToDoubleFunction<double[]> over;
        private final BracketedUnivariateSolver<UnivariateFunction> solver =
                new BracketingNthOrderBrentSolver(0, WITHIN_HOURS, 0, 5);

        Detector(int flag, ToDoubleFunction<double[]> over) {
            this.flag = flag;
            this.over = over;
        }

        private double sign(double[] y) {
            return draft.is(flag) ? -1 : over.applyAsDouble(y);
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
            Work.step();
            return sign(state.getPrimaryState());
        }

        @Override
        public Action eventOccurred(ODEStateAndDerivative state, ODEEventDetector detector, boolean increasing) {
            if (!increasing) {
                return Action.CONTINUE;
            }
            draft.set(flag, true);
            return Action.STOP;
        }
    }
}
