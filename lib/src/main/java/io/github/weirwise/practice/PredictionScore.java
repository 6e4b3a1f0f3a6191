package io.github.weirwise.practice;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.util.List;

/**
 * How good and how honest a trainee's predictions were.
 *
 * @param judged how many could be judged
 * @param hits how many were right about the foam
 * @param meanSure mean stated chance of being right
 * @param meanFoldOff by what factor the predicted amount was off, geometric mean, 1 best
 */
public record PredictionScore(int judged, int hits, double meanSure, double meanFoldOff) {
    /** How the stated chances compare with the hits. */
    public enum Confidence {
        /** Too few to tell. */
        TOO_FEW,
        /** Surer than right. */
        OVER,
        /** About as sure as right. */
        FAIR,
        /** Right more often than sure. */
        UNDER
    }

    private static final int FEW = 3;
    private static final double GAP = 0.15;

    /** The score of some results; those that cannot be judged are left out. */
    public static PredictionScore of(List<PredictionResult> results) {
        List<PredictionResult> judged =
                results.stream().filter(PredictionResult::judged).toList();
        int hits = (int) judged.stream().filter(PredictionResult::hit).count();
        double sure = judged.stream()
                .mapToDouble(each -> each.prediction().sure())
                .average()
                .orElse(0);
        double log = judged.stream()
                .mapToDouble(each -> Math.abs(Math.log(each.prediction().factor() / each.factor())))
                .average()
                .orElse(0);
        return new PredictionScore(judged.size(), hits, sure, Math.exp(log));
    }

    /** Over- or under-confident, once three could be judged. */
    public Confidence confidence() {
        if (judged < FEW) {
            return Confidence.TOO_FEW;
        }
        double gap = meanSure - (double) hits / judged;
        return gap > GAP ? Confidence.OVER : gap < -GAP ? Confidence.UNDER : Confidence.FAIR;
    }

    /** The score as a sentence. */
    public Phrase words() {
        return judged == 0
                ? Phrase.of("practice.score.none")
                : Phrase.of(
                        "practice.score." + confidence(),
                        hits,
                        judged,
                        Quantity.of(meanSure, Unit.SHARE),
                        Quantity.of(meanFoldOff, Unit.PLAIN));
    }
}
