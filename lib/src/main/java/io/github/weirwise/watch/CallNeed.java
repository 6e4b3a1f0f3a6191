package io.github.weirwise.watch;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Step;
import io.github.weirwise.unit.FoamState;
import io.github.weirwise.watch.Attention.Matter;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Says whether a piece of advice is worth calling a person for. The adviser has already weighed a reading's value against
 * its effort and a step against waiting; here the way to the tank is weighed: the step must raise the chance of being on
 * target by enough, and nobody is called twice for the same thing within a day.
 */
final class CallNeed {
    /** What endangers floor or animals is repeated sooner. */
    private static final Duration REMIND_OF_DANGER = Duration.ofHours(1);

    private final WatchOptions options;
    private String calledFor = "";
    private Instant calledAt;

    CallNeed(WatchOptions options) {
        this.options = options;
    }

    /** What to call for; empty when the person is better left in peace. */
    Optional<Matter> matter(Advice advice, Instant at) {
        Optional<Matter> matter = matter(advice);
        if (matter.isPresent() && !isRepeated(advice.step(), matter.get(), at)) {
            calledFor = theme(advice.step());
            calledAt = at;
            return matter;
        }
        return Optional.empty();
    }

    private Optional<Matter> matter(Advice advice) {
        Step step = advice.step();
        if (step instanceof Step.MakeSafe) {
            return Optional.of(Matter.SAFETY);
        }
        if (step instanceof Step.Look) {
            return Optional.of(Matter.LOOK);
        }
        boolean pays = !(step instanceof Step.Hold) && gain(advice) >= options.leastGain();
        return pays ? Optional.of(Matter.STEP) : Optional.empty();
    }

    private static double gain(Advice advice) {
        double now = advice.diagnosis().states().getOrDefault(FoamState.ON_TARGET, 0.0);
        return advice.expectation().chanceOnTarget() - now;
    }

    private boolean isRepeated(Step step, Matter matter, Instant at) {
        Duration remind = matter == Matter.SAFETY ? REMIND_OF_DANGER : options.remindAfter();
        return calledFor.equals(theme(step)) && at.isBefore(calledAt.plus(remind));
    }

    /** After a step of the clock the old times mean nothing. */
    void forgetTimes() {
        calledFor = "";
    }

    /** Steps with the same theme are one matter: the size of a move may change from hour to hour. */
    private static String theme(Step step) {
        if (step instanceof Step.MoveWeir move) {
            return move.byMm() > 0 ? "raise" : "lower";
        }
        if (step instanceof Step.Look look) {
            return "look " + look.what();
        }
        if (step instanceof Step.ServicePart service) {
            return "service " + service.part();
        }
        return step.getClass().getSimpleName();
    }
}
