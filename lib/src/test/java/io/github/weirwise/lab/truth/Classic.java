package io.github.weirwise.lab.truth;

import static io.github.weirwise.lab.Dice.between;
import static io.github.weirwise.lab.Dice.factor;
import static io.github.weirwise.lab.Dice.near;
import static io.github.weirwise.unit.Part.*;

import io.github.weirwise.unit.SkimmerUnit;
import java.util.random.RandomGenerator;

/**
 * Truth "classic", the first trial's: Rehbock weir (1929), drift-flux holdup (Zuber and Findlay 1965), balance of pressure, gas of
 * burst bubbles vents through the foam, lives by Weibull (shape a half or a third, where the held gas has a closed form), drainage K e^n with the unit's own n.
 */
public final class Classic implements ResponseLaw {
    private final SkimmerUnit sheet;
    private final double flow;
    private final double air;
    private final double crestOffsetMm;
    private final double discharge;
    private final double distribution;
    private final double driftMmPerS;
    private final double borne;
    private final double salinity;
    private final double drainageExponent;
    private final boolean third;
    private final double logShareAtWanted;
    private final double roomPerHeld;
    private final double filmOnLife;
    private final double airOnLife;
    private final double freeMm;
    private final double ptCo;
    private final double lifePower;

    /** Draws a unit of this family around a data sheet. */
    public Classic(SkimmerUnit sheet, RandomGenerator dice) {
        this.sheet = sheet;
        flow = sheet.ratedFlowLitresPerHour() * factor(dice, 0.04);
        air = sheet.ratedAirLitresPerHour() * factor(dice, 0.07);
        crestOffsetMm = near(dice, 0, 1);
        discharge = factor(dice, 0.04);
        distribution = between(dice, 1.0, 1.4);
        driftMmPerS = 105 * factor(dice, 0.15);
        borne = between(dice, 0, 0.02);
        salinity = near(dice, 35, 0.6);
        drainageExponent = between(dice, 1.75, 2.9);
        third = dice.nextBoolean();
        logShareAtWanted = Math.log(between(dice, 0.02, 0.08));
        filmOnLife = between(dice, 0.1, 0.3);
        airOnLife = between(dice, 0, 0.5);
        freeMm = between(dice, 20, 60);
        ptCo = 1750 * factor(dice, 0.28);
        double levelMm = sheet.target().submergenceMm() + near(dice, 0, 4.5);
        double held = held(-logShareAtWanted);
        roomPerHeld = roomMl(levelMm) / held;
        double steepness = (logShare(held / 1.02) - logShare(held * 1.02)) / (2 * Math.log(1.02));
        lifePower = steepness * drainageExponent / (drainageExponent - 1);
    }

    @Override
    public Response at(double crestMm, double airSet, Fouling fouling, double foaminess, double passing) {
        double airShare = airSet
                * Math.max(0.05, 1 - 0.6 * Math.pow(fouling.of(AIR_LINE), 2.2))
                * (1 - 0.4 * Math.pow(fouling.of(INJECTOR_PUMP), 1.6))
                * (1 - 0.3 * Math.pow(fouling.of(INJECTOR_NOZZLE), 1.6));
        double flowShare = 1 - 0.45 * fouling.of(RETURN_PUMP);
        double crest = crestMm + crestOffsetMm - 8 * fouling.of(WEIR_PLATE);
        double beyond = -freeMm + (freeMm + 16) * fouling.of(FILTER_PAD);
        double free = headMm(flow * flowShare / 3.6e6, crest / 1000);
        double head = beyond <= 0 ? free : Math.pow(Math.pow(free, 2.3) + Math.pow(beyond, 2.3), 1 / 2.3);
        double outside = crest + head - sheet.column().funnelBaseMm();
        double area = Math.PI / 4 * sheet.column().boreMm() * sheet.column().boreMm();
        double gasMmPerS = air * airShare * 1e6 / 3600 / area;
        double slower = 1 + 0.4 * fouling.of(INJECTOR_NOZZLE);
        double holdup = gasMmPerS / (distribution * gasMmPerS + driftMmPerS * slower);
        double opening = sheet.column().openingMm() - sheet.column().funnelBaseMm();
        double lip = sheet.column().funnelHeightMm() + sheet.column().neckHeightMm();
        double level = (outside
                        - opening
                        - 8 * fouling.of(CUP_VENT)
                        - 4 * fouling.of(SEATING)
                        - borne * lip
                        + (1 - holdup) * opening)
                / (1 - holdup - borne);
        double lost = filmOnLife * fouling.of(NECK_AND_CUP)
                + 0.07 * fouling.of(CUP_VENT)
                + 0.12 * fouling.of(SEATING)
                + 0.15 * fouling.of(SALT_MIX)
                + 0.08 * fouling.of(INJECTOR_NOZZLE);
        double gas = airShare * (1 - 0.15 * fouling.of(RETURN_WATER));
        double life = Math.exp((foaminess + passing) / lifePower - lost) * Math.pow(gas, -airOnLife);
        double share = logShare(roomMl(level) / (roomPerHeld * gas * life)) - logShareAtWanted + Math.log(gas);
        double log = level >= lip ? Response.MOST_LOG : share * drainageExponent / (drainageExponent - 1);
        log = Math.max(Response.LEAST_LOG, Math.min(Response.MOST_LOG, log));
        return new Response(
                crest,
                head,
                beyond,
                outside,
                level,
                air * airShare,
                flow * flowShare,
                salinity - 8 * fouling.of(SALT_MIX),
                log,
                log > 2.7,
                ptCo * Math.exp(-0.8 * Math.max(-6, log) / drainageExponent),
                22 * life);
    }

    /** Gas held per gas in when the oldest bubbles' chance to live is exp(-u): the integral of survival up to their age. */
    private double held(double u) {
        double gone = Math.exp(-u);
        return third ? 3 * (2 - (u * u + 2 * u + 2) * gone) : 2 * (1 - (1 + u) * gone);
    }

    /** Logarithm of the share that lives to the lip of a foam that holds so much. */
    private double logShare(double held) {
        double low = 0;
        double high = 14;
        for (int i = 0; i < 26; i++) {
            double middle = (low + high) / 2;
            if (held(middle) < held) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return -low;
    }

    private double roomMl(double levelMm) {
        double wide = sheet.column().boreMm() / 2;
        double narrow = sheet.column().neckBoreMm() / 2;
        double height = sheet.column().funnelHeightMm();
        double neck =
                Math.PI * narrow * narrow * Math.max(0, sheet.column().neckHeightMm() - Math.max(0, levelMm - height));
        double at = wide + (narrow - wide) * Math.max(0, Math.min(1, levelMm / height));
        double cone = Math.PI * height / (3 * (wide - narrow)) * (at * at * at - narrow * narrow * narrow);
        double below = Math.PI * wide * wide * Math.max(0, -levelMm);
        return Math.max(1, (neck + cone + below) / 1000);
    }

    private double headMm(double flowM3PerS, double heightM) {
        double head = 0.02;
        for (int i = 0; i < 4; i++) {
            double coefficient = discharge * 2.0 / 3 * (0.602 + 0.083 * head / heightM) * Math.sqrt(2 * 9.81);
            head = Math.max(
                    1e-3, Math.pow(flowM3PerS / (coefficient * sheet.weir().widthMm() / 1000), 2.0 / 3) - 0.0012);
        }
        return 1000 * head;
    }
}
