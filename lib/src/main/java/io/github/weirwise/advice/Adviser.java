package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.report.Times;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Chooses the next step. Keeps nothing between calls, starts no threads, writes nothing; immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Adviser {
    private final AdviserOptions options;

    /** An adviser with the given options. */
    public Adviser(AdviserOptions options) {
        this.options = Objects.requireNonNull(options, "options");
    }

    /**
     * The next small, safe step for a unit.
     *
     * @param unit nominal data of the unit
     * @param start settings as they were before the first entry of the journal
     * @param journal what was seen, done and what happened; entries after {@code now} are left out
     * @param now the present
     */
    public Advice advise(SkimmerUnit unit, Settings start, Journal journal, Instant now) {
        GuardScene scene = GuardScene.of(unit, start, journal, now, options.looks());
        Optional<Guard> guard = Guard.of(scene);
        Belief belief = Belief.of(unit, start, journal, now, options.belief());
        Thought thought = think(belief, journal, now);
        if (guard.isPresent()) {
            return thought.writer(scene).write(guard.get());
        }
        if (options.secondThoughts() > 0 && touches(thought.step())) {
            List<Belief> beliefs = new ArrayList<>(List.of(belief));
            for (int again = 1; again <= options.secondThoughts(); again++) {
                beliefs.add(
                        Belief.of(unit, start, journal, now, options.belief().again(again)));
            }
            thought = think(Belief.pooled(beliefs), journal, now);
        }
        Expectation expectation = new Forecast(thought.situation()).after(thought.step());
        return thought.writer(scene).write(new AnswerGuard(scene).checked(thought.step(), expectation));
    }

    private record Thought(Situation situation, StepValues values, Step step) {
        AdviceWriter writer(GuardScene scene) {
            return new AdviceWriter(situation, values, scene);
        }
    }

    private Thought think(Belief belief, Journal journal, Instant now) {
        Situation situation = Situation.of(belief, journal, now, options);
        StepValues values = new StepValues(situation);
        return new Thought(situation, values, choose(situation, values));
    }

    private static boolean touches(Step step) {
        return step instanceof Step.MoveWeir || step instanceof Step.ServicePart;
    }

    private Step choose(Situation situation, StepValues values) {
        WaitGate gate = new WaitGate(situation);
        Optional<Step.Hold> hold = gate.hold();
        if (hold.isPresent()) {
            return hold.get();
        }
        if (!gate.judgeable()) {
            return new Step.Look(LookKind.CUP_VOLUME);
        }
        Step step = new StepChoice(situation, values).step();
        if (touches(step) && !seenBad(situation, step) && new Persistence(situation).firstSign()) {
            return new Step.Hold(tomorrow(situation), HoldReason.SEEN_ONCE);
        }
        return step;
    }

    /** A part that is plainly bad need not be seen bad twice. */
    private static boolean seenBad(Situation situation, Step step) {
        return step instanceof Step.ServicePart service
                && new Looked(situation)
                        .found(service.part())
                        .filter(Finding.BAD::equals)
                        .isPresent();
    }

    private static Instant tomorrow(Situation situation) {
        return Times.later(situation.now(), situation.options().clocks().judge());
    }
}
