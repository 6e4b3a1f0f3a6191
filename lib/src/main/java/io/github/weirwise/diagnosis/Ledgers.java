package io.github.weirwise.diagnosis;

import io.github.weirwise.report.Range;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Sheet;
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
        Spread spread = new Spread(bank);
        SumModel model = bank.model();
        Sheet sheet = model.sheet();
        List<Term> level = new ArrayList<>();
        level.add(new Term(Topic.SETTING, sheet.levelMm(), new Range(sheet.levelMm(), sheet.levelMm())));
        for (Topic topic : OF_LEVEL) {
            level.add(spread.linear(topic, parts(part -> Topic.ofLevel(part) == topic, model::levelMmOf)));
        }
        level.add(spread.linear(Topic.OWN, one(State.OFFSET, 1)));
        List<Term> amount = new ArrayList<>();
        amount.add(spread.levelTerm());
        amount.add(spread.airTerm());
        for (Topic topic : OF_AMOUNT) {
            amount.add(spread.linear(topic, parts(part -> Topic.ofAmount(part) == topic, model::filmLogOf)));
        }
        amount.add(spread.linear(Topic.PASSING, one(State.PASSING, 1)));
        amount.add(spread.linear(Topic.OWN, one(State.FOAM, 1)));
        return new Ledgers(level, amount, spread.slope(), spread.range(one(State.AIR_EXPONENT, 1)));
    }

    private static double[] one(int at, double factor) {
        double[] line = new double[State.SIZE];
        line[at] = factor;
        return line;
    }

    private static double[] parts(Predicate<Part> wanted, ToDoubleFunction<Part> effect) {
        double[] line = new double[State.SIZE];
        Part.SERVICEABLE.stream().filter(wanted).forEach(part -> line[State.of(part)] = effect.applyAsDouble(part));
        return line;
    }

    /** Means and ranges over all branches. */
    private static final class Spread {
        private final Bank bank;
        private final double[] weights;

        Spread(Bank bank) {
            this.bank = bank;
            this.weights = bank.branches().weights();
        }

        private double[] meanAndSd(double[] gradient, double[] values) {
            double mean = 0;
            double second = 0;
            double[] with = new double[State.SIZE];
            for (int i = 0; i < weights.length; i++) {
                double variance = Math.max(0, bank.branches().moments(i).project(gradient, with));
                mean += weights[i] * values[i];
                second += weights[i] * (values[i] * values[i] + variance);
            }
            return new double[] {mean, Math.sqrt(Math.max(0, second - mean * mean))};
        }

        private double[] values(double[] line) {
            double[] values = new double[weights.length];
            for (int i = 0; i < values.length; i++) {
                values[i] = Moments.dot(line, bank.branches().moments(i).mean());
            }
            return values;
        }

        Term linear(Topic topic, double[] line) {
            return term(topic, meanAndSd(line, values(line)));
        }

        Range range(double[] line) {
            return term(Topic.OWN, meanAndSd(line, values(line))).range();
        }

        Range slope() {
            double[] log = meanAndSd(one(State.SLOPE, 1), values(one(State.SLOPE, 1)));
            return new Range(Math.exp(log[0] - Z80 * log[1]), Math.exp(log[0] + Z80 * log[1]));
        }

        Term levelTerm() {
            double wanted = bank.model().sheet().wantedLevelMm();
            double[] values = new double[weights.length];
            double[] gradient = new double[State.SIZE];
            for (int i = 0; i < values.length; i++) {
                double[] mean = bank.branches().moments(i).mean();
                double over = bank.model().value(io.github.weirwise.unit.Sum.LEVEL, mean, gradient) - wanted;
                values[i] = Math.exp(mean[State.SLOPE]) * over;
            }
            double[] mean = bank.branches().moments(0).mean();
            double slope = Math.exp(mean[State.SLOPE]);
            for (int i = 0; i < gradient.length; i++) {
                gradient[i] *= slope;
            }
            gradient[State.SLOPE] += values[0];
            return term(Topic.LEVEL, meanAndSd(gradient, values));
        }

        Term airTerm() {
            double[] values = new double[weights.length];
            double[] gradient = new double[State.SIZE];
            for (int i = 0; i < values.length; i++) {
                double[] mean = bank.branches().moments(i).mean();
                values[i] = mean[State.AIR_EXPONENT] * bank.model().gasLog(mean);
            }
            double[] mean = bank.branches().moments(0).mean();
            for (Part part : Part.SERVICEABLE) {
                gradient[State.of(part)] =
                        mean[State.AIR_EXPONENT] * bank.model().gasLogOf(part);
            }
            gradient[State.AIR_EXPONENT] = bank.model().gasLog(mean);
            return term(Topic.AIR, meanAndSd(gradient, values));
        }

        private static Term term(Topic topic, double[] meanAndSd) {
            return new Term(topic, meanAndSd[0], Range.around(meanAndSd[0], Z80 * meanAndSd[1]));
        }
    }
}
