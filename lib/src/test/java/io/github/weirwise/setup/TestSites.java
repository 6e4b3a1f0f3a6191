package io.github.weirwise.setup;

import java.util.Optional;
import java.util.Random;

/** Variations of installations for tests. */
final class TestSites {
    private TestSites() {}

    static Installation withSump(Installation site, ExtraSump sump) {
        return copy(
                site, site.tank(), site.overflow(), site.drainage(), Optional.of(sump), site.pump(), site.returnLine());
    }

    static Installation withReturnLine(Installation site, ReturnLine line) {
        return copy(site, site.tank(), site.overflow(), site.drainage(), site.extraSump(), site.pump(), line);
    }

    static Installation withPump(Installation site, PumpCurve pump) {
        return copy(site, site.tank(), site.overflow(), site.drainage(), site.extraSump(), pump, site.returnLine());
    }

    static Installation withOverflow(Installation site, Overflow overflow) {
        return copy(site, site.tank(), overflow, site.drainage(), site.extraSump(), site.pump(), site.returnLine());
    }

    static Installation withDrainage(Installation site, Drainage drainage) {
        return copy(site, site.tank(), site.overflow(), drainage, site.extraSump(), site.pump(), site.returnLine());
    }

    /** A training tank with tank size, pump, overflow and return line drawn at random. */
    static Installation random(Random random) {
        Installation base = LanternQuaySites.all().get(random.nextInt(3));
        DisplayTank old = base.tank();
        double length = old.lengthMm() * (0.7 + 0.8 * random.nextDouble());
        double box = length * old.widthMm() * old.crestMm() / 1e6;
        DisplayTank tank = new DisplayTank(
                length,
                old.widthMm(),
                old.floorMm() * (0.8 + 0.3 * random.nextDouble()),
                old.crestMm(),
                old.rimMm(),
                box * (0.7 + 0.25 * random.nextDouble()),
                old.dryKilograms());
        double mouth = 10 + 150 * random.nextDouble();
        ReturnLine line =
                new ReturnLine(base.returnLine().plumbing(), mouth, mouth * random.nextDouble(), random.nextBoolean());
        Overflow overflow = new Overflow(100 + 500 * random.nextDouble());
        return copy(base, tank, overflow, base.drainage(), base.extraSump(), base.pump(), line);
    }

    private static Installation copy(
            Installation site,
            DisplayTank tank,
            Overflow overflow,
            Drainage drainage,
            Optional<ExtraSump> sump,
            PumpCurve pump,
            ReturnLine line) {
        return new Installation(
                site.name(),
                tank,
                overflow,
                drainage,
                site.filter(),
                sump,
                pump,
                line,
                site.hose(),
                site.topOffReservoirLitres(),
                site.stand(),
                site.waterCelsius(),
                site.practicalSalinity());
    }
}
