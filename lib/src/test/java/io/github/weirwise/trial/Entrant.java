package io.github.weirwise.trial;

import java.util.function.Function;

/** A named policy in the trial. */
record Entrant(String name, Function<HiddenTank, Policy> forTank) {}
