package io.github.weirwise.diagnosis;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * How much of a cup's interval belongs to the unit as it stands now: after a change the foam goes over to its new amount within
 * hours (a first-order lag), so the amount over the interval is a mean of what came before and after.
 */
final class Interval {
    /** Hours in which two thirds of a change have come through; common practice is that foam answers within hours. */
    private static final double LAG_HOURS = 4;
    /** Doubt about an amount that is all from before a service or a change of air or flow. */
    private static final double UNKNOWN_CHANGE_SD = 0.9;
    /** Doubt about one that is all from before a move, besides that about the slope. */
    private static final double MOVE_SD = 0.35;

    /** Foam stays away for some of the time for which it cannot be judged. */
    private static final double AWAY_SHARE = 0.7;
    /** How long it really stays away is known within this share of what it does to the cup. */
    private static final double AWAY_DOUBT = 0.6;
    /** A cup is not taken to have missed more than this leaves. */
    private static final double LEAST_FOAM = 0.2;

    /** Everything of the interval belongs to now. */
    static final Interval NOW = new Interval(new double[0], new double[0], 0, 0);

    /** Part of the amount that came at earlier weirs, and how far those stood over today's, mm. */
    private final double[] shares;

    private final double[] overMm;
    private final double doubtSd;
    private final double awayLog;

    private Interval(double[] shares, double[] overMm, double doubtSd, double awayLog) {
        this.shares = shares;
        this.overMm = overMm;
        this.doubtSd = doubtSd;
        this.awayLog = awayLog;
    }

    /** Something done to the unit: a move by so many mm, or 0 for a service or another change; foam is away meanwhile. */
    record Change(Instant at, double byMm, double foamAwayHours) {}

    static Interval of(List<Change> changes, Instant end, double hours) {
        List<Double> shares = new ArrayList<>();
        List<Double> over = new ArrayList<>();
        double doubt = 0;
        double sumMm = 0;
        double away = 0;
        for (int i = changes.size() - 1; i >= 0; i--) {
            Change change = changes.get(i);
            double old = oldShare(change, end, hours);
            away += awayShare(change, end, hours);
            if (old < 0.005) {
                break;
            }
            if (change.byMm() != 0) {
                if (!shares.isEmpty()) {
                    int later = shares.size() - 1;
                    shares.set(later, Math.max(0, shares.get(later) - old));
                }
                sumMm += change.byMm();
                shares.add(old);
                over.add(-sumMm);
                doubt += square(MOVE_SD * old);
            } else {
                doubt += square(UNKNOWN_CHANGE_SD * old);
            }
        }
        if (shares.isEmpty() && doubt == 0 && away == 0) {
            return NOW;
        }
        double awayLog = Math.log(Math.max(LEAST_FOAM, 1 - away));
        doubt += square(AWAY_DOUBT * awayLog);
        return new Interval(
                shares.stream().mapToDouble(Double::doubleValue).toArray(),
                over.stream().mapToDouble(Double::doubleValue).toArray(),
                Math.sqrt(doubt),
                awayLog);
    }

    /** Share of the interval in which foam stayed away after a service. */
    private static double awayShare(Change change, Instant end, double hours) {
        double since = Duration.between(change.at(), end).toSeconds() / 3600.0;
        double until = since - AWAY_SHARE * change.foamAwayHours();
        return Math.max(0, Math.min(hours, since) - Math.max(0, until)) / hours;
    }

    /** Share of the interval that still shows what was before a change. */
    private static double oldShare(Change change, Instant end, double hours) {
        double lag = LAG_HOURS + change.foamAwayHours() / 2;
        double since = Duration.between(change.at(), end).toSeconds() / 3600.0;
        double after = Math.min(hours, since);
        double gone = Math.max(0, since - hours);
        double mixed = lag * Math.exp(-gone / lag) * (1 - Math.exp(-after / lag));
        return Math.max(0, Math.min(1, (hours - after + mixed) / hours));
    }

    private static double square(double x) {
        return x * x;
    }

    double doubtSd() {
        return doubtSd;
    }

    /** What the earlier weirs add to the logarithm of the amount; the gradient to the slope's logarithm is added to. */
    double shift(double slopePerMm, double[] gradient) {
        if (shares.length == 0) {
            return awayLog;
        }
        double now = 1;
        double sum = 0;
        double bySlope = 0;
        for (int i = 0; i < shares.length; i++) {
            double log = Math.max(-6, Math.min(6, slopePerMm * overMm[i]));
            double part = shares[i] * Math.exp(log);
            now -= shares[i];
            sum += part;
            bySlope += part * log;
        }
        double all = sum + Math.max(0.001, now);
        gradient[State.SLOPE] += bySlope / all;
        return awayLog + Math.log(all);
    }
}
