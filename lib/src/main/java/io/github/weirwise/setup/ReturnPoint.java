package io.github.weirwise.setup;

/**
 * Where the return pump works: flow (L/h) at which its curve meets lift and losses of the return line.
 *
 * <p>Lift from the running level of the media side (a third of the media covered) to the tank's running level or the
 * mouth, whichever is higher; losses by Darcy and Weisbach with Churchill's friction factor and handbook coefficients for
 * fittings; the tank's running level by Kindsvater and Carter. Bisection, to 1e-9 of the pump's greatest flow.
 *
 * @param flowLitresPerHour the flow; 0 when the pump cannot lift the water
 * @param liftMm static part of the head
 * @param lossMm friction and fittings
 * @param overflowHeadMm head over the overflow's crest at that flow
 * @param beyondCurve whether the true flow is more than the curve tells of
 */
public record ReturnPoint(
        double flowLitresPerHour, double liftMm, double lossMm, double overflowHeadMm, boolean beyondCurve) {
    private static final int HALVINGS = 60;

    /** Solves for an installation. */
    public static ReturnPoint of(Installation installation) {
        double high = installation.pump().greatestFlowLitresPerHour();
        if (excessMm(installation, 0) <= 0) {
            return at(installation, 0, false);
        }
        if (excessMm(installation, high) >= 0) {
            return at(installation, high, true);
        }
        double low = 0;
        for (int step = 0; step < HALVINGS; step++) {
            double middle = 0.5 * (low + high);
            if (excessMm(installation, middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return at(installation, 0.5 * (low + high), false);
    }

    /** Whole head that the pump works against, mm. */
    public double headMm() {
        return liftMm + lossMm;
    }

    private static ReturnPoint at(Installation installation, double flow, boolean beyondCurve) {
        return new ReturnPoint(
                flow,
                liftMm(installation, flow),
                lossMm(installation, flow),
                installation.overflow().headMm(installation.tank(), flow),
                beyondCurve);
    }

    private static double excessMm(Installation installation, double flow) {
        return installation.pump().headMm(flow) - liftMm(installation, flow) - lossMm(installation, flow);
    }

    private static double liftMm(Installation installation, double flow) {
        DisplayTank tank = installation.tank();
        double crestMm = tank.crestOverBaseMm();
        double levelMm = crestMm + installation.overflow().headMm(tank, flow);
        double mouthMm = crestMm - installation.returnLine().mouthBelowCrestMm();
        return Math.max(levelMm, mouthMm) - new WetSide(installation).runningLevelMm();
    }

    private static double lossMm(Installation installation, double flow) {
        return 1000
                * installation.returnLine().plumbing().pipe().headLoss(flow / 3.6e6, installation.kinematicViscosity());
    }
}
