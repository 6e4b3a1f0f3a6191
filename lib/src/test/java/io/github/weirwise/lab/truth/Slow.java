package io.github.weirwise.lab.truth;

import static io.github.weirwise.lab.Dice.between;
import static io.github.weirwise.lab.Dice.factor;
import static io.github.weirwise.lab.Dice.near;
import static io.github.weirwise.unit.Part.*;

import io.github.weirwise.unit.SkimmerUnit;
import java.util.random.RandomGenerator;

/**
 * Truth "slow": water over the lip goes with the square of the gas rate times a (1 - a), a being the share of the gas that
 * overflows (the law of flotation froths, Neethling, Lee and Cilliers 2003, recalled), and a is logistic in level, film and
 * foaminess. Head by the SIA formula for full-width weirs (1924, from memory). Played over 90 days.
 */
public final class Slow implements ResponseLaw {
    private final SkimmerUnit sheet;
    private final double logitPerMm;
    private final double logitAtWanted;
    private final double logAtWanted;
    private final double levelAtWantedMm;
    private final double airInLogit;
    private final double liftMm;
    private final double foamWeightMm;
    private final double crestOffsetMm;
    private final double air;
    private final double flow;
    private final double salinity;
    private final double filmInLogit;
    private final double freeMm;
    private final double ptCo;

    /** Draws a unit of this family around a data sheet. */
    public Slow(SkimmerUnit sheet, RandomGenerator dice) {
        this.sheet = sheet;
        double share = between(dice, 0.02, 0.12);
        logitAtWanted = Math.log(share / (1 - share));
        logAtWanted = Math.log(share * (1 - share));
        logitPerMm = between(dice, 0.06, 0.27);
        airInLogit = between(dice, 0, 2.5);
        levelAtWantedMm = sheet.target().submergenceMm() + near(dice, 0, 4);
        liftMm = sheet.target().submergenceMm() * between(dice, 0.3, 0.6);
        foamWeightMm = between(dice, 0, 4);
        crestOffsetMm = near(dice, 0, 1);
        air = sheet.ratedAirLitresPerHour() * factor(dice, 0.08);
        flow = sheet.ratedFlowLitresPerHour() * factor(dice, 0.05);
        salinity = near(dice, 34.8, 0.6);
        filmInLogit = between(dice, 0.8, 2.4);
        freeMm = between(dice, 20, 50);
        ptCo = 1650 * factor(dice, 0.25);
    }

    @Override
    public Response at(double crestMm, double airSet, Fouling fouling, double foaminess, double passing) {
        double strangled = 1 - Math.pow(fouling.of(AIR_LINE), 1.4) * 0.5;
        double worn = 1 - 0.35 * fouling.of(INJECTOR_PUMP) - 0.25 * fouling.of(INJECTOR_NOZZLE);
        double airShare = Math.max(0.1, airSet * strangled * worn);
        double flowShare = 1 - 0.45 * Math.pow(fouling.of(RETURN_PUMP), 1.2);
        double crest = crestMm + crestOffsetMm - 8 * fouling.of(WEIR_PLATE);
        double head = headMm(flow * flowShare, crest) + 9 * Math.pow(fouling.of(FILTER_PAD), 1.5);
        double outside = crest + head - sheet.column().funnelBaseMm();
        double level = outside
                + liftMm * airShare
                - foamWeightMm * Math.max(0, airShare - 0.3)
                - 6 * fouling.of(CUP_VENT)
                - 6 * fouling.of(SEATING);
        double film = filmInLogit * fouling.of(NECK_AND_CUP)
                + 0.7 * fouling.of(CUP_VENT)
                + 0.6 * fouling.of(SEATING)
                + 1.3 * fouling.of(SALT_MIX)
                + 1.1 * fouling.of(RETURN_WATER)
                + 0.4 * fouling.of(INJECTOR_NOZZLE);
        double logit = logitAtWanted
                + logitPerMm * (level - levelAtWantedMm)
                + airInLogit * Math.log(airShare)
                + foaminess
                + passing
                - film;
        double share = 1 / (1 + Math.exp(-logit));
        // Over a half the froth law has its maximum; what more comes is water that is carried along.
        double overflow = share < 0.5 ? Math.log(share * (1 - share)) : Math.log(0.25) + 0.6 * logit;
        double log = 2 * Math.log(airShare) + overflow - logAtWanted;
        return new Response(
                crest,
                head,
                -freeMm + (freeMm + 9) * Math.pow(fouling.of(FILTER_PAD), 0.8),
                outside,
                level,
                air * airShare,
                flow * flowShare,
                salinity - 7 * fouling.of(SALT_MIX),
                Math.max(Response.LEAST_LOG, Math.min(Response.MOST_LOG, log)),
                log > 2.5 && share > 0.5,
                ptCo * Math.pow(share * Math.exp(-logitAtWanted), -0.5) * airShare,
                28 * Math.exp(0.2 * (foaminess - film)));
    }

    private double headMm(double litresPerHour, double crestMm) {
        double head = 0.02;
        double perMetre = litresPerHour / 3.6e6 / (sheet.weir().widthMm() / 1000);
        for (int i = 0; i < 4; i++) {
            double approach = head / (head + crestMm / 1000);
            double cd = 0.615 * (1 + 1 / (1000 * head + 1.6)) * (1 + 0.5 * approach * approach);
            head = Math.max(0.001, Math.pow(perMetre / (2.0 / 3 * cd * 4.4294), 2.0 / 3));
        }
        return 1000 * head;
    }
}
