package io.github.weirwise.practice;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Bounds;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankConditions;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmateStrength;
import io.github.weirwise.unit.SteadyInputs;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Reads a bench as a person does, with seeded errors: a ruler in bubbly water with a bias of its own, a cup, a vial, a
 * glance. Sizes of the errors are our own estimates; levels to 2 or 3 mm are common practice.
 */
final class Eye {
    private static final double RULER_MM = 1.4;
    private static final double BIAS_MM = 1.0;
    private static final double CLEAN_RULER_MM = 0.8;
    private static final double CUP_SHARE = 0.06;
    private static final double DARKNESS_LOG = 0.2;
    private static final double LOOK_LOG = 0.3;
    private static final double METER_SHARE = 0.05;
    private static final double SALINITY = 0.5;
    private static final double COLLAPSE_LOG = 0.15;

    /** No skimmate is stronger. */
    private static final double MOST_MG_PER_LITRE = 20_000;

    private static final double LEAST_FOR_A_VIAL_ML = 3;
    /** Logarithms of the amount over the wanted one between the looks of the foam, driest first. */
    private static final double[] LOOK_LIMITS = {-4.5, -1.9, -0.6, 0.9, 2.3};

    private final Bench bench;
    private final int seed;
    private final double error;
    private final OperatingPoint point;
    private final Settings settings;

    Eye(Bench bench, int seed, double error) {
        this.bench = bench;
        this.seed = seed;
        this.error = error;
        settings = bench.settings();
        point = OperatingPoint.of(bench.plan().unit(), settings);
    }

    /** What is seen, as it is noted. */
    JournalEntry entry(Look look) {
        Instant at = SessionClock.at(bench.hours());
        return look == Look.WATER_TEST ? new Note(at, waterTest(bench)) : new Reading(at, "", at(look));
    }

    /** What is seen; empty when there is nothing to see, such as no darkness in an empty cup. */
    List<Observation> at(Look look) {
        SplittableRandom dice = Dice.of(seed, look.ordinal(), bench.hours());
        double z = error * dice.nextGaussian();
        Optional<Part> part = look == Look.SUMP_LEVEL
                ? Optional.of(Part.SUMP_LEVEL)
                : look.kind().flatMap(LookKind::part);
        if (part.isPresent()) {
            return List.of(inspected(part.get(), dice));
        }
        if (look == Look.ROUND) {
            return round();
        }
        Optional<Instrument> row = look == Look.TEMPERATURE
                ? Optional.of(Instrument.WATER_TEMPERATURE)
                : look.kind().flatMap(LookKind::instrument);
        return row.map(each -> read(each, z)).orElse(List.of());
    }

    private List<Observation> read(Instrument row, double z) {
        return switch (row) {
            case FUNNEL_LEVEL -> List.of(level(z));
            case CUP_VOLUME -> List.of(cup(z));
            case DARKNESS -> darkness(z);
            case FOAM_LOOK -> List.of(foam(z));
            case HEAD_OVER_CREST ->
                List.of(new Observation.HeadOverCrest(within(row, halves(point.headMm() + CLEAN_RULER_MM * z))));
            case CREST_AGAINST_MARK ->
                List.of(new Observation.CrestAgainstMark(
                        within(row, halves(settings.condition().weirSlipMm() + CLEAN_RULER_MM * z))));
            case OUTSIDE_LEVEL ->
                List.of(new Observation.OutsideLevel(within(
                        row,
                        halves(point.clearLevelMm()
                                - bench.plan().unit().column().funnelBaseMm()
                                + CLEAN_RULER_MM * z))));
            case AIR_FLOW -> List.of(new Observation.AirFlow(meter(row, point.airLitresPerHour(), z)));
            case FOAM_CREEP ->
                List.of(new Observation.FoamCreep(
                        within(row, Math.rint(point.foamCreepMmPerMin() * Math.exp(0.2 * z)))));
            case FOAM_COLLAPSE -> List.of(new Observation.FoamCollapse(collapse(z)));
            case LEVEL_BEYOND_WEIR ->
                List.of(new Observation.LevelBeyondWeir(within(row, Math.rint(beyond() + 2 * z) + 0.0)));
            case RETURN_FLOW -> List.of(new Observation.ReturnFlow(meter(row, settings.flowLitresPerHour(), z)));
            case SALINITY -> List.of(new Observation.Salinity(salinity(z)));
            case WATER_TEMPERATURE ->
                List.of(new Observation.WaterTemperature(within(row, tenths(settings.waterCelsius() + 0.2 * z))));
            // A person has words for a colour, and a part is looked at by its name.
            case DARKNESS_MATCH, INSPECTION -> List.of();
        };
    }

    private List<Observation> round() {
        List<Observation> seen = new ArrayList<>();
        for (Look each : List.of(Look.FUNNEL_LEVEL, Look.CUP_VOLUME, Look.DARKNESS, Look.FOAM_LOOK)) {
            seen.addAll(at(each));
        }
        return seen;
    }

    private Observation level(double z) {
        double bias = error * BIAS_MM * Dice.of(seed, -1, 0).nextGaussian();
        double read = point.submergenceMm() + Math.max(-2, Math.min(2, bias)) + RULER_MM * z;
        return new Observation.FunnelLevel(within(Instrument.FUNNEL_LEVEL, Math.rint(read) + 0.0));
    }

    private Observation cup(double z) {
        boolean drained = bench.plan().waste().drained();
        double capacity = drained
                ? 1000 * bench.plan().waste().containerLitres()
                : bench.plan().unit().cupMl();
        boolean full =
                drained ? bench.tank().is(Stock.CONTAINER_FULL) : bench.tank().is(Stock.CUP_FULL);
        double read = Math.rint(collectedMl() * (1 + CUP_SHARE * z) + z);
        double ml = within(Instrument.CUP_VOLUME, full ? capacity : Math.max(0, Math.min(capacity, read)));
        double hours = Instrument.CUP_VOLUME
                .limits()
                .get(1)
                .clamp(bench.hours() - bench.lastEmptied().atHours());
        return new Observation.CupVolume(ml, hundredths(hours), full);
    }

    private double collectedMl() {
        return bench.tank().of(Stock.CUP_ML) + bench.tank().of(Stock.CONTAINER_ML);
    }

    private List<Observation> darkness(double z) {
        if (collectedMl() < LEAST_FOR_A_VIAL_ML) {
            return List.of();
        }
        double mg = Math.max(0, Math.min(MOST_MG_PER_LITRE, bench.tank().collectedMgPerLitre()));
        double ptCo = SkimmateStrength.darknessPtCo(mg) * Math.exp(DARKNESS_LOG * z);
        return List.of(new Observation.Darkness(DarknessWord.of(ptCo)));
    }

    private Observation foam(double z) {
        double wanted = bench.plan().unit().target().skimmateMlPerDay();
        double log = Math.log(Math.max(1e-9, bench.tank().of(Stock.SKIMMATE_ML_PER_DAY) / wanted)) + LOOK_LOG * z;
        int word = 0;
        while (word < LOOK_LIMITS.length && log > LOOK_LIMITS[word]) {
            word++;
        }
        return new Observation.FoamLook(FoamLookWord.values()[word]);
    }

    private static double meter(Instrument row, double litresPerHour, double z) {
        return within(row, Math.rint(litresPerHour * (1 + METER_SHARE * z)));
    }

    /**
     * Time to half: by an exponential law of lives ln 2 of the mean life; 0.65 of it by a power law of 1.2 in a foam that loses
     * half of its gas on the way (computed from both laws).
     */
    private double collapse(double z) {
        double half =
                Math.log(2) * SteadyInputs.of(bench.plan().unit(), settings).meanLifeS();
        return within(Instrument.FOAM_COLLAPSE, Math.rint(half * Math.exp(COLLAPSE_LOG * z)));
    }

    private double beyond() {
        double crest = settings.weirCrestMm() + settings.condition().weirSlipMm();
        return settings.condition().levelBeyondWeirMm() - crest;
    }

    private double salinity(double z) {
        return within(Instrument.SALINITY, tenths(settings.practicalSalinity() + SALINITY * z));
    }

    /** A sound part is called sound nine times in ten; a fault of a quarter is called bad every third time. */
    private Observation inspected(Part part, SplittableRandom dice) {
        double size = new PartInTank(bench, part).size();
        double bad = size < 0.05 ? 0.015 * error : 1 - error * (1 - Math.min(0.95, 0.1 + 1.3 * size));
        double good = size < 0.05 ? 1 - 0.1 * error : error * Math.max(0.02, 0.7 - 1.6 * size);
        double at = dice.nextDouble();
        Finding found = at < bad ? Finding.BAD : at < 1 - good ? Finding.DOUBTFUL : Finding.GOOD;
        return new Observation.Inspection(part, found);
    }

    /** Ammonia, nitrite and oxygen in words, because a journal has no reading for them. */
    private static String waterTest(Bench bench) {
        TankConditions water = TankConditions.of(bench.plan(), bench.tank());
        Phrase words = Phrase.of(
                "practice.waterTest",
                Quantity.of(water.ammoniaMgPerLitre(), Unit.MILLIGRAM_PER_LITRE),
                Quantity.of(water.nitriteMgPerLitre(), Unit.MILLIGRAM_PER_LITRE),
                Quantity.of(water.oxygenMgPerLitre(), Unit.MILLIGRAM_PER_LITRE),
                Bounds.of(tenths(water.pHTotal()), Unit.PLAIN));
        return PhraseBook.ENGLISH_METRIC.say(words);
    }

    private static double within(Instrument row, double value) {
        return row.limits().get(0).clamp(value);
    }

    private static double halves(double mm) {
        return Math.rint(mm * 2) / 2 + 0.0;
    }

    private static double tenths(double value) {
        return Math.rint(value * 10) / 10;
    }

    private static double hundredths(double hours) {
        return Math.max(0.05, Math.rint(hours * 100) / 100);
    }
}
