package io.github.weirwise.diagnosis;

import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Sheet;
import io.github.weirwise.unit.Sum;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/**
 * The branches of the belief with their weights: no part at fault, each one, and pairs of those that foul. Branches that readings
 * have ruled out are dropped. Changed in place.
 */
final class Branches {
    /** Two faults at once are this much likelier than chance: a neglected unit. */
    private static final double PAIR_WEIGHT = 0.6;
    /** A branch this much less likely than the best is dropped. */
    private static final double LEAST_LOG_WEIGHT = Math.log(2e-4);
    /** Of two parts at fault only the likeliest pairs are followed; each part by itself is, so that a plain look can prove it. */
    private static final int MOST_PAIRS = 5;

    private static final double LEAST_SD = 1e-3;

    private final List<Track> tracks;
    private double[] weights;

    private Branches(List<Track> tracks) {
        this.tracks = tracks;
    }

    /** Before the first reading. */
    static Branches before(Sheet sheet) {
        List<Part> parts = Part.SERVICEABLE;
        double none = 0;
        for (Part part : parts) {
            none += Math.log(1 - part.faultShare());
        }
        List<Track> all = new ArrayList<>();
        all.add(new Track(Set.of(), sheet, none));
        for (int i = 0; i < parts.size(); i++) {
            double one = none + odds(parts.get(i));
            all.add(new Track(Set.of(parts.get(i)), sheet, one));
            for (int j = i + 1; j < parts.size(); j++) {
                if (Prior.weeks(parts.get(i)) || Prior.weeks(parts.get(j))) {
                    double two = one + odds(parts.get(j)) + Math.log(PAIR_WEIGHT);
                    all.add(new Track(Set.of(parts.get(i), parts.get(j)), sheet, two));
                }
            }
        }
        return new Branches(all);
    }

    private static double odds(Part part) {
        double share = part.faultShare();
        return Math.log(share / (1 - share));
    }

    Branches copy() {
        return new Branches(new ArrayList<>(tracks.stream().map(Track::copy).toList()));
    }

    List<Track.Kept> kept() {
        return tracks.stream().map(Track::kept).toList();
    }

    /** The branches that were kept. */
    static Branches of(List<Track.Kept> kept) {
        return new Branches(new ArrayList<>(kept.stream().map(Track::new).toList()));
    }

    int size() {
        return tracks.size();
    }

    Moments moments(int i) {
        return tracks.get(i).moments();
    }

    /** Does the same to each. */
    void all(Consumer<Track> deed) {
        weights = null;
        tracks.forEach(deed);
    }

    /** After a visit: keeps each within its limits, and drops those that it ruled out. */
    void settle() {
        all(Track::settle);
        double floor = best() + LEAST_LOG_WEIGHT;
        tracks.removeIf(track -> track.logWeight() < floor);
        List<Track> pairs = new ArrayList<>(tracks.stream().filter(Track::pair).toList());
        if (pairs.size() > MOST_PAIRS) {
            pairs.sort(Comparator.comparingDouble(Track::logWeight).reversed());
            tracks.removeAll(pairs.subList(MOST_PAIRS, pairs.size()));
        }
    }

    private double best() {
        double best = Double.NEGATIVE_INFINITY;
        for (Track track : tracks) {
            best = Math.max(best, track.logWeight());
        }
        return best;
    }

    /** Weights, adding up to 1; not to be changed. */
    double[] weights() {
        if (weights == null) {
            double best = best();
            double sum = 0;
            double[] shares = new double[tracks.size()];
            for (int i = 0; i < shares.length; i++) {
                shares[i] = Math.exp(tracks.get(i).logWeight() - best);
                sum += shares[i];
            }
            for (int i = 0; i < shares.length; i++) {
                shares[i] /= sum;
            }
            weights = shares;
        }
        return weights;
    }

    /** Mean of the state. */
    double[] mean() {
        double[] shares = weights();
        double[] state = new double[State.SIZE];
        for (int i = 0; i < shares.length; i++) {
            double[] mean = moments(i).mean();
            for (int k = 0; k < state.length; k++) {
                state[k] += shares[i] * mean[k];
            }
        }
        return state;
    }

    /** Chance that a part's size is over a limit. */
    double chanceOver(Part part, double size) {
        double chance = 0;
        for (int i = 0; i < tracks.size(); i++) {
            chance += weights()[i] * tracks.get(i).chanceOver(part, size);
        }
        return chance;
    }

    /** Chance that no part's size is over a limit. */
    double chanceAllUnder(double size) {
        double chance = 0;
        for (int i = 0; i < tracks.size(); i++) {
            double none = 1;
            for (Part part : Part.SERVICEABLE) {
                none *= 1 - tracks.get(i).chanceOver(part, size);
            }
            chance += weights()[i] * none;
        }
        return chance;
    }

    /** One component of the state. */
    Mixture component(int at) {
        int n = tracks.size();
        double[] means = new double[n];
        double[] sds = new double[n];
        for (int i = 0; i < n; i++) {
            means[i] = moments(i).mean(at);
            sds[i] = Math.max(LEAST_SD, moments(i).sd(at));
        }
        return new Mixture(weights().clone(), means, sds);
    }

    /** A reading of a sum with a scatter of its own. */
    Mixture sum(SumModel model, Sum sum, double sd) {
        int n = tracks.size();
        double[] means = new double[n];
        double[] sds = new double[n];
        double[] gradient = new double[State.SIZE];
        double[] with = new double[State.SIZE];
        double most = sum == Sum.AMOUNT ? SumModel.MOST : Double.POSITIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            means[i] = model.value(sum, moments(i).mean(), gradient);
            double variance = moments(i).project(gradient, with) + sd * sd;
            sds[i] = Math.min(most, Math.sqrt(Math.max(LEAST_SD * LEAST_SD, variance)));
        }
        return new Mixture(weights().clone(), means, sds);
    }
}
