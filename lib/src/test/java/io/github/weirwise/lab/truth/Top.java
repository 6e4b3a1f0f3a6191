package io.github.weirwise.lab.truth;

import static io.github.weirwise.lab.Dice.between;
import static io.github.weirwise.lab.Dice.factor;
import static io.github.weirwise.lab.Dice.near;
import static io.github.weirwise.unit.Part.*;

import io.github.weirwise.unit.SkimmerUnit;
import java.util.random.RandomGenerator;

/**
 * Truth "top": all gas stays in the foam until its top, where bubbles burst with a speed that grows with the foam's age; what
 * rises faster than it bursts goes over the lip. So there is a sharp threshold below and a calm answer above. Head by Poleni's
 * formula with one coefficient. All numbers are judgement.
 */
public final class Top implements ResponseLaw {
    /** Width of the threshold as a share of the rise: a neck is not the same all round. */
    private static final double BLUNT = 0.04;

    private final SkimmerUnit sheet;
    private final double burstAtWanted;
    private final double ageing;
    private final double heightPower;
    private final double heightAtWantedMm;
    private final double wetness;
    private final double coefficient;
    private final double liftMm;
    private final double crestOffsetMm;
    private final double air;
    private final double flow;
    private final double salinity;
    private final double filmOnBurst;
    private final double freeMm;
    private final double ptCo;
    private final double lipMm;
    /** What a logarithm of burst speed takes from a logarithm of amount on target. */
    private final double burstPower;

    /** Draws a unit of this family around a data sheet. */
    public Top(SkimmerUnit sheet, RandomGenerator dice) {
        this.sheet = sheet;
        lipMm = sheet.column().funnelHeightMm() + sheet.column().neckHeightMm();
        burstAtWanted = between(dice, 0.65, 0.85);
        ageing = between(dice, 1.2, 2.5);
        heightPower = between(dice, 1.2, 1.7);
        heightAtWantedMm = lipMm - sheet.target().submergenceMm() + near(dice, 0, 4);
        wetness = between(dice, 1.3, 2.1);
        coefficient = between(dice, 0.59, 0.66);
        liftMm = between(dice, 4, 11);
        crestOffsetMm = near(dice, 0, 1);
        air = sheet.ratedAirLitresPerHour() * factor(dice, 0.07);
        flow = sheet.ratedFlowLitresPerHour() * factor(dice, 0.04);
        salinity = near(dice, 34.6, 0.6);
        filmOnBurst = between(dice, 0.25, 0.55);
        freeMm = between(dice, 22, 60);
        ptCo = 1750 * factor(dice, 0.3);
        burstPower = wetness * burstAtWanted / (1 - burstAtWanted);
    }

    @Override
    public Response at(double crestMm, double airSet, Fouling fouling, double foaminess, double passing) {
        double open = Math.max(
                0.3, 1 - 0.5 * Math.pow(fouling.of(AIR_LINE), 1.8) - 0.1 * Math.pow(fouling.of(INJECTOR_NOZZLE), 1.5));
        double airShare = airSet * open * Math.sqrt(1 - 0.5 * Math.pow(fouling.of(INJECTOR_PUMP), 1.5));
        double flowShare = 1 - 0.5 * fouling.of(RETURN_PUMP);
        double crest = crestMm + crestOffsetMm - 10 * fouling.of(WEIR_PLATE);
        double rise = 10 * Math.pow(fouling.of(FILTER_PAD), 1.2);
        double head = 100
                        * Math.pow(
                                flow * flowShare / sheet.weir().widthMm() / (coefficient * 2.0 / 3 * 4.4294 * 3600),
                                2.0 / 3)
                        * 10
                + rise;
        double outside = crest + head - sheet.column().funnelBaseMm();
        double level = outside + liftMm * Math.pow(airShare, 0.6) - 9 * fouling.of(CUP_VENT) - 5 * fouling.of(SEATING);
        double height = Math.max(3, lipMm - level);
        double gas = airShare * (1 - 0.12 * fouling.of(RETURN_WATER));
        double worse = filmOnBurst * fouling.of(NECK_AND_CUP)
                + 0.2 * fouling.of(SEATING)
                + 0.15 * fouling.of(CUP_VENT)
                + 0.35 * fouling.of(SALT_MIX)
                + 0.15 * fouling.of(INJECTOR_NOZZLE);
        double logBurst = Math.log(burstAtWanted)
                + ageing * (heightPower * Math.log(height / heightAtWantedMm) - Math.log(gas))
                - Math.log(gas)
                + worse
                - (foaminess + passing) / burstPower;
        double over = blunted(1 - Math.exp(Math.min(5, logBurst)));
        double log = wetness * (Math.log(over) - Math.log(blunted(1 - burstAtWanted)) + Math.log(gas));
        // Low foam is wet foam: near the lip the water has no time to drain.
        double undrained = 2.2 * Math.max(0, 0.6 - height / heightAtWantedMm);
        log = Math.max(Response.LEAST_LOG, Math.min(Response.MOST_LOG, log + 3 * undrained));
        return new Response(
                crest,
                head,
                -freeMm + (freeMm + 11) * fouling.of(FILTER_PAD),
                outside,
                level,
                air * airShare,
                flow * flowShare,
                salinity - 7.5 * fouling.of(SALT_MIX),
                log,
                level > lipMm || log > 2.4 && undrained > 0.3 || log > 3,
                ptCo * Math.exp(-0.5 * Math.max(-3.5, log)),
                30 * Math.exp(-worse));
    }

    /** x when well over 0, fading below it. */
    private static double blunted(double x) {
        return x > 30 * BLUNT ? x : BLUNT * Math.log1p(Math.exp(x / BLUNT));
    }
}
