package io.github.weirwise.diagnosis;

import io.github.weirwise.unit.Part;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * The branches of a belief a day on, with their weights: what a move of the weir, a service or a look would make of them. Immutable.
 *
 * @since 0.2
 */
public final class Prospects {
    private final List<Prospect> branches;
    private final double[] weights;

    Prospects(List<Prospect> branches) {
        this.branches = List.copyOf(branches);
        this.weights = branches.stream().mapToDouble(Prospect::weight).toArray();
    }

    List<Prospect> branches() {
        return branches;
    }

    /** Slope of the amount in the weir, as a logarithm a millimetre. */
    public double slopePerMm() {
        double sum = 0;
        for (Prospect each : branches) {
            sum += each.weight() * each.slopePerMm();
        }
        return sum;
    }

    /** Standard deviation of the slope's logarithm. */
    public double slopeLogSd() {
        double sum = 0;
        for (Prospect each : branches) {
            sum += each.weight() * each.slopeLogSd();
        }
        return sum;
    }

    /** Chance that a part is over a size some days on. */
    public double chanceOver(Part part, double size, double days) {
        int at = State.of(part) - State.PARTS;
        double grown = days / part.fouling().daysToWorst();
        double chance = 0;
        for (int i = 0; i < weights.length; i++) {
            chance += weights[i] * branches.get(i).chanceOver(at, size, grown);
        }
        return chance;
    }

    /** The amount after a move of the weir and services. */
    public After after(double mm, Set<Part> serviced) {
        int[] at = positions(serviced);
        double[] raws = new double[weights.length];
        double[] variances = new double[weights.length];
        for (int i = 0; i < raws.length; i++) {
            raws[i] = branches.get(i).rawAmount(mm, at);
            variances[i] = branches.get(i).rawVariance(mm, at);
        }
        return new After(raws, variances);
    }

    private static int[] positions(Set<Part> serviced) {
        int[] at = new int[serviced.size()];
        int n = 0;
        for (Part part : serviced) {
            if (State.of(part) >= 0) {
                at[n++] = State.of(part) - State.PARTS;
            }
        }
        return n == at.length ? at : Arrays.copyOf(at, n);
    }

    /** The amount after something was done, as a logarithm over the wanted one. */
    public final class After {
        /** The amount of each branch before it is bent. */
        private final double[] raws;

        private final double[] variances;

        private After(double[] raws, double[] variances) {
            this.raws = raws;
            this.variances = variances;
        }

        /** The amount a day on. */
        public Mixture tomorrow() {
            double[] means = new double[raws.length];
            double[] sds = new double[raws.length];
            for (int i = 0; i < raws.length; i++) {
                means[i] = SumModel.bent(raws[i]);
                sds[i] = Prospect.bentSd(raws[i], variances[i]);
            }
            return new Mixture(weights, means, sds);
        }

        /** The amount some days later still. */
        public Mixture later() {
            double[] means = new double[raws.length];
            double[] sds = new double[raws.length];
            for (int i = 0; i < raws.length; i++) {
                double raw = raws[i] + branches.get(i).laterLog();
                means[i] = SumModel.bent(raw);
                sds[i] = Prospect.bentSd(raw, variances[i] + branches.get(i).laterVariance());
            }
            return new Mixture(weights, means, sds);
        }

        /**
         * How many further moves of the weir are needed to an aimed amount, by the branches' means; 0 for one that one move reaches.
         *
         * @param aimLog the aim, a logarithm over the wanted amount
         * @param stepMm how far one move goes at most, above 0
         */
        public double movesAway(double aimLog, double stepMm) {
            double sum = 0;
            for (int i = 0; i < raws.length; i++) {
                double moves = Math.abs(raws[i] - aimLog) / (branches.get(i).slopePerMm() * stepMm) - 1;
                sum += weights[i] * Math.max(0, moves);
            }
            return sum;
        }
    }
}
