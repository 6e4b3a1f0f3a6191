package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Diagnosis;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Reason;
import io.github.weirwise.report.Warning;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The next small, safe step with everything a person needs to take it or to disagree.
 *
 * @param step the one thing to do
 * @param what the step in words
 * @param diagnosis what the journal says about the unit
 * @param expectation what should follow
 * @param floodLookAt when to look whether the cup is about to run over, after a move, a service or a restart
 * @param judgeAt when the result can be judged; before that nothing is to be touched
 * @param why the justification, as a tree
 * @param wouldChangeIt results that would prove this advice wrong
 * @param cautions dangers and doubts, gravest first
 * @since 0.1
 */
public record Advice(
        Step step,
        Phrase what,
        Diagnosis diagnosis,
        Expectation expectation,
        Optional<Instant> floodLookAt,
        Instant judgeAt,
        Reason why,
        List<Phrase> wouldChangeIt,
        List<Warning> cautions) {
    /** Copies the lists; rejects nulls. */
    public Advice {
        Objects.requireNonNull(step, "step");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(diagnosis, "diagnosis");
        Objects.requireNonNull(expectation, "expectation");
        Objects.requireNonNull(floodLookAt, "floodLookAt");
        Objects.requireNonNull(judgeAt, "judgeAt");
        Objects.requireNonNull(why, "why");
        wouldChangeIt = List.copyOf(wouldChangeIt);
        cautions = List.copyOf(cautions);
    }
}
