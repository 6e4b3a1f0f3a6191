package io.github.weirwise.reading;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Range;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Sheet;
import io.github.weirwise.unit.Sum;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.ToDoubleBiFunction;

/**
 * The things that can be observed at a unit, a row each: which sum of level and amount it shows, on which scale, how far two
 * people who read it part, and how long it takes. The belief, the looks that are asked for, tables, forms and the simulated
 * person read these rows.
 *
 * <p>Every row says what it tells: {@code read = factor x sum + sheet's value}, on the row's own scale (millimetres, or the natural
 * logarithm of a ratio), with a scatter of one standard deviation. Scatters are common practice where they are named so and
 * stated judgement otherwise; minutes are our own estimates.
 *
 * @since 0.1
 */
public enum Instrument {
    /** Level in the column by ruler; two people read it 2 to 3 mm apart in bubbly water (common practice). */
    FUNNEL_LEVEL(
            Observation.FunnelLevel.class,
            Shows.sum(Sum.LEVEL, 1, (seen, sheet) -> seen.mm()),
            2.2,
            2,
            Eye.LEVEL,
            Observation.FunnelLevel.MM),
    /** What came into the cup, as an amount a day. */
    CUP_VOLUME(
            Observation.CupVolume.class,
            Shows.sum(Sum.AMOUNT, 1, (seen, sheet) -> ratio(seen.mlPerDay(), sheet.wantedMlPerDay())),
            0.22,
            2,
            Eye.NONE,
            Observation.CupVolume.ML,
            Observation.CupVolume.HOURS),
    /** Darkness by words: strength goes with gas over liquid at the lip, so with the root of the amount (Stevenson 2007). */
    DARKNESS(
            Observation.Darkness.class,
            Shows.between(Sum.AMOUNT, -0.5, (seen, sheet) -> darkness(seen.word(), sheet)),
            0.45,
            2,
            Eye.TONE),
    /** Darkness by a swatch row or an instrument. */
    DARKNESS_MATCH(
            Observation.DarknessMatch.class,
            Shows.sum(Sum.AMOUNT, -0.5, (seen, sheet) -> ratio(seen.ptCo(), sheet.wantedPtCo())),
            0.4,
            3,
            Eye.TONE,
            Observation.DarknessMatch.PT_CO),
    /** The look of the foam: words stand for amounts over the wanted one (stated judgement). */
    FOAM_LOOK(
            Observation.FoamLook.class,
            Shows.between(Sum.AMOUNT, 1, (seen, sheet) -> seen.look().amountLog()),
            0.5,
            1,
            Eye.NONE),
    /** Head over the crest, tells the flow. */
    HEAD_OVER_CREST(
            Observation.HeadOverCrest.class,
            Shows.sum(Sum.HEAD, 1, (seen, sheet) -> seen.mm()),
            2,
            2,
            Eye.NONE,
            Observation.HeadOverCrest.MM),
    /** The crest against its mark, tells a slipped plate. */
    CREST_AGAINST_MARK(
            Observation.CrestAgainstMark.class,
            Shows.sum(Sum.CREST, 1, (Observation.CrestAgainstMark seen, Sheet sheet) -> seen.mm())
                    .faultFrom(-2, Part.WEIR_PLATE),
            1,
            2,
            Eye.NONE,
            Observation.CrestAgainstMark.MM),
    /** Level outside the column; with the level inside it tells gas lift against foam's weight. */
    OUTSIDE_LEVEL(
            Observation.OutsideLevel.class,
            Shows.sum(Sum.CLEAR_LEVEL, 1, (seen, sheet) -> seen.mm()),
            2,
            2,
            Eye.NONE,
            Observation.OutsideLevel.MM),
    /** Air by a meter in the air line. */
    AIR_FLOW(
            Observation.AirFlow.class,
            Shows.sum(
                            Sum.AIR,
                            1,
                            (Observation.AirFlow seen, Sheet sheet) ->
                                    ratio(seen.litresPerHour(), sheet.airLitresPerHour()))
                    .faultFrom(-0.15, Part.AIR_LINE, Part.INJECTOR_PUMP, Part.INJECTOR_NOZZLE),
            0.1,
            4,
            Eye.NONE,
            Observation.AirFlow.LITRES_PER_HOUR),
    /** Time to half of the foam with the injector off: units differ more in it than a fault moves it. */
    FOAM_COLLAPSE(
            Observation.FoamCollapse.class,
            Shows.nothing(
                    "the half-time of standing foam differs between units and days by more than any fault moves it"),
            1,
            6,
            Eye.NONE,
            Observation.FoamCollapse.SECONDS),
    /**
     * Speed of the foam in the neck by ruler and watch. By the drainage law the amount goes with the square of the gas over the
     * lip (Stevenson 2007), so the speed with its root.
     */
    FOAM_CREEP(
            Observation.FoamCreep.class,
            Shows.sum(Sum.AMOUNT, 0.5, (seen, sheet) -> ratio(seen.mmPerMinute(), sheet.wantedCreepMmPerMin())),
            0.6,
            4,
            Eye.NONE,
            Observation.FoamCreep.MM_PER_MINUTE),
    /** Level beyond the weir against the crest: far below it is free, over it the pad backs water up. */
    LEVEL_BEYOND_WEIR(
            Observation.LevelBeyondWeir.class,
            Shows.part((Observation.LevelBeyondWeir seen, Sheet sheet) -> padSize(seen.mm()))
                    .faultFrom(0.2, Part.FILTER_PAD),
            0.12,
            1,
            Eye.NONE,
            Observation.LevelBeyondWeir.MM),
    /** Flow of the return pump. */
    RETURN_FLOW(
            Observation.ReturnFlow.class,
            Shows.sum(
                            Sum.FLOW,
                            1,
                            (Observation.ReturnFlow seen, Sheet sheet) ->
                                    ratio(seen.litresPerHour(), sheet.flowLitresPerHour()))
                    .faultFrom(-0.15, Part.RETURN_PUMP),
            0.1,
            5,
            Eye.NONE,
            Observation.ReturnFlow.LITRES_PER_HOUR),
    /** Salinity: tells what the salt mix lacks. */
    SALINITY(
            Observation.Salinity.class,
            Shows.part((Observation.Salinity seen, Sheet sheet) ->
                            (sheet.practicalSalinity() - seen.practicalSalinity()) / Part.WORST_SALINITY_LOSS)
                    .faultFrom(0.2, Part.SALT_MIX),
            0.08,
            4,
            Eye.NONE,
            Observation.Salinity.PRACTICAL_SALINITY),
    /** Temperature: enters the sheet as the settings' own does. */
    WATER_TEMPERATURE(
            Observation.WaterTemperature.class,
            Shows.nothing("it is taken as the settings' temperature from then on, not as a sign of a fault"),
            1,
            1,
            Eye.NONE,
            Observation.WaterTemperature.CELSIUS),
    /** A look at a part: good, doubtful, bad. */
    INSPECTION(
            Observation.Inspection.class,
            Shows.part((seen, sheet) -> seen.finding().size()),
            0.14,
            3,
            Eye.NONE);

    /** Which habit of the reader shifts all of that person's readings of the row alike. */
    public enum Eye {
        /** None worth following. */
        NONE,
        /** Where a reader sees the surface of bubbly water, mm. */
        LEVEL,
        /** How dark a reader calls a colour. */
        TONE
    }

    private final Class<? extends Observation> kind;
    private final Shows<?> shows;
    private final double scatter;
    private final int minutes;
    private final Eye eye;
    private final List<Limit> limits;

    <T extends Observation> Instrument(
            Class<T> kind, Shows<T> shows, double scatter, int minutes, Eye eye, Limit... limits) {
        this.kind = kind;
        this.shows = shows;
        this.scatter = scatter;
        this.minutes = minutes;
        this.eye = eye;
        this.limits = List.of(limits);
    }

    /** The row of an observation. */
    public static Instrument of(Observation seen) {
        for (Instrument row : ROWS) {
            if (row.kind == seen.getClass()) {
                return row;
            }
        }
        throw new IllegalStateException("no row for " + seen.getClass().getSimpleName());
    }

    private static final Instrument[] ROWS = values();

    /** The observation that records it. */
    public Class<? extends Observation> kind() {
        return kind;
    }

    /** The sum that it shows; empty when it shows a part, or nothing. */
    public Optional<Sum> sum() {
        return Optional.ofNullable(shows.sum);
    }

    /** Whether it shows the size of one part. */
    public boolean showsPart() {
        return shows.part;
    }

    /** Why it moves no belief; empty when it does. */
    public Optional<String> noEffect() {
        return Optional.ofNullable(shows.noEffect);
    }

    /** By how much the reading changes with one of the sum. */
    public double factor() {
        return shows.factor;
    }

    /** One standard deviation of a reading on the row's own scale. */
    public double scatter() {
        return scatter;
    }

    /** Minutes it takes. */
    public int minutes() {
        return minutes;
    }

    /** The reader's habit that it shares with that person's other readings. */
    public Eye eye() {
        return eye;
    }

    /** Parts whose fault its number shows plainly enough to act on, without a look at the part. */
    public Set<Part> measures() {
        return shows.parts;
    }

    /**
     * Whether a value shows a fault of the parts that the row {@linkplain #measures() measures}.
     *
     * @param value on the row's own scale
     */
    public boolean showsFault(double value) {
        return shows.faultFrom < 0 ? value < shows.faultFrom : shows.faultFrom > 0 && value > shows.faultFrom;
    }

    /** Limits of the numbers that record it, in the order of the observation's; empty for words. */
    public List<Limit> limits() {
        return limits;
    }

    /** Whether a reading is a word that stands for a range. */
    public boolean isWord() {
        return shows.range != null;
    }

    /**
     * What was read, on the row's own scale: millimetres, a part's size, or the logarithm of a ratio to the sheet.
     *
     * @throws IllegalStateException if the row is a word or shows nothing
     */
    public double value(Observation seen, Sheet sheet) {
        if (shows.value == null) {
            throw new IllegalStateException(this + " has no number");
        }
        return shows.valueOf(seen, sheet);
    }

    /**
     * The range that the word stands for, on the row's own scale.
     *
     * @throws IllegalStateException if the row is not a word
     */
    public Range range(Observation seen, Sheet sheet) {
        if (shows.range == null) {
            throw new IllegalStateException(this + " is not a word");
        }
        return shows.rangeOf(seen, sheet);
    }

    /** Logarithm of a ratio; nothing at all reads as a fiftieth. */
    private static double ratio(double value, double reference) {
        double least = Math.max(reference, LEAST_REFERENCE);
        return Math.log(Math.max(value, LEAST_SHARE * least) / least);
    }

    private static final double LEAST_SHARE = 0.02;
    private static final double LEAST_REFERENCE = 1e-3;

    private static Range darkness(DarknessWord word, Sheet sheet) {
        double low = word == DarknessWord.CLEAR ? -8 : Math.log(word.ptCo().low() / sheet.wantedPtCo());
        double high = word == DarknessWord.COFFEE ? 5 : Math.log(word.ptCo().high() / sheet.wantedPtCo());
        return new Range(low, Math.max(low, high));
    }

    /** A free weir reads well below the crest; 18 mm over it the pad is as bad as it gets (stated judgement). */
    private static double padSize(double overCrestMm) {
        return Math.max(0.04, Math.min(1, 0.04 + (overCrestMm + 6) / 24));
    }

    /** What a row shows. */
    private static final class Shows<T extends Observation> {
        private final Sum sum;
        private final boolean part;
        private final double factor;
        private final ToDoubleBiFunction<T, Sheet> value;
        private final BiFunction<T, Sheet, Range> range;
        private final String noEffect;
        private double faultFrom;
        private Set<Part> parts = Set.of();

        private Shows(
                Sum sum,
                boolean part,
                double factor,
                ToDoubleBiFunction<T, Sheet> value,
                BiFunction<T, Sheet, Range> range,
                String noEffect) {
            this.sum = sum;
            this.part = part;
            this.factor = factor;
            this.value = value;
            this.range = range;
            this.noEffect = noEffect;
        }

        static <T extends Observation> Shows<T> sum(Sum sum, double factor, ToDoubleBiFunction<T, Sheet> value) {
            return new Shows<>(sum, false, factor, value, null, null);
        }

        static <T extends Observation> Shows<T> between(Sum sum, double factor, BiFunction<T, Sheet, Range> range) {
            return new Shows<>(sum, false, factor, null, range, null);
        }

        static <T extends Observation> Shows<T> part(ToDoubleBiFunction<T, Sheet> size) {
            return new Shows<>(null, true, 1, size, null, null);
        }

        static <T extends Observation> Shows<T> nothing(String reason) {
            return new Shows<>(null, false, 0, null, null, reason);
        }

        /** From which value on, below 0 downwards, the number shows a fault of these parts. */
        Shows<T> faultFrom(double value, Part... ofParts) {
            faultFrom = value;
            parts = Set.of(ofParts);
            return this;
        }

        @SuppressWarnings("unchecked")
        double valueOf(Observation seen, Sheet sheet) {
            return value.applyAsDouble((T) seen, sheet);
        }

        @SuppressWarnings("unchecked")
        Range rangeOf(Observation seen, Sheet sheet) {
            return range.apply((T) seen, sheet);
        }
    }
}
