package io.github.weirwise.tank;

import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.Settings;
import java.util.ArrayList;
import java.util.List;

/**
 * A moment of a tank in the numbers that people measure.
 *
 * @param litres all water
 * @param sumpLitres water in the sump; with the pump off, with what drained down
 * @param flowLitresPerHour return flow as it is, past strainer and sump
 * @param practicalSalinity practical salinity
 * @param celsius water temperature
 * @param pHTotal pH on the total scale: the plan's, moved by alkalinity at constant carbon dioxide and by the time of day
 * @param alkalinityMeqPerLitre alkalinity
 * @param oxygenMgPerLitre dissolved oxygen
 * @param ammoniaMgPerLitre total ammonia, mg N/L
 * @param unionisedMgPerLitre un-ionised ammonia, mg N/L; {@link ToxicityLimit} has the limits
 * @param nitriteMgPerLitre nitrite, mg N/L
 * @param nitrateMgPerLitre nitrate, mg N/L
 * @param skimmableMgPerLitre organics that foam can take
 * @param refractoryMgPerLitre organics that it cannot
 * @param levelBeyondWeirMm water level on the biofilter side over the chamber floor
 */
public record TankConditions(
        double litres,
        double sumpLitres,
        double flowLitresPerHour,
        double practicalSalinity,
        double celsius,
        double pHTotal,
        double alkalinityMeqPerLitre,
        double oxygenMgPerLitre,
        double ammoniaMgPerLitre,
        double unionisedMgPerLitre,
        double nitriteMgPerLitre,
        double nitrateMgPerLitre,
        double skimmableMgPerLitre,
        double refractoryMgPerLitre,
        double levelBeyondWeirMm) {
    /** Practical salinities that marine animals are kept in without question (common practice). */
    public static final Range USUAL_SALINITY = new Range(30, 37);
    /** Oxygen that aquaculture texts ask for at least, mg/L (from memory). */
    public static final double LOW_OXYGEN_MG_PER_LITRE = 5;
    /** Oxygen at which many marine fish are in danger, mg/L (from memory). */
    public static final double DANGEROUS_OXYGEN_MG_PER_LITRE = 3;

    private static final double LEAST_ALKALINITY = 0.05;

    /** The numbers of a state of a plan's tank. */
    public static TankConditions of(TankPlan plan, TankState state) {
        TankDraft draft = new TankDraft(state);
        TankRates rates = new TankRates(plan, settings -> FoamOutput.NONE);
        rates.begin(draft);
        Moment now = rates.look(state.hours(), draft.y);
        double alkalinity = now.mgPerLitre(state.of(Stock.ALKALINITY_EQ));
        double ammonia = now.mgPerLitre(state.of(Stock.AMMONIA_G));
        double pH = pHTotal(plan.parameters(), alkalinity, state.hours());
        Settings seen = rates.view().settings(now, draft, draft.y);
        double share = Ammonia.unionisedFraction(pH, Math.min(40, seen.practicalSalinity()), Math.min(40, now.celsius));
        return new TankConditions(
                now.litres,
                now.sumpLitres,
                now.flowLitresPerHour,
                now.practicalSalinity,
                now.celsius,
                pH,
                alkalinity,
                state.of(Stock.OXYGEN_MG_PER_LITRE),
                ammonia,
                share * ammonia,
                now.mgPerLitre(state.of(Stock.NITRITE_G)),
                now.mgPerLitre(state.of(Stock.NITRATE_G)),
                now.mgPerLitre(state.of(Stock.SKIMMABLE_G)),
                now.mgPerLitre(state.of(Stock.REFRACTORY_G)),
                now.levelBeyondWeirMm);
    }

    /** Bicarbonate follows alkalinity, and pH its logarithm while carbon dioxide stays in balance with the room. */
    private static double pHTotal(TankParameters p, double alkalinity, double hours) {
        double swing = p.runs(TankProcess.DAY_SWING) ? p.value(TankParameter.PH_SWING) * TankRates.swing(hours) : 0;
        double reference = p.value(TankParameter.ALKALINITY_MEQ_PER_LITRE);
        return p.value(TankParameter.PH_TOTAL) + Math.log10(Math.max(LEAST_ALKALINITY, alkalinity) / reference) + swing;
    }

    /** What in these numbers harms animals or hides behind the foam, gravest first; empty for good water. */
    public List<Warning> warnings() {
        List<Warning> warnings = new ArrayList<>();
        double acute = ToxicityLimit.UNIONISED_ACUTE.mgNitrogenPerLitre();
        double chronic = ToxicityLimit.UNIONISED_CHRONIC.mgNitrogenPerLitre();
        double nitrite = ToxicityLimit.NITRITE_GUIDELINE.mgNitrogenPerLitre();
        if (unionisedMgPerLitre > acute) {
            warnings.add(Warning.danger("tank.ammoniaAcute", mg(unionisedMgPerLitre), mg(acute)));
        } else if (unionisedMgPerLitre > chronic) {
            warnings.add(Warning.caution("tank.ammoniaChronic", mg(unionisedMgPerLitre), mg(chronic)));
        }
        if (oxygenMgPerLitre < DANGEROUS_OXYGEN_MG_PER_LITRE) {
            warnings.add(Warning.danger("tank.oxygenDanger", mg(oxygenMgPerLitre), mg(DANGEROUS_OXYGEN_MG_PER_LITRE)));
        } else if (oxygenMgPerLitre < LOW_OXYGEN_MG_PER_LITRE) {
            warnings.add(Warning.caution("tank.oxygenLow", mg(oxygenMgPerLitre), mg(LOW_OXYGEN_MG_PER_LITRE)));
        }
        if (nitriteMgPerLitre > nitrite) {
            warnings.add(Warning.caution("tank.nitrite", mg(nitriteMgPerLitre), mg(nitrite)));
        }
        if (!USUAL_SALINITY.contains(practicalSalinity)) {
            warnings.add(Warning.caution(
                    "tank.salinity",
                    Quantity.of(practicalSalinity, Unit.SALINITY),
                    Quantity.of(USUAL_SALINITY.low(), Unit.SALINITY),
                    Quantity.of(USUAL_SALINITY.high(), Unit.SALINITY)));
        }
        return Warning.ranked(warnings);
    }

    private static Quantity mg(double mgPerLitre) {
        return Quantity.of(mgPerLitre, Unit.MILLIGRAM_PER_LITRE);
    }
}
