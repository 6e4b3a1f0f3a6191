package io.github.weirwise.diagnosis;

import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.SkimmateStrength;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyInputs;
import io.github.weirwise.unit.SteadyLaw;
import io.github.weirwise.unit.SteadyPoint;

/**
 * What a unit with given unknowns and causes shows at given settings: the steady law, opened up by the unknowns.
 *
 * <p>Where the law knows no foam at the lip at all, its logarithm is carried on in a straight line, so that a hypothesis
 * a little too short-lived is unlikely instead of impossible.
 */
final class Foresight {
    /** Below this value of 1 - V/(Q Sigma) the law's logarithm goes on as its tangent. */
    private static final double TANGENT_BELOW = 0.1;

    /**
     * How darkness goes with the amount: gas per liquid at the lip goes with the amount to the power -1/n (drainage law
     * K e^n, n 2 to 3), what the bubbles carry goes less than in proportion to it; assumed.
     */
    private static final double DARKER_WHEN_DRIER = 0.36;

    /** No crest lies lower over the chamber floor than the weir formula reaches, however far it may have slipped. */
    private static final double LEAST_CREST_M = 0.001;

    private static final double ML_PER_DAY = 1e6 * 86400;
    private static final double LOWEST_LOG = -12;
    private static final double HIGHEST_LOG = 8;

    private final SkimmerUnit unit;
    private final SteadyLaw law;
    private final double startCrestM;
    private final double funnelBaseMm;
    private final double neckAreaM2;
    private final double targetM3PerS;
    private final double nominalDarkness;

    /**
     * @param startCrestMm where the weir's mark stood at the start of the journal; a clogged pad's water is counted from there
     */
    Foresight(SkimmerUnit unit, double startCrestMm) {
        this.startCrestM = startCrestMm / 1000;
        this.unit = unit;
        law = new SteadyLaw(unit);
        funnelBaseMm = unit.column().funnelBaseMm();
        neckAreaM2 = Math.PI / 4e6 * unit.column().neckBoreMm() * unit.column().neckBoreMm();
        targetM3PerS = unit.target().skimmateMlPerDay() / ML_PER_DAY;
        nominalDarkness = darknessAtTarget();
    }

    /** Level beyond the weir over a mark at a height, mm; 0 or less for a free weir. */
    double beyondMm(Influence influence, double markedCrestMm) {
        return influence.drownedByMm() > 0 ? influence.drownedByMm() + 1000 * startCrestM - markedCrestMm : 0;
    }

    SkimmerUnit unit() {
        return unit;
    }

    /** The law's inputs with the unknowns and the influence worked in. */
    SteadyInputs inputs(SteadyInputs clean, double markedCrestMm, Unknowns unknowns, Influence influence) {
        double crestM = Math.max(LEAST_CREST_M, (markedCrestMm + unknowns.crestOffsetMm() + influence.slipMm()) / 1000);
        double beyondM =
                influence.drownedByMm() > 0 ? startCrestM + influence.drownedByMm() / 1000 : clean.levelBeyondM();
        return new SteadyInputs(
                crestM,
                clean.flowM3PerS() * unknowns.flowScale() * influence.flowFactor(),
                beyondM,
                clean.airM3PerS() * unknowns.airScale() * influence.airFactor() * influence.gasFactor(),
                clean.terminalSpeedMPerS() * unknowns.riseScale() * influence.riseFactor(),
                clean.meanLifeS() * unknowns.lifeScale() * influence.lifeFactor(),
                unknowns.lifeShape(),
                clean.drainageSpeedMPerS(),
                clean.backPressureHeadM() + influence.backPressureMm() / 1000,
                unknowns.weightOnWater());
    }

    /** What is to be seen. */
    Outlook at(SteadyInputs inputs, Unknowns unknowns, Influence influence) {
        SteadyPoint point = law.at(inputs);
        double logLaw = logAmount(inputs, point);
        double logAmount = Math.max(LOWEST_LOG, Math.min(HIGHEST_LOG, unknowns.responseScale() * logLaw));
        double darkness = nominalDarkness
                * unknowns.darknessScale()
                * influence.strengthFactor()
                * Math.exp(-DARKER_WHEN_DRIER * Math.max(-2.5, Math.min(3, logAmount)));
        return new Outlook(
                point.columnLevelM() * 1000 - funnelBaseMm,
                point.clearLevelM() * 1000 - funnelBaseMm,
                point.headM() * 1000,
                logAmount,
                darkness,
                inputs.airM3PerS() * 3.6e6 / influence.gasFactor(),
                point.columnFlooded() || point.lipFlooded());
    }

    private double logAmount(SteadyInputs inputs, SteadyPoint point) {
        double air = inputs.airM3PerS() / unit.columns();
        double left = 1 - point.foamGasM3() / (air * inputs.meanLifeS());
        if (left > TANGENT_BELOW && point.skimmateM3PerS() > 0) {
            return Math.log(point.skimmateM3PerS() / targetM3PerS);
        }
        if (!(air > 0)) {
            return LOWEST_LOG;
        }
        double power = inputs.lifeShape() / (inputs.lifeShape() - 1);
        double logShare = power * (Math.log(TANGENT_BELOW) + (left - TANGENT_BELOW) / TANGENT_BELOW);
        double logFlux = logShare + Math.log(air / neckAreaM2);
        // A dry lip drains by j^n/(n-1) for the power law; n = 2 is close enough where next to nothing arrives.
        double logSkimmate = 2 * logFlux - Math.log(4 * inputs.drainageSpeedMPerS());
        return logSkimmate + Math.log(unit.columns() * neckAreaM2 / targetM3PerS);
    }

    /**
     * The mean life at which the law gives an amount, and how steeply its logarithm hangs on the logarithm of the amount.
     *
     * @param logLaw logarithm of the amount over the target, by the law alone (response scale taken out)
     */
    LifeFit lifeFor(SteadyInputs inputs, double logLaw) {
        SteadyPoint point = law.at(inputs);
        double n = unit.traits().drainageExponent();
        double flux = targetM3PerS * Math.exp(logLaw) / (unit.columns() * neckAreaM2);
        double scaled = flux / inputs.drainageSpeedMPerS();
        double limit = (n - 1) / (n + 1);
        double fraction = Math.min(limit, root(scaled / (n - 1), n));
        for (int step = 0; step < 5; step++) {
            fraction = Math.min(limit, root(scaled / (n - 1 - n * fraction), n));
        }
        double power = n == 2 ? fraction : Math.pow(fraction, n - 1);
        double gasFlux = n * inputs.drainageSpeedMPerS() * power * (1 - fraction) * (1 - fraction);
        double air = inputs.airM3PerS() / unit.columns();
        double share = Math.min(0.95, gasFlux * neckAreaM2 / air);
        double inverse = (inputs.lifeShape() - 1) / inputs.lifeShape();
        double left = Math.pow(share, inverse);
        double life = point.foamGasM3() / (air * (1 - left));
        double slope = left / (1 - left) * inverse / n;
        return new LifeFit(life, slope);
    }

    private static double root(double value, double n) {
        return n == 2 ? Math.sqrt(value) : Math.pow(value, 1 / n);
    }

    /** A mean life in seconds and d ln(life) / d ln(amount). */
    record LifeFit(double seconds, double slope) {}

    private double darknessAtTarget() {
        // The law's own point at target would do, but the target amount may be out of reach of nominal traits; the
        // strength hangs on the lip's dryness only, which the target fixes.
        double n = unit.traits().drainageExponent();
        SteadyInputs clean =
                SteadyInputs.of(unit, unit.ratedSettings(unit.weir().lowestCrestMm()));
        double scaled = targetM3PerS / (unit.columns() * neckAreaM2 * clean.drainageSpeedMPerS());
        double fraction = Math.pow(scaled / (n - 1), 1 / n);
        double gasPerLiquid = n / ((n - 1) * fraction);
        return SkimmateStrength.darknessPtCo(
                SkimmateStrength.mgPerLitre(unit.traits(), Condition.REFERENCE_SKIMMABLE_MG_PER_LITRE, gasPerLiquid));
    }
}
