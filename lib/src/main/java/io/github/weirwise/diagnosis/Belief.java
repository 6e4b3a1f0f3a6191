package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * What may be the matter and what the unit may be like, after a journal: weighted possibilities over causes, pairs of
 * causes, their sizes and onsets, and the unit's own unknowns.
 *
 * <p>Made anew from the whole journal each time, so a caller keeps nothing; the same journal and seed give the same
 * belief. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Belief {
    /** Share of the amount that a foam which has not settled fails to bring; assumed. */
    static final double UNSETTLED_LOSS = 0.7;

    private final Foresight foresight;
    private final Timeline timeline;
    private final List<Evidence> evidence;
    private final List<Possibility> all;
    private final double[] weights;
    private final double[][] observationLogs;
    private final List<Observation> observations;
    private final boolean pooled;

    private Belief(
            Foresight foresight,
            Timeline timeline,
            List<Evidence> evidence,
            List<Observation> observations,
            List<Possibility> all,
            double[][] observationLogs,
            boolean pooled) {
        this.pooled = pooled;
        this.foresight = foresight;
        this.timeline = timeline;
        this.evidence = evidence;
        this.observations = observations;
        this.all = List.copyOf(all);
        this.weights = all.stream().mapToDouble(Possibility::weight).toArray();
        this.observationLogs = observationLogs;
    }

    private static Belief of(
            Foresight foresight,
            Timeline timeline,
            List<Evidence> evidence,
            List<Observation> observations,
            Ensemble ensemble) {
        double[] weights = ensemble.weights();
        List<Possibility> all = new ArrayList<>(weights.length);
        List<double[]> logs = new ArrayList<>(weights.length);
        for (int i = 0; i < weights.length; ) {
            Member member = ensemble.members().get(i);
            double weight = 0;
            // A walk that stays where it is counts the same member again.
            while (i < weights.length && ensemble.members().get(i) == member) {
                weight += weights[i++];
            }
            all.add(member.possibility().withWeight(weight));
            logs.add(member.observationLogs());
        }
        return new Belief(foresight, timeline, evidence, observations, all, logs.toArray(double[][]::new), false);
    }

    /**
     * Beliefs after the same journal, formed from different draws, taken together; each counts alike.
     *
     * @param beliefs at least one
     */
    public static Belief pooled(List<Belief> beliefs) {
        Belief first = beliefs.get(0);
        List<Possibility> all = new ArrayList<>();
        List<double[]> logs = new ArrayList<>();
        for (Belief each : beliefs) {
            each.all.forEach(one -> all.add(one.withWeight(one.weight() / beliefs.size())));
            logs.addAll(Arrays.asList(each.observationLogs));
        }
        return new Belief(
                first.foresight,
                first.timeline,
                first.evidence,
                first.observations,
                all,
                logs.toArray(double[][]::new),
                beliefs.size() > 1);
    }

    /**
     * The belief after a journal.
     *
     * @param unit the unit's nominal data
     * @param start settings as they were before the first entry
     * @param journal what is known; entries after {@code now} are left out
     * @param now the present
     * @param options how many possibilities and which seed
     */
    public static Belief of(SkimmerUnit unit, Settings start, Journal journal, Instant now, BeliefOptions options) {
        Foresight foresight = new Foresight(unit, start.weirCrestMm());
        Timeline timeline = new Timeline(unit, start, journal, now);
        List<Evidence> evidence = Evidence.of(timeline);
        Anchor anchor = Anchor.of(unit, evidence).orElse(null);
        DirectSigns signs = new DirectSigns(timeline);
        CausePrior prior = new CausePrior(timeline, signs);
        Sampler sampler = new Sampler(foresight, timeline, prior, signs, anchor);
        List<Observation> observations = evidence.stream()
                .flatMap(each -> each.reading().observations().stream())
                .toList();
        Evidence solved = anchor != null && anchor.exact() ? anchor.evidence() : null;
        Weighing weighing = new Weighing(timeline, evidence, solved, observations.size());
        Ensemble ensemble = new Ensemble(
                (point, least) -> member(sampler, weighing, point, least),
                new SplittableRandom(options.seed()),
                options.possibilities());
        return of(foresight, timeline, evidence, observations, ensemble);
    }

    /** The member at a point, or null as soon as it is plain that its logarithm of the weight stays below the least. */
    private static Member member(Sampler sampler, Weighing weighing, double[] point, double least) {
        Weighing.Weighed weighed = weighing.weigh(sampler.at(point), least);
        return weighed == null ? null : new Member(point, weighed.possibility(), weighed.log(), weighed.logs());
    }

    /** All possibilities with their weights. */
    public List<Possibility> possibilities() {
        return all;
    }

    /**
     * Equally weighted possibilities drawn by weight (systematic resampling), for looking ahead cheaply.
     *
     * @param count how many, at least 1
     */
    public List<Possibility> resampled(int count) {
        return Resampling.pick(all, weights, count, 0.5).stream()
                .map(each -> each.withWeight(1.0 / count))
                .toList();
    }

    /** Number of equally weighted possibilities that would say as much; small when few explain the readings. */
    public double effectiveCount() {
        return Ensemble.effectiveCount(weights);
    }

    /** Where the weir's mark stands now. */
    public double crestMm() {
        return timeline.current().settings().weirCrestMm();
    }

    /** The settings now, as the journal says. */
    public Settings settings() {
        return timeline.current().settings();
    }

    /** The unit. */
    public SkimmerUnit unit() {
        return foresight.unit();
    }

    /** What it says, in words and numbers. */
    public Diagnosis diagnosis() {
        return new Findings(this).diagnosis();
    }

    /** Whether it was taken together from several beliefs, so that no single one's luck weighs much. */
    boolean pooled() {
        return pooled;
    }

    Timeline timeline() {
        return timeline;
    }

    List<Evidence> evidence() {
        return evidence;
    }

    List<Observation> observations() {
        return observations;
    }

    /** Logarithm of the likelihood of an observation (by index) under a possibility (by index). */
    double observationLog(int possibility, int observation) {
        return observationLogs[possibility][observation];
    }
}
