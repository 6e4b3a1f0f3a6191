package io.github.weirwise.demo.picture;

import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.LipAnswer;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * What a person would see of a unit, worked out from the operating point, the amount that comes now, the parts and the cup. The
 * painters draw it and know nothing else of foam; bubbles are drawn a few times larger than life.
 *
 * @param footMm where the foam stands on the water, over the chamber floor
 * @param topMm where it ends; the lip when it goes over
 * @param wetness -1 (stiff, a tenth of the wanted amount) over 0 (as wanted) to 1 (ten times, water with bubbles)
 * @param freshCellMm drawn size of the bubbles at the foot
 * @param lipCellMm drawn size of the bubbles at the lip
 * @param creepMmPerMin true speed of the foam in the neck now
 * @param look the word that a technician has for it
 * @param foamPtCo platinum-cobalt darkness of what leaves over the lip now
 * @param froth whether the whole column is froth, because it gets more air than it can pass
 * @param microbubbles fine bubbles in the water that leaves, 0 to 1
 * @param neckFilm film on the neck's wall, 0 to 1
 * @param saltCrust salt at the end of the air line, 0 to 1
 * @param padWaterMm depth of the water that stands on the filter pad
 * @param alarms what must not be overlooked, gravest first
 */
record Sight(
        double footMm,
        double topMm,
        double wetness,
        double freshCellMm,
        double lipCellMm,
        double creepMmPerMin,
        FoamLookWord look,
        double foamPtCo,
        boolean froth,
        double microbubbles,
        double neckFilm,
        double saltCrust,
        double padWaterMm,
        List<Alarm> alarms) {
    /** What must not be overlooked. */
    enum Alarm {
        CONTAINER_FULL,
        CUP_FULL,
        FLOOR_WET,
        STREAMING,
        NO_AIR,
        COLUMN_FLOODED,
        PAD_STANDS
    }

    /** Below this, foam breaks before the lip: where the word "stiff" begins. */
    private static final double LEAST_LOG_AT_LIP =
            FoamLookWord.STIFF.amountLog().low();

    private static final double LOG_OF_FULL_WETNESS = Math.log(10);
    private static final double DRAWN_FRESH = 3;
    private static final double DRAWN_LIP = 2.2;
    /** Dry cells are about twice as large as those on target, wet ones half. */
    private static final double CELLS_PER_WETNESS = 0.7;

    private static final double FROTH_ON_WATER_MM = 4;
    private static final double LEAST_PAD_WATER_MM = 3;
    private static final double PAD_STANDS_MM = 12;
    private static final double FULL = 0.985;
    private static final double LEAST_PUDDLE_LITRES = 0.01;
    private static final double MOST_PT_CO = 1e5;
    /** Foam creeps so slowly that it is drawn this much faster than it is. */
    static final double CREEP_DRAWN_TIMES = 10;
    /** Finest bubbles of an injector against its usual ones; from memory. */
    private static final double FINEST_OF_FRESH = 0.2;

    static Sight of(Scene scene) {
        return of(scene, 1);
    }

    /** The same with its bubbles drawn so many times larger, for small drawings. */
    static Sight of(Scene scene, double larger) {
        SkimmerUnit unit = scene.unit();
        OperatingPoint point = scene.point();
        Column column = unit.column();
        double lip = column.lipMm();
        double foot = Math.max(column.openingMm(), Math.min(lip, point.columnLevelMm()));
        boolean waterAtLip = point.columnLevelMm() >= lip;
        double log = Math.log(Math.max(1e-9, scene.amountRatio()));
        boolean air = point.airLitresPerHour() > 0;
        double top = waterAtLip || log >= LEAST_LOG_AT_LIP ? lip : endsAtMm(unit, foot, LEAST_LOG_AT_LIP - log, air);
        double wetness = waterAtLip ? 1 : Math.max(-1, Math.min(1, log / LOG_OF_FULL_WETNESS));
        boolean froth = air && point.holdup() >= 0.999 / unit.traits().holdupExponent();
        Condition condition = scene.settings().condition();
        double padWater = Math.max(LEAST_PAD_WATER_MM, condition.levelBeyondWeirMm() - Section.padTopMm(unit));
        return new Sight(
                foot,
                top,
                wetness,
                larger * DRAWN_FRESH * unit.traits().freshBubbleMm(),
                larger * DRAWN_LIP * unit.traits().lipBubbleMm() * Math.exp(-CELLS_PER_WETNESS * wetness),
                air ? scene.point().foamCreepMmPerMin() / behind(scene) : 0,
                look(waterAtLip ? Double.POSITIVE_INFINITY : log),
                Math.min(MOST_PT_CO, scene.point().darknessPtCo() * behind(scene)),
                froth,
                microbubbles(scene, froth),
                condition.neckFouling(),
                1 - condition.airLineOpening(),
                padWater,
                alarms(scene, wetness >= 1, froth, padWater));
    }

    /**
     * The height at which the foam would just reach a lip that stood there: to take foam room away at the top does what more
     * water does at the foot ({@link LipAnswer}), millimetre of the column's bore for millimetre.
     */
    private static double endsAtMm(SkimmerUnit unit, double footMm, double missingLog, boolean air) {
        double perMm =
                Math.log(unit.traits().lipAnswer().orElse(LipAnswer.USUAL).levelFactorPerMm());
        double bore = unit.column().boreMm();
        double emptyMm3 = bore * bore * missingLog / perMm;
        double height = unit.column().lipMm();
        double least = Math.min(height, footMm + (air ? FROTH_ON_WATER_MM : 0));
        while (height > least && emptyMm3 > 0) {
            double step = Math.min(0.5, height - least);
            double here = unit.column().boreAtMm(height - step / 2);
            double slice = here * here * step;
            height -= step * Math.min(1, emptyMm3 / slice);
            emptyMm3 -= slice;
        }
        return height;
    }

    /** The word whose range holds the amount; where two ranges overlap, the middle of the overlap parts them. */
    private static FoamLookWord look(double log) {
        FoamLookWord[] words = FoamLookWord.values();
        int at = 0;
        while (at + 1 < words.length
                && log
                        > (words[at].amountLog().high()
                                        + words[at + 1].amountLog().low())
                                / 2) {
            at++;
        }
        return words[at];
    }

    /**
     * How far the foam lags behind where it will come to rest: its speed goes with the root of its amount, and the gas that brings
     * a millilitre with one over the root (Stevenson's drainage at the lip, n = 2). Foam that gives less than it will is slower and
     * darker than it will be.
     */
    private static double behind(Scene scene) {
        double settled = scene.point().skimmateMlPerDay();
        double now = scene.skimmateMlPerDay();
        return settled > 0 && now > 0 ? Math.sqrt(settled / now) : 1;
    }

    /** Water that goes down through the column against the rise of its finest bubbles (Stokes' law in sea water). */
    private static double microbubbles(Scene scene, boolean froth) {
        SkimmerUnit unit = scene.unit();
        if (froth) {
            return 1;
        }
        if (scene.point().airLitresPerHour() <= 0) {
            return 0;
        }
        double area = Math.PI / 4 * unit.column().boreMm() * unit.column().boreMm() * 1e-6 * unit.columns();
        double down = unit.traits().columnFeedShare() * scene.settings().flowLitresPerHour() / 3.6e6 / area;
        double finest = FINEST_OF_FRESH * unit.traits().freshBubbleMm() / 1000;
        double rise = 9.81 * finest * finest / (18 * 1e-6);
        return Math.max(0, Math.min(1, down / rise));
    }

    private static List<Alarm> alarms(Scene scene, boolean streams, boolean froth, double padWaterMm) {
        List<Alarm> alarms = new ArrayList<>();
        if (scene.collected()
                .waste()
                .filter(waste -> waste.ml() >= FULL * waste.capacityMl())
                .isPresent()) {
            alarms.add(Alarm.CONTAINER_FULL);
        }
        if (scene.cup().ml() >= FULL * scene.unit().cupMl()) {
            alarms.add(Alarm.CUP_FULL);
        }
        if (scene.collected().spilledLitres() >= LEAST_PUDDLE_LITRES) {
            alarms.add(Alarm.FLOOR_WET);
        }
        if (streams) {
            alarms.add(Alarm.STREAMING);
        }
        if (scene.point().airLitresPerHour() <= 0) {
            alarms.add(Alarm.NO_AIR);
        }
        if (froth) {
            alarms.add(Alarm.COLUMN_FLOODED);
        }
        if (padWaterMm > PAD_STANDS_MM) {
            alarms.add(Alarm.PAD_STANDS);
        }
        return alarms;
    }

    /** How many rows of cells the drawn foam moves on in a second. */
    double rowsPerSecond() {
        return CREEP_DRAWN_TIMES * creepMmPerMin / 60 / (Cells.ROW * lipCellMm);
    }

    /** Whether foam comes to the lip at all. */
    boolean reachesTheLip(double lipMm) {
        return topMm >= lipMm - 0.01;
    }

    Sight {
        alarms = List.copyOf(alarms);
    }
}
