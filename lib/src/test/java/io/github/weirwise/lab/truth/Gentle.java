package io.github.weirwise.lab.truth;

import static io.github.weirwise.lab.Dice.between;
import static io.github.weirwise.lab.Dice.factor;
import static io.github.weirwise.lab.Dice.near;
import static io.github.weirwise.unit.Part.*;

import io.github.weirwise.unit.SkimmerUnit;
import java.util.random.RandomGenerator;

/**
 * Truth "gentle": the amount is close to log-linear in level and air (x1.05 to 1.35 a millimetre, air exponent 1 to 5) with
 * slow thresholds at both ends; head by a rule of thumb (21 mm at 20 L/h a millimetre of crest, a power of the flow near 2/3).
 * Few adjustments are needed on such units (common practice); all numbers are judgement.
 */
public final class Gentle implements ResponseLaw {
    private final SkimmerUnit sheet;
    private final double slopePerMm;
    private final double airExponent;
    private final double levelAtWantedMm;
    private final double headPower;
    private final double ratedHeadMm;
    private final double liftMm;
    private final double crestOffsetMm;
    private final double air;
    private final double flow;
    private final double salinity;
    private final double filmLoss;
    private final double freeMm;
    private final double ptCo;

    /** Draws a unit of this family around a data sheet. */
    public Gentle(SkimmerUnit sheet, RandomGenerator dice) {
        this.sheet = sheet;
        slopePerMm = Math.log(between(dice, 1.05, 1.35));
        airExponent = between(dice, 1, 5);
        levelAtWantedMm = sheet.target().submergenceMm() + near(dice, 0, 4);
        headPower = between(dice, 0.6, 0.72);
        flow = sheet.ratedFlowLitresPerHour() * factor(dice, 0.05);
        double perMm = sheet.ratedFlowLitresPerHour() / sheet.weir().widthMm();
        ratedHeadMm = 21 * Math.pow(perMm / 20, 2.0 / 3) * factor(dice, 0.05);
        liftMm = (sheet.column().funnelBaseMm() - sheet.column().openingMm()) * between(dice, 0.03, 0.07);
        crestOffsetMm = near(dice, 0, 1);
        air = sheet.ratedAirLitresPerHour() * factor(dice, 0.08);
        salinity = near(dice, 35, 0.5);
        filmLoss = between(dice, 0.9, 2.1);
        freeMm = between(dice, 25, 60);
        ptCo = 1700 * factor(dice, 0.25);
    }

    @Override
    public Response at(double crestMm, double airSet, Fouling fouling, double foaminess, double passing) {
        double flowShare = 1 - 0.5 * fouling.of(RETURN_PUMP);
        double pad = fouling.of(FILTER_PAD);
        double head =
                ratedHeadMm * Math.pow(flow / sheet.ratedFlowLitresPerHour() * flowShare, headPower) + 11 * pad * pad;
        double airShare = airSet
                * (1 - 0.55 * fouling.of(AIR_LINE))
                * (1 - 0.4 * fouling.of(INJECTOR_PUMP))
                * (1 - 0.3 * fouling.of(INJECTOR_NOZZLE));
        double crest = crestMm + crestOffsetMm - 9 * fouling.of(WEIR_PLATE);
        double outside = crest + head - sheet.column().funnelBaseMm();
        double level = outside + liftMm * Math.pow(airShare, 0.8) - 7 * fouling.of(CUP_VENT) - 5 * fouling.of(SEATING);
        double lost = filmLoss * fouling.of(NECK_AND_CUP)
                + 0.5 * fouling.of(INJECTOR_NOZZLE)
                + 0.9 * fouling.of(CUP_VENT)
                + 0.8 * fouling.of(SEATING)
                + 1.1 * fouling.of(SALT_MIX)
                + 1.0 * fouling.of(RETURN_WATER);
        double log = thresholds(
                slopePerMm * (level - levelAtWantedMm) + airExponent * Math.log(airShare) + foaminess + passing - lost);
        double salt = salinity - 8 * fouling.of(SALT_MIX);
        double lip = sheet.column().funnelHeightMm() + sheet.column().neckHeightMm();
        return new Response(
                crest,
                head,
                -freeMm + (freeMm + 12) * Math.min(1, 1.3 * pad),
                outside,
                level,
                air * airShare,
                flow * flowShare,
                salt,
                Math.max(Response.LEAST_LOG, Math.min(Response.MOST_LOG, log)),
                level > lip || log > 2.6,
                ptCo * Math.exp(-0.55 * log),
                35 * Math.exp(0.15 * (foaminess - lost)));
    }

    /** Log-linear within two units; below, the foam starves ever faster; above, it saturates. */
    private static double thresholds(double log) {
        if (log < -2) {
            return log - 0.25 * (log + 2) * (log + 2);
        }
        return log > 2 ? 2 + (log - 2) / (1 + 0.2 * (log - 2)) : log;
    }
}
