package io.github.weirwise.practice;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A prediction beside what came, by the tank's true course.
 *
 * @param atHours when the act was done
 * @param act what was done
 * @param prediction what was expected
 * @param judged whether enough time passed before the next act, or the end, to tell
 * @param levelChangeMm how far the level went
 * @param factor amount afterwards against before, 0 or more
 * @param saidMlPerDay amount that was said to come
 */
public record PredictionResult(
        double atHours,
        Act act,
        Prediction prediction,
        boolean judged,
        double levelChangeMm,
        double factor,
        double saidMlPerDay) {
    private static final double DAY = 24;
    private static final double LEAST_HOURS = 3;
    private static final double FOAM_HOURS = 6;
    private static final double LEAST_ML_PER_DAY = 1;

    /** Rejects nulls. */
    public PredictionResult {
        Objects.requireNonNull(act, "act");
        Objects.requireNonNull(prediction, "prediction");
    }

    /** The results of all predictions of a session so far, in order. */
    public static List<PredictionResult> of(PracticeSession session) {
        List<LogLine> acts = session.log().stream()
                .filter(line -> line.step() instanceof SessionStep.Do)
                .toList();
        List<PredictionResult> results = new ArrayList<>();
        for (int i = 0; i < acts.size(); i++) {
            double next = i + 1 < acts.size() ? acts.get(i + 1).fromHours() : session.hours();
            results.add(of(session.track(), acts.get(i), next));
        }
        return results;
    }

    private static PredictionResult of(List<TrackPoint> track, LogLine line, double next) {
        SessionStep.Do done = (SessionStep.Do) line.step();
        double until = Math.min(line.untilHours() + DAY, next);
        double foamFrom = line.untilHours() + Math.min(FOAM_HOURS, 0.5 * (until - line.untilHours()));
        double before = Course.amountBetween(track, line.fromHours() - DAY, line.fromHours());
        double after = Course.amountBetween(track, foamFrom, until);
        double level = Course.at(track, until).submergenceMm()
                - Course.at(track, line.fromHours()).submergenceMm();
        return new PredictionResult(
                line.fromHours(),
                done.act(),
                done.prediction(),
                until - line.untilHours() >= LEAST_HOURS,
                level,
                Math.max(LEAST_ML_PER_DAY, after) / Math.max(LEAST_ML_PER_DAY, before),
                done.prediction().factor() * Math.max(LEAST_ML_PER_DAY, before));
    }

    /** Where the level went. */
    public Trend level() {
        return Trend.ofLevel(levelChangeMm);
    }

    /** What became of the foam. */
    public Trend foam() {
        return Trend.ofFactor(factor);
    }

    /** Whether the foam did what was said. */
    public boolean hit() {
        return foam() == prediction.foam();
    }

    /** One line why it came so. */
    public Phrase why() {
        Quantity level = Quantity.of(levelChangeMm, Unit.MILLIMETRE);
        Quantity times = Quantity.of(factor, Unit.PLAIN);
        boolean vain = act.kind() == Act.Kind.SERVICE && level() == Trend.SAME && foam() == Trend.SAME;
        return vain
                ? Phrase.of("practice.why.serviceInVain", level, times)
                : Phrase.of("practice.why." + act.kind(), level, times);
    }
}
