package io.github.weirwise.demo.desk;

import io.github.weirwise.practice.FreePlay;
import io.github.weirwise.practice.ScenarioStart;
import io.github.weirwise.practice.ScenarioTank;
import io.github.weirwise.tank.TankParameter;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.List;
import java.util.Map;

/**
 * The tank of the tuning: the jetty's staff training tank, clean, its weir about {@value #TOO_LOW_MM} mm too low for foam that
 * lives longer than the sheet says.
 */
public final class InventedTank {
    /** How much too low the weir stands at the start, mm, to the nearest. */
    public static final int TOO_LOW_MM = 12;

    private static final double CREST_MM = 205;
    private static final double MONDAY_MORNING = 8;
    private static final double DAYS_BEFORE = 6;
    /** What the cup's drain runs into. */
    private static final double CAN_LITRES = 5;

    private static final ScenarioTank TANK = new ScenarioTank(
            550,
            3.3,
            1,
            1.05,
            0.3,
            CAN_LITRES,
            Map.of(
                    TankParameter.NECK_PER_DAY, 0.004,
                    TankParameter.AIR_LINE_PER_DAY, 0.0002,
                    TankParameter.NOZZLE_PER_DAY, 0.0001,
                    TankParameter.STRAINER_PER_DAY, 0.0004));

    private InventedTank() {}

    /** How the log says that it was set. */
    static Settings told() {
        return LanternQuay.jetty().ratedSettings(CREST_MM);
    }

    /** The tank on a Monday morning at eight; readers' errors follow the seed. */
    public static FreePlay of(int seed) {
        SkimmerUnit unit = LanternQuay.jetty();
        ScenarioStart start = new ScenarioStart(told(), false, MONDAY_MORNING, DAYS_BEFORE, List.of());
        return FreePlay.begin(unit, TANK, start, seed);
    }
}
