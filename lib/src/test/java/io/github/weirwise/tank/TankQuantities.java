package io.github.weirwise.tank;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** Which function answers which quantity of the check files, for the tank's sources. */
public final class TankQuantities {
    private TankQuantities() {}

    /** Inputs of a row, by their symbol. */
    public interface Inputs {
        double of(String symbol);
    }

    /** Functions by the quantity's name in the files. */
    public static Map<String, ToDoubleFunction<Inputs>> all() {
        Map<String, ToDoubleFunction<Inputs>> all = new TreeMap<>();
        ammonia(all);
        nitrification(all);
        evaporation(all);
        salt(all);
        return all;
    }

    private static void ammonia(Map<String, ToDoubleFunction<Inputs>> all) {
        all.put("ammonium pKa per kg of pure water", in -> Ammonia.pKaPerKgOfWater(in.of("S"), in.of("T")));
        all.put(
                "un-ionised ammonia in sea water",
                in -> 100 * Ammonia.unionisedFraction(in.of("pH_T"), in.of("S"), in.of("T")));
        all.put(
                "un-ionised ammonia in fresh water",
                in -> 100 * Ammonia.unionisedFractionInFreshWater(in.of("pH"), in.of("T")));
        all.put("ln K of bisulphate, free scale", in -> PhScale.lnBisulphate(in.of("S"), in.of("T")));
        all.put("free pH above total pH", in -> PhScale.freeAboveTotal(in.of("S"), in.of("T")));
        all.put("acute limit of un-ionised ammonia", in -> asAmmonia(ToxicityLimit.UNIONISED_ACUTE));
        all.put("chronic limit of un-ionised ammonia", in -> asAmmonia(ToxicityLimit.UNIONISED_CHRONIC));
        all.put("guideline for un-ionised ammonia", in -> ToxicityLimit.UNIONISED_GUIDELINE.mgNitrogenPerLitre());
        all.put("guideline for nitrite", in -> ToxicityLimit.NITRITE_GUIDELINE.mgNitrogenPerLitre());
    }

    /** NH3 weighs 17.0305 g/mol, its nitrogen 14.0067. */
    private static double asAmmonia(ToxicityLimit limit) {
        return limit.mgNitrogenPerLitre() * 17.0305 / 14.0067;
    }

    private static void nitrification(Map<String, ToDoubleFunction<Inputs>> all) {
        all.put("ammonia nitrogen from feed", in -> FeedWaste.ammoniaNitrogenG(in.of("F"), in.of("PC")));
        all.put("oxygen per nitrogen", in -> Nitrification.OXYGEN_PER_NITROGEN);
        all.put("alkalinity per nitrogen", in -> Nitrification.ALKALINITY_PER_NITROGEN);
        all.put("oxygen per nitrogen with growth", in -> Nitrification.OXYGEN_PER_NITROGEN_WITH_GROWTH);
        all.put("alkalinity per nitrogen with growth", in -> Nitrification.ALKALINITY_PER_NITROGEN_WITH_GROWTH);
        all.put("nitrate per nitrogen", in -> Nitrification.NITRATE_PER_NITROGEN);
        all.put(
                "saturated nitrification",
                in -> Nitrification.saturatedRate(in.of("S")) * Nitrification.temperatureFactor(in.of("T"), 1.05));
        all.put("first-order ammonia", in -> Nitrification.FIRST_ORDER_AMMONIA);
        all.put("first-order nitrite", in -> Nitrification.FIRST_ORDER_NITRITE);
        all.put("nitrification left after a step of salinity", in -> Nitrification.survivingSalinityShock(in.of("dS")));
    }

    private static void evaporation(Map<String, ToDoubleFunction<Inputs>> all) {
        all.put("saturation vapour pressure", in -> Evaporation.vapourPressurePa(in.of("T")));
        all.put(
                "evaporation, ASHRAE form",
                in -> Evaporation.ashraeKgPerM2Day(in.of("Tw"), 0, in.of("Ta"), in.of("RH"), 0, 1));
        all.put("evaporation, Shah", in -> Evaporation.shahKgPerM2Day(in.of("Tw"), in.of("Ta"), in.of("RH")));
        all.put("quiet water against the ASHRAE form", in -> Evaporation.QUIET_FACTOR);
        all.put("evaporation constant at rest from US units", in -> Evaporation.AT_REST);
    }

    private static void salt(Map<String, ToDoubleFunction<Inputs>> all) {
        all.put("salinity after evaporation", in -> SaltBalance.afterEvaporation(in.of("S"), in.of("m"), in.of("E")));
        all.put(
                "salinity after skimming",
                in -> SaltBalance.afterSkimming(in.of("S"), in.of("m"), in.of("q"), in.of("t")));
    }
}
