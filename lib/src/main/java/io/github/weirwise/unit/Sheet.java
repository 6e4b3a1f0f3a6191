package io.github.weirwise.unit;

/**
 * What a clean unit should do as it is set, by its drawing and data: the fixed terms of the sums ({@link Sum}). What the parts
 * and the unit's own ways add is somebody else's knowledge. Its numbers are derived by {@link SteadyLaw}.
 *
 * @param levelMm level in the column over the funnel base, mm
 * @param clearLevelMm clear-water level over the funnel base, mm
 * @param headMm head over the crest, mm
 * @param gasLiftMm how much the gas lifts the level, mm, 0 or more
 * @param airLitresPerHour air that is set, 0 or more
 * @param airLog natural logarithm of that air over the rated air; at least -6, also for no air
 * @param flowLitresPerHour flow that is set, 0 or more
 * @param practicalSalinity salinity that is wanted
 * @param waterCelsius temperature that is set
 * @param wantedLevelMm level to start from, over the funnel base
 * @param wantedMlPerDay wanted amount
 * @param wantedPtCo wanted darkness, the middle of its range by logarithms
 * @param wantedCreepMmPerMin speed of the foam in the neck at the wanted amount, above 0
 * @param foamDepthMm depth of a foam that fills the room between the wanted level and the lip on the column's bore
 * @since 0.1
 */
public record Sheet(
        double levelMm,
        double clearLevelMm,
        double headMm,
        double gasLiftMm,
        double airLitresPerHour,
        double airLog,
        double flowLitresPerHour,
        double practicalSalinity,
        double waterCelsius,
        double wantedLevelMm,
        double wantedMlPerDay,
        double wantedPtCo,
        double wantedCreepMmPerMin,
        double foamDepthMm) {
    private static final double LEAST_AIR_LOG = -6;
    /** Liquid in the foam at the lip on target, from memory of wet to dry foams; turns an amount into a creep speed. */
    private static final double LIP_LIQUID = 0.006;

    /** The sheet of a unit with its settings; parts clean and load as on its data sheet, whatever the settings' condition says. */
    public static Sheet of(SkimmerUnit unit, Settings settings) {
        return of(unit, settings, new SteadyLaw(unit));
    }

    /** The same with a law made before for this unit. */
    public static Sheet of(SkimmerUnit unit, Settings settings, SteadyLaw law) {
        SteadyInputs inputs = SteadyInputs.of(unit, settings.withCondition(Condition.REFERENCE));
        SteadyPoint point = law.at(inputs);
        Column column = unit.column();
        double baseMm = column.funnelBaseMm();
        double levelMm = point.columnLevelM() * 1000 - baseMm;
        double clearMm = point.clearLevelM() * 1000 - baseMm;
        Target target = unit.target();
        double boreArea = Math.PI / 4 * column.boreMm() * column.boreMm();
        double neckArea = Math.PI / 4 * column.neckBoreMm() * column.neckBoreMm();
        double roomMm3 = new FoamSpace(column).volumeAboveM3((baseMm + target.submergenceMm()) / 1000) * 1e9;
        return new Sheet(
                levelMm,
                clearMm,
                point.headM() * 1000,
                Math.max(0, levelMm - clearMm),
                settings.airLitresPerHour(),
                airLog(settings.airLitresPerHour() / unit.ratedAirLitresPerHour()),
                settings.flowLitresPerHour(),
                settings.practicalSalinity(),
                settings.waterCelsius(),
                target.submergenceMm(),
                target.skimmateMlPerDay(),
                Math.sqrt(Math.max(1, target.darknessPtCo().low())
                        * Math.max(1, target.darknessPtCo().high())),
                target.skimmateMlPerDay() * 1000 / (1440 * LIP_LIQUID * neckArea * unit.columns()),
                Math.max(10, roomMm3 / boreArea));
    }

    private static double airLog(double share) {
        return share > 0 ? Math.max(LEAST_AIR_LOG, Math.log(share)) : LEAST_AIR_LOG;
    }
}
