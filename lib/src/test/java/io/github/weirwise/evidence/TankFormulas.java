package io.github.weirwise.evidence;

import io.github.weirwise.tank.Ammonia;
import io.github.weirwise.tank.Evaporation;
import io.github.weirwise.tank.Nitrification;
import io.github.weirwise.tank.PhScale;
import io.github.weirwise.tank.RivalLaws;
import io.github.weirwise.tank.SaltBalance;

/** Check rows of {@code tank}. */
final class TankFormulas {
    private TankFormulas() {}

    static void addTo(Formulas to) {
        addAmmonia(to);
        addNitrification(to);
        addEvaporation(to);
        to.add("SALTEVAP", "salt balance", row -> SaltBalance.afterEvaporation(row.in("S"), row.in("m"), row.in("E")));
        to.add(
                "SALTSKIM",
                "salt balance",
                row -> SaltBalance.afterSkimming(row.in("S"), row.in("m"), row.in("q"), row.in("t")));
    }

    private static void addAmmonia(Formulas to) {
        String sea = "un-ionised ammonia in sea water";
        to.add("PKANH4", sea, row -> Ammonia.pKaPerKgOfWater(row.in("S"), row.in("T")));
        to.add("NH3SEA", sea, row -> 100 * Ammonia.unionisedFraction(row.in("pH_T"), row.in("S"), row.in("T")));
        to.add(
                "NH3FRESH",
                "un-ionised ammonia in fresh water",
                row -> 100 * RivalLaws.unionisedFractionInFreshWater(row.in("pH"), row.in("T")));
        to.add("KHSO4", "pH scales", row -> PhScale.lnBisulphate(row.in("S"), row.in("T")));
        to.add("PHFREE", "pH scales", row -> PhScale.freeAboveTotal(row.in("S"), row.in("T")));
    }

    private static void addNitrification(Formulas to) {
        to.add("TAN", "ammonia from feed", row -> RivalLaws.ammoniaNitrogenG(row.in("F"), row.in("PC")));
        String cost = "stoichiometry of nitrification";
        to.add("O2N", cost, row -> Nitrification.OXYGEN_PER_NITROGEN);
        to.add("ALKN", cost, row -> RivalLaws.ALKALINITY_PER_NITROGEN);
        to.add("O2NGROWTH", cost, row -> RivalLaws.OXYGEN_PER_NITROGEN_WITH_GROWTH);
        to.add("ALKNGROWTH", cost, row -> RivalLaws.ALKALINITY_PER_NITROGEN_WITH_GROWTH);
        to.add("NO3N", cost, row -> RivalLaws.NITRATE_PER_NITROGEN);
        String rate = "areal rates of nitrification";
        to.add("NITRSHOCK", rate, row -> Nitrification.survivingSalinityShock(row.in("dS")));
    }

    private static void addEvaporation(Formulas to) {
        to.add("PVAP", "vapour pressure", row -> Evaporation.vapourPressurePa(row.in("T")));
        String still = "evaporation";
        to.add(
                "EVAPASHRAE",
                still,
                row -> Evaporation.ashraeKgPerM2Day(row.in("Tw"), 0, row.in("Ta"), row.in("RH"), 0, 1));
        to.add("EVAPSHAH", still, row -> RivalLaws.shahKgPerM2Day(row.in("Tw"), row.in("Ta"), row.in("RH")));
        to.add("EVAPREST", still, row -> Evaporation.AT_REST);
    }
}
