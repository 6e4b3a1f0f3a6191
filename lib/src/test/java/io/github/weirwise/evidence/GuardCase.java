package io.github.weirwise.evidence;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;

/**
 * One line of the guard's grid.
 *
 * @param line the line as written
 * @param danger whether something has to be done; a near miss otherwise
 * @param unit the unit
 * @param start settings before the first entry
 * @param journal what was noted
 * @param now when the advice is asked for
 * @param wanted what a technician would do at once, as the file says it
 */
record GuardCase(
        String line, boolean danger, SkimmerUnit unit, Settings start, Journal journal, Instant now, String wanted) {}
