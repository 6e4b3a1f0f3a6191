package io.github.weirwise.lab.truth;

import static io.github.weirwise.lab.Dice.between;
import static io.github.weirwise.lab.Dice.factor;
import static io.github.weirwise.lab.Dice.near;
import static io.github.weirwise.unit.Part.*;

import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.random.RandomGenerator;

/**
 * Truth "steep": bubbles live log-normally and narrowly spread, so few of them die until most do; what arrives at the lip is the
 * upper tail at the foam's age (frustum of the funnel over the air). Head by Bazin (1898, from memory). All other numbers are
 * judgement.
 */
public final class Steep implements ResponseLaw {
    private final SkimmerUnit sheet;
    private final double spread;
    private final double tailAtWanted;
    private final double ageAtWanted;
    private final double wetness;
    private final double edge;
    private final double crestOffsetMm;
    private final double air;
    private final double flow;
    private final double salinity;
    private final double holdup;
    private final double borneMm;
    private final double filmOnLife;
    private final double freeMm;
    private final double ptCo;
    /** What a logarithm of life does to a logarithm of amount on target. */
    private final double lifePower;

    /** Draws a unit of this family around a data sheet. */
    public Steep(SkimmerUnit sheet, RandomGenerator dice) {
        this.sheet = sheet;
        spread = between(dice, 0.25, 0.6);
        tailAtWanted = between(dice, 1.6, 2.2);
        wetness = between(dice, 1.2, 1.7);
        edge = factor(dice, 0.05);
        crestOffsetMm = near(dice, 0, 1.2);
        air = sheet.ratedAirLitresPerHour() * factor(dice, 0.06);
        flow = sheet.ratedFlowLitresPerHour() * factor(dice, 0.05);
        salinity = near(dice, 35.2, 0.5);
        holdup = between(dice, 0.05, 0.09);
        borneMm = between(dice, 0, 3);
        filmOnLife = between(dice, 0.12, 0.25);
        freeMm = between(dice, 20, 55);
        ptCo = 1800 * factor(dice, 0.25);
        ageAtWanted = Math.log(roomMm3(sheet.target().submergenceMm() + near(dice, 0, 4)));
        lifePower = (logTail(tailAtWanted - 0.01) - logTail(tailAtWanted + 0.01)) / 0.02 / spread * wetness;
    }

    @Override
    public Response at(double crestMm, double airSet, Fouling fouling, double foaminess, double passing) {
        double airShare = airSet
                * (1 - 0.6 * Math.pow(fouling.of(AIR_LINE), 2))
                * (1 - 0.3 * Math.pow(fouling.of(INJECTOR_PUMP), 1.5))
                * (1 - 0.15 * Math.pow(fouling.of(INJECTOR_NOZZLE), 1.5));
        double flowShare = 1 - 0.4 * fouling.of(RETURN_PUMP);
        double crest = crestMm + crestOffsetMm - 7 * fouling.of(WEIR_PLATE);
        double beyond = -freeMm + (freeMm + 14) * fouling.of(FILTER_PAD);
        double head = headMm(flow * flowShare, crest);
        if (beyond > 0) {
            head = Math.sqrt(head * head + 1.3 * beyond * beyond);
        }
        double outside = crest + head - sheet.column().funnelBaseMm();
        double depth = outside + sheet.column().funnelBaseMm() - sheet.column().openingMm();
        double level = outside
                + depth * holdup * airShare
                - borneMm * airShare
                - 8 * fouling.of(CUP_VENT)
                - 4 * fouling.of(SEATING);
        double lifeLost = filmOnLife * fouling.of(NECK_AND_CUP)
                + 0.05 * fouling.of(CUP_VENT)
                + 0.09 * fouling.of(SEATING)
                + 0.12 * fouling.of(SALT_MIX)
                + 0.08 * fouling.of(INJECTOR_NOZZLE);
        double arriving = airShare * (1 - 0.1 * fouling.of(RETURN_WATER));
        double life = (foaminess + passing) / lifePower - lifeLost;
        double age = Math.log(roomMm3(level)) - ageAtWanted - Math.log(arriving) - life;
        double tail = tailAtWanted + age / spread;
        double log = wetness * (logTail(tail) - logTail(tailAtWanted) + Math.log(arriving));
        double lip = sheet.column().funnelHeightMm() + sheet.column().neckHeightMm();
        boolean streams = level > lip || log > 2.7;
        return new Response(
                crest,
                head,
                beyond,
                outside,
                level,
                air * airShare,
                flow * flowShare,
                salinity - 9 * fouling.of(SALT_MIX),
                level > lip ? Response.MOST_LOG : Math.max(Response.LEAST_LOG, Math.min(Response.MOST_LOG, log)),
                streams,
                ptCo * Math.exp(-0.35 * Math.max(-4, log)),
                25 * Math.exp(life));
    }

    /** Room from a level up to the lip: the rest of the funnel as a frustum, and the neck. */
    private double roomMm3(double levelMm) {
        Column column = sheet.column();
        double up = Math.min(levelMm, column.funnelHeightMm());
        double bottom = column.boreAtMm(column.funnelBaseMm() + Math.max(0, up));
        double top = column.neckBoreMm();
        double funnel = Math.PI
                / 12
                * (column.funnelHeightMm() - Math.max(0, up))
                * (bottom * bottom + bottom * top + top * top);
        double below = Math.PI / 4 * column.boreMm() * column.boreMm() * Math.max(0, -levelMm);
        double neckLeft = column.neckHeightMm() - Math.max(0, levelMm - column.funnelHeightMm());
        return Math.max(1000, below + funnel + Math.PI / 4 * top * top * Math.max(0, neckLeft));
    }

    private double headMm(double litresPerHour, double crestMm) {
        double perMetre = litresPerHour / 3600 / sheet.weir().widthMm();
        double head = 0.02;
        for (int i = 0; i < 4; i++) {
            double approach = head / (head + crestMm / 1000);
            double m = edge * (0.405 + 0.003 / head) * (1 + 0.55 * approach * approach);
            head = Math.max(0.002, Math.pow(perMetre / (m * 4.4294), 2.0 / 3));
        }
        return 1000 * head;
    }

    /** Logarithm of the upper normal tail: a logistic stand-in in the middle (Page 1977), Mills' ratio far out. */
    private static double logTail(double z) {
        if (z > 3) {
            return -z * z / 2 - Math.log(z * 2.5066) + Math.log1p(-1 / (z * z + 2));
        }
        return -Math.log1p(Math.exp(1.5976 * z + 0.070566 * z * z * z));
    }
}
