package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Part;
import io.github.weirwise.skimmer.Settings;
import io.github.weirwise.skimmer.SkimmerUnit;
import java.util.function.ToDoubleFunction;

/** Everything that the likelihood of an observation may hang on, for one possibility at one time. */
record View(
        Outlook outlook,
        Unknowns unknowns,
        Influence influence,
        Settings settings,
        SkimmerUnit unit,
        ToDoubleFunction<Part> faultSize) {}
