package io.github.weirwise.demo.tank;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.FoamState;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Reads the invented tank as a person would: a ruler to a millimetre with {@value #RULER_SPREAD_MM} mm of scatter, the
 * cup to 5 mL, colours and foam by the nearest word (spreads are assumed). The same seed gives the same scatter.
 */
public final class Looker {
    /** What is read on every round. */
    public static final List<LookKind> ROUND =
            List.of(LookKind.FUNNEL_LEVEL, LookKind.CUP_VOLUME, LookKind.DARKNESS, LookKind.FOAM_LOOK);

    private static final double RULER_SPREAD_MM = 1.2;
    private static final double CUP_STEP_ML = 5;
    private static final double DARKNESS_SPREAD = 0.15;
    private static final double METER_SPREAD = 0.04;
    private static final double LEAST_CUP_HOURS = 0.5;

    private final Random random;

    /** A person whose scatter follows the seed. */
    public Looker(long seed) {
        random = new Random(seed);
    }

    /** One reading of the things asked for; the cup is emptied when it was measured. */
    public Reading read(TrainingTank tank, List<LookKind> kinds) {
        List<Observation> seen = new ArrayList<>();
        for (LookKind kind : kinds) {
            if (kind == LookKind.CUP_VOLUME && tank.cupHours() < LEAST_CUP_HOURS) {
                continue;
            }
            if (kind == LookKind.DARKNESS && tank.cupMl() < CUP_STEP_ML) {
                continue;
            }
            seen.add(see(tank, kind));
        }
        Reading reading = new Reading(tank.now(), "", seen);
        if (reading.find(Observation.CupVolume.class).isPresent()) {
            tank.emptyCup();
        }
        return reading;
    }

    private Observation see(TrainingTank tank, LookKind kind) {
        OperatingPoint rest = tank.rest();
        Condition condition = tank.settings().condition();
        double funnelBaseMm = tank.unit().column().funnelBaseMm();
        return switch (kind) {
            case FUNNEL_LEVEL -> new Observation.FunnelLevel(ruler(rest.submergenceMm()));
            case CUP_VOLUME ->
                new Observation.CupVolume(
                        CUP_STEP_ML * Math.round(tank.cupMl() / CUP_STEP_ML),
                        Math.round(10 * tank.cupHours()) / 10.0,
                        tank.cupFull());
            case DARKNESS -> new Observation.Darkness(DarknessWord.of(scatter(tank.cupPtCo(), DARKNESS_SPREAD)));
            case FOAM_LOOK -> new Observation.FoamLook(foam(tank));
            case HEAD_OVER_CREST -> new Observation.HeadOverCrest(Math.max(0, ruler(rest.headMm())));
            case CREST_AGAINST_MARK -> new Observation.CrestAgainstMark(ruler(condition.weirSlipMm()));
            case OUTSIDE_LEVEL -> new Observation.OutsideLevel(ruler(rest.clearLevelMm() - funnelBaseMm));
            case AIR_FLOW -> new Observation.AirFlow(Math.round(scatter(rest.airLitresPerHour(), METER_SPREAD)));
            case FOAM_COLLAPSE ->
                new Observation.FoamCollapse(
                        Math.max(1, Math.round(scatter(tank.unit().traits().meanLifeSeconds(), 0.2))));
            case LEVEL_BEYOND_WEIR ->
                new Observation.LevelBeyondWeir(
                        ruler(condition.levelBeyondWeirMm() - tank.settings().weirCrestMm()));
            case RETURN_FLOW ->
                new Observation.ReturnFlow(
                        10 * Math.round(scatter(tank.settings().flowLitresPerHour(), METER_SPREAD) / 10));
            case SALINITY ->
                new Observation.Salinity(Math.round(10 * tank.settings().practicalSalinity()) / 10.0);
            default ->
                new Observation.Inspection(
                        kind.part().orElseThrow(), find(kind.part().orElseThrow(), condition));
        };
    }

    private static FoamLookWord foam(TrainingTank tank) {
        Target target = tank.unit().target();
        double ratio = tank.skimmateMlPerDay() / target.skimmateMlPerDay();
        FoamState state = FoamState.of(tank.skimmateMlPerDay(), tank.rest().foamState() == FoamState.FLOODING, target);
        return switch (state) {
            case NO_FOAM -> ratio < 0.002 ? FoamLookWord.NONE : FoamLookWord.LOW_IN_NECK;
            case TOO_DRY -> FoamLookWord.STIFF;
            case ON_TARGET -> FoamLookWord.CREAMY;
            case TOO_WET -> FoamLookWord.RUNNY;
            case FLOODING -> FoamLookWord.STREAMING;
        };
    }

    private static Finding find(Part part, Condition condition) {
        return switch (part) {
            case AIR_LINE -> finding(1 - condition.airLineOpening());
            case INJECTOR_PUMP, INJECTOR_NOZZLE -> finding(1 - condition.injectorHealth());
            case NECK_AND_CUP -> finding(condition.neckFouling());
            case CUP_VENT -> finding(condition.backPressurePa() / 100);
            case WATER_SURFACE -> finding(condition.filmBreaker());
            case ADDITIVES -> finding(condition.foamBooster());
            default -> Finding.GOOD;
        };
    }

    private static Finding finding(double fault) {
        if (fault < 0.1) {
            return Finding.GOOD;
        }
        return fault < 0.4 ? Finding.DOUBTFUL : Finding.BAD;
    }

    private double ruler(double mm) {
        return Math.rint(mm + RULER_SPREAD_MM * random.nextGaussian());
    }

    private double scatter(double value, double spread) {
        return value * Math.exp(spread * random.nextGaussian());
    }
}
