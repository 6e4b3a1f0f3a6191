package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Observation;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.List;
import java.util.Optional;

/**
 * The newest measured amount from which the foam's life is solved, because blind draws of the life would nearly all be wasted.
 *
 * @param evidence the reading
 * @param logAmount logarithm of the amount over the target's while the foam was settled
 * @param exact whether the amount was gathered in settled times, so that solving for it takes the place of weighing it; else it
 *     only says about where to draw
 */
record Anchor(Evidence evidence, double logAmount, boolean exact) {
    /** What a cup that ran over may have held beyond its size, as a logarithm; assumed. */
    private static final double RAN_OVER_LOG = 0.7;

    private static final double SETTLED = 0.5;

    /** The newest amount gathered in settled times; failing that, the newest that says anything. */
    static Optional<Anchor> of(SkimmerUnit unit, List<Evidence> all) {
        Anchor found = null;
        for (Evidence each : all) {
            Observation.CupVolume cup =
                    each.reading().find(Observation.CupVolume.class).orElse(null);
            if (cup == null || each.unsettled() >= SETTLED) {
                continue;
            }
            double share = cup.mlPerDay() / unit.target().skimmateMlPerDay();
            boolean exact = !cup.full() && each.earlier().isEmpty();
            boolean telling = share > 2 * Likelihood.LEAST_SHARE;
            if (telling && (exact || found == null || !found.exact())) {
                double settled = Math.log(share) - Math.log(1 - Belief.UNSETTLED_LOSS * each.unsettled());
                found = new Anchor(each, settled + (cup.full() ? RAN_OVER_LOG : 0), exact);
            }
        }
        return Optional.ofNullable(found);
    }
}
