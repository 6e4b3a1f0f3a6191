package io.github.weirwise.diagnosis;

import io.github.weirwise.report.Range;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Sheet;
import io.github.weirwise.unit.Sum;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * The two sums of a unit as terms: how its level adds up, and how its amount adds up against the wanted one. What is missing is
 * shared out; no one cause has to have it all.
 *
 * @param level terms of the level, mm, adding up to the level over the funnel base
 * @param amount terms of the amount, natural logarithms, adding up to that of the amount over the wanted one
 * @param slopePerMm what one millimetre of weir does to the amount here, a natural logarithm; 80 % range
 * @param airExponent what the air does to the amount here: its power; 80 % range
 * @since 0.2
 */
public record Ledgers(List<Term> level, List<Term> amount, Range slopePerMm, Range airExponent) {
    private static final double Z80 = 1.2816;

    /** What a term is about. */
    public enum Topic {
        /** Crest, head and gas as the unit is set. */
        SETTING,
        /** Flow lost. */
        FLOW,
        /** Air or gas lost. */
        AIR,
        /** A pad that backs water up. */
        PAD(Part.FILTER_PAD),
        /** Pressure in the cup. */
        VENT(Part.CUP_VENT),
        /** A plate that slipped. */
        PLATE(Part.WEIR_PLATE),
        /** This unit's own way. */
        OWN,
        /** The level against the wanted one. */
        LEVEL,
        /** Film in the neck, scale, a wrong seat: what breaks foam at the unit. */
        FILM,
        /** Salt that is missing. */
        SALT(Part.SALT_MIX),
        /** What passes by itself. */
        PASSING;

        private final Part part;

        Topic() {
            this(null);
        }

        /** A topic that is one part's. */
        Topic(Part part) {
            this.part = part;
        }

        /** Under which topic a part moves the level: its own, else by what it takes. */
        static Topic ofLevel(Part part) {
            return own(part, OF_LEVEL, part.worst().flowLog() > 0 ? FLOW : AIR);
        }

        private static Topic ofAmount(Part part) {
            return own(part, OF_AMOUNT, FILM);
        }

        private static Topic own(Part part, List<Topic> among, Topic otherwise) {
            return among.stream()
                    .filter(topic -> topic.part == part)
                    .findFirst()
                    .orElse(otherwise);
        }
    }

    /** Topics of parts that move the level, and the amount besides level and air. */
    private static final List<Topic> OF_LEVEL = List.of(Topic.FLOW, Topic.AIR, Topic.PAD, Topic.VENT, Topic.PLATE);

    private static final List<Topic> OF_AMOUNT = List.of(Topic.FILM, Topic.SALT);

    /**
     * One term.
     *
     * @param topic what it is about
     * @param value its best estimate
     * @param range 80 % range
     */
    public record Term(Topic topic, double value, Range range) {}

    /** Copies the lists. */
    public Ledgers {
        level = List.copyOf(level);
        amount = List.copyOf(amount);
    }

    static Ledgers of(Bank bank) {
        SumModel model = bank.model();
        Branches branches = bank.branches();
        Sheet sheet = model.sheet();
        List<Term> level = new ArrayList<>();
        level.add(new Term(Topic.SETTING, sheet.levelMm(), new Range(sheet.levelMm(), sheet.levelMm())));
        for (Topic topic : OF_LEVEL) {
            level.add(linear(branches, topic, parts(part -> Topic.ofLevel(part) == topic, model::levelMmOf)));
        }
        level.add(linear(branches, Topic.OWN, one(State.OFFSET)));
        List<Term> amount = new ArrayList<>();
        amount.add(ofLevel(branches, model));
        amount.add(ofAir(branches, model));
        for (Topic topic : OF_AMOUNT) {
            amount.add(linear(branches, topic, parts(part -> Topic.ofAmount(part) == topic, model::filmLogOf)));
        }
        amount.add(linear(branches, Topic.PASSING, one(State.PASSING)));
        amount.add(linear(branches, Topic.OWN, one(State.FOAM)));
        Range slope = linear(branches, Topic.OWN, one(State.SLOPE)).range();
        return new Ledgers(
                level,
                amount,
                new Range(Math.exp(slope.low()), Math.exp(slope.high())),
                linear(branches, Topic.OWN, one(State.AIR_EXPONENT)).range());
    }

    private static double[] one(int at) {
        double[] line = new double[State.SIZE];
        line[at] = 1;
        return line;
    }

    private static double[] parts(Predicate<Part> wanted, ToDoubleFunction<Part> effect) {
        double[] line = new double[State.SIZE];
        Part.SERVICEABLE.stream().filter(wanted).forEach(part -> line[State.of(part)] = effect.applyAsDouble(part));
        return line;
    }

    private static Term linear(Branches branches, Topic topic, double[] line) {
        return term(branches, topic, line, state -> Moments.dot(line, state));
    }

    /** What the level, over the wanted one, does to the amount. */
    private static Term ofLevel(Branches branches, SumModel model) {
        double wanted = model.sheet().wantedLevelMm();
        ToDoubleFunction<double[]> value =
                state -> Math.exp(state[State.SLOPE]) * (model.value(Sum.LEVEL, state) - wanted);
        double[] first = branches.moments(0).mean();
        double[] gradient = new double[State.SIZE];
        model.value(Sum.LEVEL, first, gradient);
        double slope = Math.exp(first[State.SLOPE]);
        for (int i = 0; i < gradient.length; i++) {
            gradient[i] *= slope;
        }
        gradient[State.SLOPE] += value.applyAsDouble(first);
        return term(branches, Topic.LEVEL, gradient, value);
    }

    /** What the gas does to it. */
    private static Term ofAir(Branches branches, SumModel model) {
        double[] first = branches.moments(0).mean();
        double[] gradient = parts(part -> true, part -> first[State.AIR_EXPONENT] * model.gasLogOf(part));
        gradient[State.AIR_EXPONENT] = model.gasLog(first);
        return term(branches, Topic.AIR, gradient, state -> state[State.AIR_EXPONENT] * model.gasLog(state));
    }

    /** Mean and range of a value over all branches. */
    private static Term term(Branches branches, Topic topic, double[] gradient, ToDoubleFunction<double[]> value) {
        double mean = 0;
        double second = 0;
        double[] with = new double[State.SIZE];
        for (int i = 0; i < branches.size(); i++) {
            Moments moments = branches.moments(i);
            double at = value.applyAsDouble(moments.mean());
            double variance = Math.max(0, moments.project(gradient, with));
            mean += branches.weights()[i] * at;
            second += branches.weights()[i] * (at * at + variance);
        }
        return new Term(topic, mean, Range.around(mean, Z80 * Math.sqrt(Math.max(0, second - mean * mean))));
    }
}
