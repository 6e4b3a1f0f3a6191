package io.github.weirwise.lab.rival;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;

/**
 * What a policy is shown.
 *
 * @param sheet data of the unit
 * @param start settings before the first entry
 * @param journal what was read, done and noted so far
 * @param now the present
 */
public record Visit(SkimmerUnit sheet, Settings start, Journal journal, Instant now) {}
