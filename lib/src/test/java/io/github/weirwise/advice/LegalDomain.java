package io.github.weirwise.advice;

import io.github.weirwise.reading.AdviceGiven;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Range;
import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.FoamTraits;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Target;
import io.github.weirwise.unit.Weir;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Everything that the records allow, their limits among it: seeded units, settings, journals and instants. */
public final class LegalDomain {
    private static final Instant USUAL = Instant.parse("2026-03-02T08:00:00Z");
    private static final long LONGEST_STEP_SECONDS = 20 * 86400;

    private final SplittableRandom random;

    /** A domain of its own for each seed. */
    public LegalDomain(long seed) {
        random = new SplittableRandom(seed);
    }

    /** One of the limits, or anything between them. */
    private double between(double low, double high) {
        int which = random.nextInt(8);
        if (which == 0) {
            return low;
        }
        if (which == 1) {
            return high;
        }
        boolean wide = low > 0 && high / low > 20;
        double share = random.nextDouble();
        return wide ? low * Math.pow(high / low, share) : low + (high - low) * share;
    }

    private <T> T any(T[] values) {
        return values[random.nextInt(values.length)];
    }

    /** A unit, one in four a usual one. */
    public SkimmerUnit unit() {
        if (random.nextInt(4) == 0) {
            return FirstRoundUnits.units().get(random.nextInt(3));
        }
        double bore = between(20, 600);
        double opening = between(0, 1000);
        Column column = new Column(
                bore, opening, between(opening + 10, 2000), between(5, 1000), between(5, bore), between(0, 1000));
        double width = between(10, 2000);
        double lowest = between(1, 2000);
        FoamTraits traits = new FoamTraits(
                between(1, 600),
                between(1.01, 10),
                between(0.1, 5),
                between(0.1, 20),
                between(0.0005, 0.05),
                between(1.5, 3),
                between(1.5, 5),
                between(0, 0.3),
                between(0, 1),
                between(0, 1),
                java.util.Optional.empty());
        SkimmerUnit unit = FirstRoundUnits.middle();
        unit = new SkimmerUnit(
                "any",
                1 + random.nextInt(12),
                column,
                new Weir(width, between(width, 4000), lowest, between(lowest, 2000)),
                between(10, 100000),
                unit.cupDrainLitresPerHour(),
                between(50, 100000),
                between(1, 20000),
                traits,
                new Target(between(-50, 300), between(1e-3, 20000), new Range(between(1, 500), between(500, 100000))),
                io.github.weirwise.unit.Layout.IN_SUMP);
        return random.nextBoolean() ? unit : unit.withCupDrainLitresPerHour(between(0.01, 10000));
    }

    /** Settings, their condition as well. */
    public Settings settings() {
        Condition condition = random.nextBoolean()
                ? Condition.REFERENCE
                : new Condition(
                        between(0, 500),
                        between(0, 1),
                        between(0, 1.5),
                        between(0, 1),
                        between(0, 1),
                        between(0, 3),
                        between(0, 2000),
                        between(-1000, 2000),
                        between(-100, 100));
        return new Settings(
                between(1, 2000), between(0, 100000), between(0, 20000), between(5, 40), between(0, 42), condition);
    }

    /** An instant, mostly of our time, sometimes one of the ends of time. */
    public Instant instant() {
        return switch (random.nextInt(12)) {
            case 0 -> Instant.MIN;
            case 1 -> Instant.MAX;
            default -> USUAL.plusSeconds(random.nextLong(-LONGEST_STEP_SECONDS, LONGEST_STEP_SECONDS));
        };
    }

    /** A journal of up to so many entries, in no order of time. */
    public Journal journal(int most) {
        List<JournalEntry> entries = new ArrayList<>();
        int size = random.nextInt(most + 1);
        for (int i = 0; i < size; i++) {
            entries.add(entry(instant()));
        }
        return new Journal(entries);
    }

    private JournalEntry entry(Instant at) {
        return switch (random.nextInt(10)) {
            case 0 -> new WeirMove(at, between(1, 2000), random.nextBoolean());
            case 1 -> new SettingChange(at, SettingChange.Knob.FLOW, between(0, 100000));
            case 2 -> new SettingChange(at, SettingChange.Knob.AIR, between(0, 20000));
            case 3 -> new Service(at, any(Part.values()));
            case 4 -> new Happening(at, any(Happening.Kind.values()));
            case 5 ->
                random.nextBoolean()
                        ? new Note(at, "a note")
                        : new AdviceGiven(at, "a step", AdviceGiven.Followed.OPEN);
            default -> reading(at);
        };
    }

    private Reading reading(Instant at) {
        List<Observation> seen = new ArrayList<>();
        int size = random.nextInt(6);
        for (int i = 0; i < size; i++) {
            seen.add(observation());
        }
        return new Reading(at, random.nextBoolean() ? "" : "A", seen);
    }

    private Observation observation() {
        return switch (random.nextInt(17)) {
            case 0 -> new Observation.FunnelLevel(between(-300, 500));
            case 1, 16 -> new Observation.CupVolume(between(0, 100000), between(0.05, 1000), random.nextBoolean());
            case 2 -> new Observation.Darkness(any(DarknessWord.values()));
            case 3 -> new Observation.DarknessMatch(between(0, 100000));
            case 4 -> new Observation.FoamLook(any(FoamLookWord.values()));
            case 5 -> new Observation.HeadOverCrest(between(0, 300));
            case 6 -> new Observation.CrestAgainstMark(between(-100, 100));
            case 7 -> new Observation.OutsideLevel(between(-500, 500));
            case 8 -> new Observation.AirFlow(between(0, 20000));
            case 9 -> new Observation.FoamCollapse(between(1, 36000));
            case 10 -> new Observation.LevelBeyondWeir(between(-1000, 300));
            case 11 -> new Observation.ReturnFlow(between(0, 100000));
            case 12 -> new Observation.Salinity(between(0, 42));
            case 13 -> new Observation.WaterTemperature(between(5, 40));
            case 14 -> new Observation.FoamCreep(between(1, 100));
            default -> new Observation.Inspection(any(Part.values()), any(Finding.values()));
        };
    }
}
