package io.github.weirwise.tank;

import io.github.weirwise.skimmer.Settings;

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
    private static final double LEAST_ALKALINITY = 0.05;

    /** The numbers of a state of a plan's tank. */
    public static TankConditions of(TankPlan plan, TankState state) {
        TankDraft draft = new TankDraft(state);
        TankRates rates = new TankRates(plan, settings -> FoamOutput.NONE);
        rates.begin(draft);
        Moment now = rates.look(state.hours(), draft.y);
        double alkalinity = now.mgPerLitre(state.water().alkalinityEq());
        double ammonia = now.mgPerLitre(state.nitrogen().ammoniaG());
        double pH = pHTotal(plan.parameters(), alkalinity, state.hours());
        Settings seen = rates.view().settings(now, draft, draft.y);
        double share = Ammonia.unionisedFraction(pH, Math.min(40, seen.practicalSalinity()), now.celsius);
        return new TankConditions(
                now.litres,
                now.sumpLitres,
                now.flowLitresPerHour,
                now.practicalSalinity,
                now.celsius,
                pH,
                alkalinity,
                state.water().oxygenMgPerLitre(),
                ammonia,
                share * ammonia,
                now.mgPerLitre(state.nitrogen().nitriteG()),
                now.mgPerLitre(state.nitrogen().nitrateG()),
                now.mgPerLitre(state.organics().skimmableG()),
                now.mgPerLitre(state.organics().refractoryG()),
                now.levelBeyondWeirMm);
    }

    /** Bicarbonate follows alkalinity, and pH its logarithm while carbon dioxide stays in balance with the room. */
    private static double pHTotal(TankParameters p, double alkalinity, double hours) {
        double swing = p.runs(TankProcess.DAY_SWING) ? p.value(TankParameter.PH_SWING) * TankRates.swing(hours) : 0;
        double reference = p.value(TankParameter.ALKALINITY_MEQ_PER_LITRE);
        return p.value(TankParameter.PH_TOTAL) + Math.log10(Math.max(LEAST_ALKALINITY, alkalinity) / reference) + swing;
    }
}
