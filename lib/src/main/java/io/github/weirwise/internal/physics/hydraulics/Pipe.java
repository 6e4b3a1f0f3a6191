package io.github.weirwise.internal.physics.hydraulics;

import io.github.weirwise.report.Require;

/**
 * A full pipe with fittings: head loss (m) for a discharge (m3/s), and the discharge that a head drives, by Darcy and
 * Weisbach with {@link PipeFriction#churchill}: h = (f L/D + K) V^2/(2 g).
 *
 * @param boreM inner diameter D, 0.0005 to 10 m
 * @param lengthM L, 0 to 1e5 m
 * @param roughnessM height of the wall's roughness, 0 to a tenth of the bore; 1.5e-6 m for smooth plastic
 * @param lossCoefficient K, sum over the fittings, entrance and exit included, 0 to 1e4
 */
public record Pipe(double boreM, double lengthM, double roughnessM, double lossCoefficient) {
    /** Roughness of drawn plastic tube, m; from memory. */
    public static final double SMOOTH_PLASTIC_M = 1.5e-6;

    private static final double GRAVITY = 9.80665;

    /**
     * @throws io.github.weirwise.report.OutOfRangeException outside the limits
     */
    public Pipe {
        Require.inRange("boreM", boreM, 5e-4, 10, "m", "give the inner diameter in metres");
        Require.inRange("lengthM", lengthM, 0, 1e5, "m", "give the length in metres");
        Require.inRange("roughnessM", roughnessM, 0, boreM / 10, "m", "smooth plastic has 1.5e-6 m");
        Require.inRange("lossCoefficient", lossCoefficient, 0, 1e4, "", "add up the fittings' coefficients");
    }

    /** Cross-section, m2. */
    public double areaM2() {
        return Math.PI / 4 * boreM * boreM;
    }

    /** Content, m3. */
    public double volumeM3() {
        return areaM2() * lengthM;
    }

    /**
     * Head loss, m.
     *
     * @param dischargeM3PerS 0 to 1000 m3/s
     * @param kinematicViscosityM2PerS viscosity over density, 1e-8 to 1e-3 m2/s; sea water of 25 degrees 0.94e-6
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double headLoss(double dischargeM3PerS, double kinematicViscosityM2PerS) {
        Require.inRange("dischargeM3PerS", dischargeM3PerS, 0, 1000, "m3/s", "give the flow through the pipe");
        requireViscosity(kinematicViscosityM2PerS);
        double speed = dischargeM3PerS / areaM2();
        double reynolds = speed * boreM / kinematicViscosityM2PerS;
        if (reynolds < 1e-6) {
            return 0;
        }
        double friction = PipeFriction.churchill(reynolds, roughnessM / boreM) * lengthM / boreM;
        return (friction + lossCoefficient) * speed * speed / (2 * GRAVITY);
    }

    /**
     * Discharge that a head drives through the full pipe, m3/s: the greatest that a drain with a standing siphon passes.
     *
     * @param headM drop of level from one end to the other, 0 to 1000 m
     * @param kinematicViscosityM2PerS viscosity over density, 1e-8 to 1e-3 m2/s
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits, or if the pipe has neither length nor
     *     losses
     */
    public double discharge(double headM, double kinematicViscosityM2PerS) {
        Require.inRange("headM", headM, 0, 1000, "m", "give the drop of level in metres");
        requireViscosity(kinematicViscosityM2PerS);
        if (lengthM == 0) {
            Require.inRange("lossCoefficient", lossCoefficient, 1e-6, 1e4, "", "count at least the exit, 1.0");
        }
        return headM == 0 ? 0 : rootOfHead(headM, kinematicViscosityM2PerS);
    }

    /** Bisection on ln Q between limits that hold for every pipe here, then it is exact to a few parts in 1e14. */
    private double rootOfHead(double head, double viscosity) {
        double high = areaM2() * Math.sqrt(2 * GRAVITY * head / Math.max(lossCoefficient, 1e-6));
        high = Math.min(high, 1000);
        double low = 0;
        for (int step = 0; step < 200 && high - low > 1e-14 * high; step++) {
            double middle = 0.5 * (low + high);
            if (headLoss(middle, viscosity) < head) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    private static void requireViscosity(double viscosity) {
        Require.inRange("kinematicViscosityM2PerS", viscosity, 1e-8, 1e-3, "m2/s", "water has about 1e-6");
    }
}
