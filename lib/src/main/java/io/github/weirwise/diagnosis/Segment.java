package io.github.weirwise.diagnosis;

import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SteadyInputs;

/** A stretch of time with unchanged settings: from when (hours, now is 0), how it was set, and the clean model inputs. */
record Segment(double fromHours, Settings settings, SteadyInputs clean) {}
