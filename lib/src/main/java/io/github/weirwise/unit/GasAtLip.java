package io.github.weirwise.unit;

import io.github.weirwise.internal.physics.foam.Drainage;
import io.github.weirwise.internal.physics.seawater.Seawater;

/** Which share of its gas reaches the lip of a unit as foam, 0 to 1: monotone in level, gas that gets there, and mean life. */
interface GasAtLip {
    double share(SteadyInputs in, double airPerColumnM3PerS, double levelM, double foamGasM3);

    /** As the unit's traits state it, else by the law of lives. */
    static GasAtLip of(SkimmerUnit unit, FoamSpace space) {
        return unit.traits()
                .lipAnswer()
                .<GasAtLip>map(answer -> Stated.of(unit, answer, space))
                .orElseGet(ByLives::new);
    }

    /** (1 - V/(Q Sigma))^(alpha/(alpha - 1)) of a power law of lives; none where the foam's room holds all the gas that lives. */
    record ByLives() implements GasAtLip {
        @Override
        public double share(SteadyInputs in, double airPerColumnM3PerS, double levelM, double foamGasM3) {
            double left = 1 - foamGasM3 / (airPerColumnM3PerS * in.meanLifeS());
            return left > 0 ? Math.pow(left, in.lifeShape() / (in.lifeShape() - 1)) : 0;
        }
    }

    /**
     * {@link LipAnswer} as odds. The amount goes with the gas over the lip to the power m = n/(n - 1) while the foam there is
     * dry (Stevenson 2007), so the exponents of the share are those of the amount over m, less one for the air itself.
     */
    record Stated(
            double wantedLevelM,
            double ratedAirM3PerS,
            double ownLifeS,
            double logOdds,
            double perMetre,
            double airPower,
            double lifePower)
            implements GasAtLip {
        private static final double ML_PER_DAY = 1e6 * 86400;
        private static final double REFERENCE_SALINITY = 35;
        private static final double REFERENCE_CELSIUS = 25;

        static Stated of(SkimmerUnit unit, LipAnswer answer, FoamSpace space) {
            FoamTraits traits = unit.traits();
            double n = traits.drainageExponent();
            double power = n / (n - 1);
            double wanted = answer.foaminess() * unit.target().skimmateMlPerDay() / ML_PER_DAY;
            double air = unit.ratedAirLitresPerHour() / 3.6e6 / unit.columns();
            double density = Seawater.density(REFERENCE_SALINITY, REFERENCE_CELSIUS);
            double viscosity = Seawater.viscosity(REFERENCE_SALINITY, REFERENCE_CELSIUS);
            double drainage = Drainage.speed(density, viscosity, traits.lipBubbleMm() / 2000, traits.filmMobility());
            double flux = gasFlux(wanted / unit.columns() / space.neckAreaM2(), drainage, n);
            double share = Math.min(1 - 1e-9, flux * space.neckAreaM2() / air);
            return new Stated(
                    (unit.column().funnelBaseMm() + unit.target().submergenceMm()) / 1000,
                    air,
                    traits.meanLifeSeconds(),
                    Math.log(share / (1 - share)),
                    1000 * Math.log(answer.levelFactorPerMm()) / power,
                    answer.airExponent() / power - 1,
                    answer.lifeExponent() / power);
        }

        /**
         * The gas flux that carries a liquid flux over the lip. Along the greatest fluxes both hang on the liquid fraction alone:
         * j* = K eps^n (n (1 - eps) - 1) and jg = n K eps^(n-1) (1 - eps)^2; past the limit j* = jg eps/(1 - eps) - K eps^n.
         */
        static double gasFlux(double liquidFlux, double drainage, double n) {
            double limit = (n - 1) / (n + 1);
            double scaled = liquidFlux / drainage;
            double most = Math.pow(limit, n) * (n * (1 - limit) - 1);
            if (scaled >= most) {
                return drainage * (scaled + Math.pow(limit, n)) * (1 - limit) / limit;
            }
            double low = 0;
            double high = limit;
            for (int step = 0; step < 60; step++) {
                double middle = 0.5 * (low + high);
                if (Math.pow(middle, n) * (n * (1 - middle) - 1) < scaled) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return n * drainage * Math.pow(high, n - 1) * (1 - high) * (1 - high);
        }

        @Override
        public double share(SteadyInputs in, double airPerColumnM3PerS, double levelM, double foamGasM3) {
            if (!(airPerColumnM3PerS > 0) || !(in.meanLifeS() > 0)) {
                return 0;
            }
            double log = logOdds
                    + perMetre * (levelM - wantedLevelM)
                    + airPower * Math.log(airPerColumnM3PerS / ratedAirM3PerS)
                    + lifePower * Math.log(in.meanLifeS() / ownLifeS);
            return 1 / (1 + Math.exp(-log));
        }
    }
}
