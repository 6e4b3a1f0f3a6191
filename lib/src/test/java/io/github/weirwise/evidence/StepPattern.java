package io.github.weirwise.evidence;

import io.github.weirwise.advice.Step;
import java.util.Set;

/**
 * A sort of step, as a case of common practice allows or forbids it.
 *
 * @param step {@code raise}, {@code lower}, {@code service}, {@code look}, {@code hold} or {@code makeSafe}
 * @param words parts serviced, readings taken or reasons to hold, by their names; empty for any
 * @param fromMm smallest size of a move
 * @param toMm largest size of a move
 */
record StepPattern(String step, Set<String> words, double fromMm, double toMm) {
    private static final Set<String> KNOWN = Set.of("raise", "lower", "service", "look", "hold", "makeSafe");

    StepPattern {
        if (!KNOWN.contains(step)) {
            throw new IllegalArgumentException("'" + step + "' is no step, give one of " + KNOWN);
        }
        words = Set.copyOf(words);
    }

    /** Whether a step is of this sort. */
    boolean fits(Step taken) {
        if (taken instanceof Step.MoveWeir move) {
            double size = Math.abs(move.byMm());
            return step.equals(move.byMm() > 0 ? "raise" : "lower") && size >= fromMm && size <= toMm;
        }
        if (taken instanceof Step.ServicePart service) {
            return named("service", service.part());
        }
        if (taken instanceof Step.Look look) {
            return named("look", look.what());
        }
        if (taken instanceof Step.Hold hold) {
            return named("hold", hold.reason());
        }
        return named("makeSafe", ((Step.MakeSafe) taken).how());
    }

    private boolean named(String kind, Enum<?> word) {
        return step.equals(kind) && (words.isEmpty() || words.contains(word.name()));
    }
}
