package io.github.weirwise.unit;

import io.github.weirwise.report.Range;
import io.github.weirwise.report.Warning;
import java.util.List;

/**
 * How a unit runs at rest with given settings: levels, gas, foam, skimmate, and what makes the answer doubtful.
 *
 * <p>Computed by {@link SteadyLaw}, where the sources are named. Levels are over the chamber floor unless the name says otherwise; amounts are for all
 * columns together.
 *
 * @param headMm head of water over the crest
 * @param headBandMm range in which the head lies, by the weir formula's own doubt; wide at small heads
 * @param clearLevelMm level in the chamber, outside the columns
 * @param columnLevelMm level inside the bubbly column
 * @param submergenceMm column level over the funnel base; negative when the water stands below it
 * @param submergenceBandMm the same with the doubt about the head
 * @param holdup share of gas in the column, 0 to 1
 * @param gasLiftMm how much the gas alone lifts the column's level over the chamber's
 * @param foamWeightMm how much the foam's weight pushes the column's level down, as mm of water outside
 * @param backPressureMm how much pressure in the cup pushes it down, as mm of water outside
 * @param foamVolumeMl gas held in the foam of all columns, mL
 * @param gasShareAtLip share of the gas that reaches the lip as foam, 0 to 1
 * @param foamCreepMmPerMin speed of the foam's gas through the neck at the lip
 * @param skimmateMlPerDay liquid into the cup
 * @param liquidFractionAtLip liquid fraction of the foam at the lip, 0 to 1
 * @param strengthMgPerLitre organics in the skimmate, mg/L; rests on an assumed share of its load that a bubble gathers
 *     ({@link SkimmateStrength#COLLECTED_SHARE}) and may be many times too high: a warning says by how much
 * @param darknessPtCo platinum-cobalt darkness of the skimmate; share and colour per gram are matched together to the dark tea of
 *     common practice, so it is surer than the strength
 * @param airLitresPerHour air that really enters
 * @param foamState how the foam arrives, against the unit's target
 * @param warnings what makes the result doubtful or the state dangerous, gravest first
 * @since 0.1
 */
public record OperatingPoint(
        double headMm,
        Range headBandMm,
        double clearLevelMm,
        double columnLevelMm,
        double submergenceMm,
        Range submergenceBandMm,
        double holdup,
        double gasLiftMm,
        double foamWeightMm,
        double backPressureMm,
        double foamVolumeMl,
        double gasShareAtLip,
        double foamCreepMmPerMin,
        double skimmateMlPerDay,
        double liquidFractionAtLip,
        double strengthMgPerLitre,
        double darknessPtCo,
        double airLitresPerHour,
        FoamState foamState,
        List<Warning> warnings) {
    private static final double MM = 1000;
    private static final double ML_PER_DAY = 1e6 * 86400;

    /** Copies the warnings. */
    public OperatingPoint {
        warnings = List.copyOf(warnings);
    }

    /** The steady state of a unit with its settings. */
    public static OperatingPoint of(SkimmerUnit unit, Settings settings) {
        return of(unit, settings, new SteadyLaw(unit));
    }

    /** The same with a law made before for this unit, to spare making it for every point. */
    public static OperatingPoint of(SkimmerUnit unit, Settings settings, SteadyLaw law) {
        SteadyInputs inputs = SteadyInputs.of(unit, settings);
        SteadyPoint point = law.at(inputs);
        HeadDoubt head = HeadDoubt.of(unit, inputs, point);
        double funnelBaseMm = unit.column().funnelBaseMm();
        double submergenceMm = point.columnLevelM() * MM - funnelBaseMm;
        double lift = 1 / (1 - point.holdup());
        double openingMm = unit.column().openingMm();
        double skimmate = point.skimmateM3PerS() * ML_PER_DAY;
        boolean flooded = point.lipFlooded() || point.columnFlooded();
        double strength =
                SkimmateStrength.mgPerLitre(unit.traits(), settings.condition().skimmableMgPerLitre(), point);
        return new OperatingPoint(
                point.headM() * MM,
                head.bandMm(),
                point.clearLevelM() * MM,
                point.columnLevelM() * MM,
                submergenceMm,
                new Range(
                        submergenceMm + lift * (head.bandMm().low() - point.headM() * MM),
                        submergenceMm + lift * (head.bandMm().high() - point.headM() * MM)),
                point.holdup(),
                (lift - 1) * (point.clearLevelM() * MM - openingMm),
                point.foamWeightHeadM() * MM,
                inputs.backPressureHeadM() * MM,
                point.foamGasM3() * 1e6 * unit.columns(),
                point.shareAtLip(),
                point.lipGasFluxMPerS() * MM * 60,
                skimmate,
                point.lipLiquidFraction(),
                strength,
                SkimmateStrength.darknessPtCo(strength),
                inputs.airM3PerS() * 3.6e6,
                FoamState.of(skimmate, flooded, unit.target()),
                OperatingWarnings.of(unit, inputs, point, head, LoadDoubt.of(unit, settings, inputs, point)));
    }
}
