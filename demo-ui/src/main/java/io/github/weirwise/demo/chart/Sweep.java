package io.github.weirwise.demo.chart;

import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyLaw;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Works out the curve of the unit's answer to its weir over all of its travel; while only the weir moves it is not worked out again. */
public final class Sweep {
    private static final int STEPS = 40;
    private static final int KEPT = 3;

    private final Map<Key, List<ResponseData.Point>> kept = new LinkedHashMap<>();

    private record Key(SkimmerUnit unit, Settings butTheWeir) {}

    /**
     * The chart's data.
     *
     * @param before how it was set before the knob in hand was turned
     * @param now how it is set
     * @param rest how it comes to rest so
     * @param nowMlPerDay what comes now
     */
    public ResponseData of(SkimmerUnit unit, Settings before, Settings now, OperatingPoint rest, double nowMlPerDay) {
        ResponseData.Point today = point(now.weirCrestMm(), rest);
        return new ResponseData(unit, curve(unit, now), curve(unit, before), today, nowMlPerDay);
    }

    private List<ResponseData.Point> curve(SkimmerUnit unit, Settings settings) {
        Key key = new Key(unit, settings.withWeirCrestMm(unit.weir().lowestCrestMm()));
        List<ResponseData.Point> known = kept.remove(key);
        kept.put(key, known == null ? workedOut(unit, settings) : known);
        if (kept.size() > KEPT) {
            kept.remove(kept.keySet().iterator().next());
        }
        return kept.get(key);
    }

    private static List<ResponseData.Point> workedOut(SkimmerUnit unit, Settings settings) {
        SteadyLaw law = new SteadyLaw(unit);
        double low = unit.weir().lowestCrestMm();
        double step = (unit.weir().highestCrestMm() - low) / STEPS;
        List<ResponseData.Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double crest = low + i * step;
            points.add(point(crest, OperatingPoint.of(unit, settings.withWeirCrestMm(crest), law)));
        }
        return points;
    }

    private static ResponseData.Point point(double crestMm, OperatingPoint rest) {
        return new ResponseData.Point(crestMm, rest.submergenceMm(), rest.skimmateMlPerDay(), rest.darknessPtCo());
    }
}
