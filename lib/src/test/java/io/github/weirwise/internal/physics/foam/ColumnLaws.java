package io.github.weirwise.internal.physics.foam;

import java.util.function.DoubleUnaryOperator;

/** The local laws of one column, with what is constant along it computed once. */
final class ColumnLaws {
    /** Foam wetter than this is taken as water with bubbles. */
    static final double WETTEST = 0.95;

    private static final double GRAVITY = 9.80665;
    private static final double DRIEST = 1e-7;

    private final FoamPermeability permeability;
    private final Capillarity capillarity;
    private final BubbleGrowth growth;
    private final FoamLife life;
    private final Venting venting;
    private final double speedPerSquareRadius;
    private final double tensionLengthM2;
    private final double theta;

    ColumnLaws(FoamColumn column) {
        permeability = column.permeability();
        capillarity = column.capillarity();
        growth = column.growth();
        life = column.life();
        venting = column.venting();
        speedPerSquareRadius = permeability.speedPerSquareRadius(column.liquid());
        tensionLengthM2 =
                column.liquid().surfaceTensionNPerM() / (column.liquid().densityKgPerM3() * GRAVITY);
        theta = life.thetaS();
    }

    double survival(double ageS) {
        return Math.pow(1 + ageS / theta, -life.alpha());
    }

    /** Share of the bubbles that burst in a second, 1/s. */
    double hazard(double ageS) {
        return life.alpha() / (theta + ageS);
    }

    /** r^2 of the bubbles at an age, m2, with merging where the gas stays. */
    double squareRadius(double ageS, double survival) {
        double square = growth.squareRadiusM2(ageS);
        return venting == Venting.BY_MERGING ? square / Math.cbrt(survival * survival) : square;
    }

    /** d ln r/da, 1/s. */
    double growthRate(double ageS) {
        double diffusion = 0.5 * growth.squarePerSecond() / growth.squareRadiusM2(ageS);
        return venting == Venting.BY_MERGING ? diffusion + hazard(ageS) / 3 : diffusion;
    }

    /** K, m/s. */
    double drainageSpeed(double squareRadiusM2) {
        return speedPerSquareRadius * squareRadiusM2;
    }

    /** Pi/(rho g), m. */
    double suctionHead(double fraction, double radiusM) {
        return tensionLengthM2 / radiusM * capillarity.reducedPressure(fraction);
    }

    /** -d(Pi/(rho g))/d eps over (packing - eps), m. */
    double suctionSlopePerRest(double fraction, double radiusM) {
        return tensionLengthM2 / radiusM * capillarity.reducedSlopePerRest(fraction);
    }

    double packingFraction() {
        return capillarity.packingFraction();
    }

    boolean sucks() {
        return capillarity.acts();
    }

    double permeabilityFlux(double fraction) {
        return permeability.flux(fraction);
    }

    /** The age that counts for bursting at the foam's top: less for wet froth and for small bubbles, s. */
    double ageAtTop(double ageS, double fraction, double radiusM) {
        double dryness = Math.max(0, 1 - fraction / capillarity.packingFraction());
        return ageS * dryness * radiusM / growth.grownRadiusM();
    }

    /** Liquid flux jg e/(1 - e) - K q(e), m/s upward. */
    double liquidFlux(double gasFlux, double speed, double fraction) {
        return gasFlux * fraction / (1 - fraction) - speed * permeability.flux(fraction);
    }

    /** The wetness of the greatest liquid flux, up to packing; packing itself when the flux grows all the way (flooded). */
    double fullestFraction(double gasFlux, double speed) {
        double high = capillarity.packingFraction();
        if (gasFlux <= 0) {
            return 0;
        }
        // The slope of the flux starts positive and is looked for its first zero, from the dry power law's root upward.
        double low = 0;
        double guess = Math.pow(gasFlux / (permeability.exponent() * speed), 1 / (permeability.exponent() - 1));
        double at = Math.min(guess, high);
        while (at < high && fluxSlope(gasFlux, speed, at) > 0) {
            low = at;
            at = Math.min(high, at * 1.25);
        }
        if (at >= high && fluxSlope(gasFlux, speed, high) > 0) {
            return high;
        }
        return zero(low, at, e -> fluxSlope(gasFlux, speed, e));
    }

    private double fluxSlope(double gasFlux, double speed, double fraction) {
        double dry = 1 - fraction;
        return gasFlux / (dry * dry) - speed * permeability.slope(fraction);
    }

    /** Liquid flux e J - (1 - e) K q(e) under the total volume flux J of gas and liquid together, m/s upward. */
    double mixedFlux(double volumeFlux, double speed, double fraction) {
        return volumeFlux * fraction - (1 - fraction) * speed * permeability.flux(fraction);
    }

    /** Its slope by wetness; zero where {@link #liquidFlux} is greatest, too. */
    private double mixedSlope(double volumeFlux, double speed, double fraction) {
        return volumeFlux + speed * (permeability.flux(fraction) - (1 - fraction) * permeability.slope(fraction));
    }

    /** Godunov's flux between a wetness below a face and one above it: the least between them, or the greatest. */
    double mixedFluxAcross(double volumeFlux, double speed, double below, double above) {
        if (below <= above) {
            return Math.min(mixedFlux(volumeFlux, speed, below), mixedFlux(volumeFlux, speed, above));
        }
        return mixedFlux(volumeFlux, speed, fullestBetween(volumeFlux, speed, above, below));
    }

    /** The same for {@link #liquidFlux} under a given gas flux. */
    double liquidFluxAcross(double gasFlux, double speed, double below, double above) {
        if (below <= above) {
            return Math.min(liquidFlux(gasFlux, speed, below), liquidFlux(gasFlux, speed, above));
        }
        double most = below;
        if (fluxSlope(gasFlux, speed, above) <= 0) {
            most = above;
        } else if (fluxSlope(gasFlux, speed, below) < 0) {
            most = zero(above, below, e -> fluxSlope(gasFlux, speed, e));
        }
        return liquidFlux(gasFlux, speed, most);
    }

    /** The wetness of the greatest mixed flux between two others. */
    double fullestBetween(double volumeFlux, double speed, double low, double high) {
        if (mixedSlope(volumeFlux, speed, low) <= 0) {
            return low;
        }
        if (mixedSlope(volumeFlux, speed, high) >= 0) {
            return high;
        }
        return zero(low, high, e -> mixedSlope(volumeFlux, speed, e));
    }

    /**
     * The wetness at which a liquid flux passes by carriage and drainage alone, on the wet side of the greatest flux, where
     * drainage feeds water back; {@link #WETTEST} when all is froth.
     */
    double drainedFraction(double gasFlux, double speed, double liquidFlux) {
        double low = Math.max(DRIEST, fullestFraction(gasFlux, speed));
        if (liquidFlux(gasFlux, speed, low) <= liquidFlux) {
            return low;
        }
        double high = low;
        while (high < WETTEST) {
            high = Math.min(WETTEST, high * 1.25 + 1e-6);
            if (liquidFlux(gasFlux, speed, high) <= liquidFlux) {
                return zero(low, high, e -> liquidFlux(gasFlux, speed, e) - liquidFlux);
            }
            low = high;
        }
        return WETTEST;
    }

    /** Zero between a place of positive and one of no longer positive values, by regula falsi with the Illinois rule. */
    private static double zero(double low, double high, DoubleUnaryOperator f) {
        double a = low;
        double b = high;
        double fa = f.applyAsDouble(a);
        double fb = f.applyAsDouble(b);
        int kept = 0;
        for (int step = 0; step < 100 && b - a > 1e-13 * b && fb != 0; step++) {
            double c = b - fb * (b - a) / (fb - fa);
            if (!(c > a && c < b)) {
                c = 0.5 * (a + b);
            }
            double fc = f.applyAsDouble(c);
            if (fc > 0) {
                a = c;
                fa = fc;
                fb *= kept == 1 ? 0.5 : 1;
                kept = 1;
            } else {
                b = c;
                fb = fc;
                fa *= kept == -1 ? 0.5 : 1;
                kept = -1;
            }
        }
        return fb == 0 ? b : 0.5 * (a + b);
    }
}
