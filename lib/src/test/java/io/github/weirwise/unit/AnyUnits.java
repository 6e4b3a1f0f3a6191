package io.github.weirwise.unit;

import io.github.weirwise.report.Range;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/** Units and settings drawn from everything that their records let pass; the seed tells which. */
final class AnyUnits {
    private final SplittableRandom random;

    AnyUnits(long seed) {
        random = new SplittableRandom(seed);
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** Small values as likely as large ones. */
    double spread(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    /** Often one of the ends, where formulas break first. */
    private double edgy(double low, double high) {
        return switch (random.nextInt(10)) {
            case 0 -> low;
            case 1 -> high;
            default -> between(low, high);
        };
    }

    SkimmerUnit unit() {
        double bore = spread(20, 600);
        double opening = edgy(0, 1000);
        double width = spread(10, 2000);
        Column column = new Column(
                bore,
                opening,
                edgy(opening + 10, 2000),
                spread(5, 1000),
                random.nextInt(10) == 0 ? bore : spread(5, bore),
                edgy(0, 1000));
        return new SkimmerUnit(
                "any",
                1 + random.nextInt(12),
                column,
                new Weir(width, Math.min(4000, width * between(1, 3)), 1, 2000),
                spread(10, 100_000),
                random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(spread(0.01, 10_000)),
                spread(50, 100_000),
                spread(1, 20_000),
                traits(),
                new Target(between(-50, 300), spread(1, 20_000), new Range(700, 5000)),
                Layout.IN_SUMP);
    }

    private FoamTraits traits() {
        return new FoamTraits(
                spread(1, 600),
                edgy(1.01, 10),
                spread(0.1, 5),
                spread(0.1, 20),
                spread(0.0005, 0.05),
                edgy(1.5, 3),
                edgy(1.5, 5),
                edgy(0, 0.3),
                edgy(0, 1),
                random.nextBoolean() ? 0 : edgy(0, 1),
                random.nextBoolean() ? Optional.empty() : Optional.of(answer()));
    }

    private LipAnswer answer() {
        return new LipAnswer(spread(0.001, 1000), edgy(1.01, 2), edgy(0.5, 25), edgy(0.5, 20));
    }

    Settings settings() {
        Condition condition = new Condition(
                edgy(0, 500),
                edgy(0, 1),
                edgy(0, 1.5),
                edgy(0, 1),
                edgy(0, 1),
                edgy(0, 3),
                random.nextBoolean() ? 0 : edgy(0, 2000),
                random.nextBoolean() ? 0 : edgy(-1000, 2000),
                random.nextBoolean() ? 0 : edgy(-100, 100));
        double flow = random.nextInt(10) == 0 ? 0 : spread(1e-3, 100_000);
        double air = random.nextInt(10) == 0 ? 0 : spread(1e-3, 20_000);
        return new Settings(edgy(1, 2000), flow, air, edgy(5, 40), edgy(0, 42), condition);
    }

    /** Settings whose crest lets the water stand near the lip. */
    Settings settingsNearLip(SkimmerUnit unit) {
        double crest = unit.column().lipMm() + between(-120, 60);
        return unit.ratedSettings(Math.max(1, Math.min(2000, crest)))
                .withFlowLitresPerHour(spread(50, 20_000))
                .withAirLitresPerHour(spread(1, 3000));
    }
}
