package io.github.weirwise.demo.desk;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;

/** Gives the next step; the library's front door, or a stand-in where a test wants a known answer. */
@FunctionalInterface
public interface Adviser {
    /** The next step for a unit that was set as given when its journal began. */
    Advice advise(SkimmerUnit unit, Settings atStart, Journal journal, Instant now);
}
