package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * Chooses the next step: the guard by what was seen, then the cheapest step by the belief, then the guard over the answer. Keeps
 * nothing between calls, starts no threads, writes nothing; immutable and thread-safe.
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
     * @param entries what was seen, done and what happened; entries after {@code now} are left out
     * @param now the present
     */
    public Advice advise(SkimmerUnit unit, Settings start, Journal entries, Instant now) {
        // An entry that was sent twice counts once, for the guard's counts of readings as for the belief.
        Journal journal =
                new Journal(entries.until(now).entries().stream().distinct().toList());
        return advise(Noted.of(unit, start, journal), Belief.of(unit, start, journal, now), now);
    }

    /**
     * The next step from what was kept of a journal: the same, to the letter, as from the journal.
     *
     * @param kept what was kept
     * @param now the present, not before the newest entry
     * @throws io.github.weirwise.report.WrongValueException if it is before that
     */
    public Advice advise(KeptState kept, Instant now) {
        return advise(kept.noted(), kept.belief(now), now);
    }

    private Advice advise(Noted noted, Belief belief, Instant now) {
        GuardScene scene = new GuardScene(noted, now, options.looks());
        Optional<Guard> guard = Guard.of(scene);
        if (guard.isPresent()) {
            return new AdviceWriter(belief, scene, options, Optional.empty()).write(guard.get());
        }
        Choice choice = new Choice(belief, scene, options);
        Step chosen = choice.step();
        Step step = new AnswerGuard(scene).checked(chosen, new Forecast(belief).after(chosen));
        return new AdviceWriter(belief, scene, options, choice.rival(step)).write(step);
    }
}
