package io.github.weirwise.advice;

import java.util.Optional;

/**
 * The guard below the belief: what was seen and noted asks for a step of its own, and no probability can overrule it. A pure
 * function of the scene; never throws.
 *
 * @param rule the rule that applies, the most urgent one
 * @param step what it asks for
 */
record Guard(GuardRule rule, Step step) {

    /** The most urgent rule that applies, if any does. */
    static Optional<Guard> of(GuardScene scene) {
        for (GuardRule rule : GuardRule.values()) {
            Optional<Step> step = rule.step(scene);
            if (step.isPresent()) {
                return Optional.of(new Guard(rule, step.get()));
            }
        }
        return Optional.empty();
    }
}
