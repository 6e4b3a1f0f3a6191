package io.github.weirwise.evidence;

import io.github.weirwise.json.Request;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Invented units with invented journals, each known by its number and the seed alone: some well set, some not.
 *
 * @param seed of the whole fleet
 * @param fewestVisits visits in the shortest journal, one a day
 * @param mostVisits visits in the longest
 */
record InventedFleet(long seed, int fewestVisits, int mostVisits) {
    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");
    private static final double[] WANTED_CREST_MM = {162, 205, 249};

    /** Units that were visited on three to ten days. */
    static InventedFleet young(long seed) {
        return new InventedFleet(seed, 3, 10);
    }

    /** Units that were visited on thirty days. */
    static InventedFleet settled(long seed) {
        return new InventedFleet(seed, 30, 30);
    }

    /** All that is known of a unit at its last visit. */
    Request request(long number) {
        List<Request> visits = visits(number);
        List<JournalEntry> entries = new ArrayList<>();
        visits.forEach(each -> entries.addAll(each.journal().entries()));
        Request last = visits.get(visits.size() - 1);
        return new Request(last.unit(), last.settings(), new Journal(entries), last.now());
    }

    /** A request for each visit, its journal holding that visit alone. */
    List<Request> visits(long number) {
        SplittableRandom random = new SplittableRandom(seed * 1_000_003 + number);
        int size = random.nextInt(3);
        SkimmerUnit unit = List.of(FirstRoundUnits.small(), FirstRoundUnits.middle(), FirstRoundUnits.large())
                .get(size);
        Settings told = unit.ratedSettings(WANTED_CREST_MM[size] + 8 * random.nextDouble() - 5);
        Settings real = told.withAirLitresPerHour(told.airLitresPerHour() * (0.85 + 0.2 * random.nextDouble()))
                .withFlowLitresPerHour(told.flowLitresPerHour() * (0.9 + 0.15 * random.nextDouble()));
        OperatingPoint point = OperatingPoint.of(unit, real);
        List<Request> visits = new ArrayList<>();
        int count = fewestVisits + random.nextInt(mostVisits - fewestVisits + 1);
        for (int i = 0; i < count; i++) {
            Instant at = START.plusSeconds(86_400L * i);
            visits.add(new Request(unit, told, Journal.of(reading(at, point, real, random)), at.plusSeconds(60)));
        }
        return visits;
    }

    private static Reading reading(Instant at, OperatingPoint point, Settings real, SplittableRandom random) {
        double ml = point.skimmateMlPerDay() * Math.exp(0.3 * scatter(random));
        List<Observation> seen = new ArrayList<>();
        seen.add(new Observation.FunnelLevel(point.submergenceMm() + 2 * scatter(random)));
        seen.add(new Observation.CupVolume(Math.min(ml, 10_000), 24, false));
        if (random.nextInt(3) == 0) {
            seen.add(new Observation.Darkness(DarknessWord.values()[random.nextInt(DarknessWord.values().length)]));
        }
        if (random.nextInt(4) == 0) {
            seen.add(new Observation.AirFlow(real.airLitresPerHour() * Math.exp(0.06 * scatter(random))));
        }
        return new Reading(at, "", seen);
    }

    /** About normal, mean 0, spread 1. */
    private static double scatter(SplittableRandom random) {
        double sum = -6;
        for (int i = 0; i < 12; i++) {
            sum += random.nextDouble();
        }
        return sum;
    }
}
