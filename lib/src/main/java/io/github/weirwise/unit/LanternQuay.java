package io.github.weirwise.unit;

import io.github.weirwise.report.Range;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The four invented units of the Lantern Quay public aquarium's staff training tanks; measures, levels and layouts are its own.
 *
 * @since 0.1
 */
public final class LanternQuay {
    private static final Range DARK_TEA_PT_CO = new Range(700, 5000);

    private LanternQuay() {}

    /** In a chamber of its own beside the sump of the seahorse room; a tall funnel, no drain in the cup. */
    public static SkimmerUnit seahorseRoom() {
        return new SkimmerUnit(
                "Seahorse room",
                1,
                new Column(72, 45, 160, 88, 36, 47),
                new Weir(70, 95, 105, 225),
                420,
                OptionalDouble.empty(),
                1100,
                62,
                traits(21, 0.7, 2.0, 0, 1.19, 2.3),
                new Target(27, 140, DARK_TEA_PT_CO),
                Layout.OWN_CHAMBER);
    }

    /** In the sump of the staff training tank at the jetty. */
    public static SkimmerUnit jetty() {
        return new SkimmerUnit(
                "Jetty",
                1,
                new Column(118, 25, 236, 76, 54, 105),
                new Weir(88, 88, 165, 295),
                950,
                OptionalDouble.of(18),
                1900,
                145,
                traits(26, 0.8, 2.2, 0, 1.15, 2),
                new Target(13, 205, DARK_TEA_PT_CO),
                Layout.IN_SUMP);
    }

    /** Over the sump of the pilchard ring: the water falls down from the weir. */
    public static SkimmerUnit pilchardRing() {
        return new SkimmerUnit(
                "Pilchard ring",
                1,
                new Column(132, 60, 345, 142, 62, 58),
                new Weir(175, 210, 270, 430),
                1300,
                OptionalDouble.of(35),
                2900,
                190,
                traits(33, 0.9, 2.5, 0.15, 1.1, 1.8),
                new Target(34, 310, DARK_TEA_PT_CO),
                Layout.OVER_SUMP);
    }

    /** Two columns behind one weir with one cup that they share, in the sump of the kelp hall. */
    public static SkimmerUnit kelpHall() {
        return new SkimmerUnit(
                "Kelp hall",
                2,
                new Column(126, 38, 292, 93, 49, 81),
                new Weir(240, 300, 215, 355),
                2600,
                OptionalDouble.of(60),
                4600,
                370,
                traits(28, 0.75, 2.1, 0.05, 1.13, 1.9),
                new Target(9, 620, DARK_TEA_PT_CO),
                Layout.IN_SUMP);
    }

    private static FoamTraits traits(
            double lifeS, double freshMm, double lipMm, double onWater, double perMm, double air) {
        LipAnswer answer = new LipAnswer(1, perMm, air, 4);
        return new FoamTraits(lifeS, 1.2, freshMm, lipMm, 0.0033, 2, 2, 0.10, onWater, 0, Optional.of(answer));
    }

    /** All four, least flow first. */
    public static List<SkimmerUnit> units() {
        return List.of(seahorseRoom(), jetty(), pilchardRing(), kelpHall());
    }
}
