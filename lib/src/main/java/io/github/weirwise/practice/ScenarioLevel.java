package io.github.weirwise.practice;

import io.github.weirwise.report.Phrase;

/**
 * How far a trainee should be; each level has its usual guidance.
 */
public enum ScenarioLevel {
    /** How level, funnel and foam hang together; one thing at a time. */
    FIRST(Guidance.FULL),
    /** One hidden thing to find out. */
    SECOND(Guidance.ON_REQUEST),
    /** Things that mislead, several at once, or nothing at all. */
    THIRD(Guidance.NONE);

    private final Guidance guidance;

    ScenarioLevel(Guidance guidance) {
        this.guidance = guidance;
    }

    /** The level in words. */
    public Phrase words() {
        return Phrase.of("practice.level." + name());
    }
}
