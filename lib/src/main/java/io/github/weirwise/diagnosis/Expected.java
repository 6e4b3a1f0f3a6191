package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Observation;

/**
 * What one possibility expects to be seen now, and how likely it makes any observation.
 *
 * @since 0.1
 */
public final class Expected {
    private final View view;

    Expected(View view) {
        this.view = view;
    }

    /** Levels, amount and the rest. */
    public Outlook outlook() {
        return view.outlook();
    }

    /** Logarithm of the likelihood of one observation made now, given the possibility. */
    public double logLikelihood(Observation observation) {
        return Likelihood.log(observation, view, 0);
    }
}
