package io.github.weirwise.setup;

import static io.github.weirwise.setup.Fitting.ELBOW_45;
import static io.github.weirwise.setup.Fitting.ELBOW_90;
import static io.github.weirwise.setup.Fitting.ENTRANCE_PROJECTING;
import static io.github.weirwise.setup.Fitting.ENTRANCE_SHARP;
import static io.github.weirwise.setup.Fitting.EXIT;

import io.github.weirwise.unit.LanternQuay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Three invented installations of the Lantern Quay public aquarium: one that fits and two that do not.
 */
public final class LanternQuaySites {
    private LanternQuaySites() {}

    /** A staff training tank of 500 L with the middle unit: everything fits. */
    public static Installation trainingTank() {
        return new Installation(
                "Lantern Quay training tank",
                new DisplayTank(1200, 600, 800, 780, 840, 500, 190),
                new Overflow(400),
                new Drainage(2, new Plumbing(50, 1300, List.of(ENTRANCE_SHARP, ELBOW_90, ELBOW_45, EXIT)), 150, 300),
                new FilterBody(LanternQuay.jetty(), 60, 0.06, 800, 400, 20, 60, 150, 700, 0.9, 70, 380, 110, 585, 28),
                Optional.empty(),
                PumpCurve.of(0, 3000, 1000, 2650, 2000, 2050, 3000, 1150, 3800, 300),
                new ReturnLine(
                        new Plumbing(25, 2100, List.of(ENTRANCE_PROJECTING, ELBOW_90, ELBOW_90, ELBOW_45, EXIT)),
                        60,
                        8,
                        false),
                new SkimmateHose(6, 7, 800, 120),
                15,
                new Stand(OptionalDouble.of(1200), 760),
                25,
                35);
    }

    /** A quarantine tank of 1000 L with the large unit on the old drain: the drain is too small. */
    public static Installation quarantineTank() {
        return new Installation(
                "Lantern Quay quarantine tank",
                new DisplayTank(1800, 750, 700, 800, 880, 1000, 310),
                new Overflow(500),
                new Drainage(
                        1,
                        new Plumbing(
                                25,
                                2400,
                                List.of(ENTRANCE_SHARP, ELBOW_90, ELBOW_90, ELBOW_90, ELBOW_45, ELBOW_45, EXIT)),
                        120,
                        340),
                new FilterBody(
                        LanternQuay.kelpHall(), 60, 0.12, 1100, 500, 20, 60, 180, 1000, 0.9, 75, 430, 130, 700, 46),
                Optional.empty(),
                PumpCurve.of(0, 3800, 2000, 3200, 4000, 2100, 5500, 900, 6200, 200),
                new ReturnLine(
                        new Plumbing(32, 2600, List.of(ENTRANCE_PROJECTING, ELBOW_90, ELBOW_90, ELBOW_45, EXIT)),
                        80,
                        10,
                        true),
                new SkimmateHose(10, 7, 1200, 150),
                25,
                new Stand(OptionalDouble.of(2200), 900),
                24,
                34);
    }

    /** A school tank of 240 L with the small unit, a deep return and no siphon-break hole: it floods at a power cut. */
    public static Installation schoolTank() {
        return new Installation(
                "Lantern Quay school tank",
                new DisplayTank(1000, 450, 780, 560, 600, 240, 85),
                new Overflow(250),
                new Drainage(1, new Plumbing(50, 900, List.of(ENTRANCE_SHARP, ELBOW_90, EXIT)), 100, 280),
                new FilterBody(
                        LanternQuay.seahorseRoom(), 40, 0.03, 450, 300, 20, 40, 120, 400, 0.9, 50, 270, 80, 440, 14),
                Optional.empty(),
                PumpCurve.of(0, 2300, 600, 2050, 1200, 1600, 1800, 900, 2200, 250),
                new ReturnLine(
                        new Plumbing(20, 1700, List.of(ENTRANCE_PROJECTING, ELBOW_90, ELBOW_90, EXIT)), 140, 140, true),
                new SkimmateHose(2.5, 7, 600, 60),
                20,
                new Stand(OptionalDouble.of(480), 520),
                25,
                35);
    }

    /** All three. */
    public static List<Installation> all() {
        return List.of(trainingTank(), quarantineTank(), schoolTank());
    }
}
