package io.github.weirwise.practice;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import java.util.Objects;
import java.util.Optional;

/**
 * Who practises and how.
 *
 * @param trainee name or number of the trainee, at most 100 characters; may be empty
 * @param seed seed of everything random: errors of reading and the load's noise
 * @param guidance how much help there is; empty for the scenario's own
 */
public record SessionOptions(String trainee, int seed, Optional<Guidance> guidance) {
    private static final Limit TRAINEE_COUNT = Limit.of("trainee", 0, 100, Unit.COUNT, "practice.try.aShortName");

    /** Nobody in particular, seed 1, the scenario's own guidance. */
    public static final SessionOptions DEFAULT = new SessionOptions("", 1, Optional.empty());

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if the name is too long
     */
    public SessionOptions {
        TRAINEE_COUNT.check(trainee.length());
        Objects.requireNonNull(guidance, "guidance");
    }

    /** The same for another trainee. */
    public SessionOptions withTrainee(String other) {
        return new SessionOptions(other, seed, guidance);
    }

    /** The same with another seed. */
    public SessionOptions withSeed(int other) {
        return new SessionOptions(trainee, other, guidance);
    }

    /** The same with a guidance of its own. */
    public SessionOptions withGuidance(Guidance other) {
        return new SessionOptions(trainee, seed, Optional.of(other));
    }
}
