package io.github.weirwise.lab.rival;

/** Says what to do next; asked again within a visit after a look or a service. */
@FunctionalInterface
public interface Policy {
    /** The next step, and what is stated with it. */
    Decision next(Visit visit);
}
