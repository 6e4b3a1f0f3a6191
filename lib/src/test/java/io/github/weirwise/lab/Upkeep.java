package io.github.weirwise.lab;

import io.github.weirwise.unit.Part;

/**
 * A part that somebody cleaned unasked.
 *
 * @param hour when
 * @param part which
 * @param noted whether the journal has it
 */
record Upkeep(int hour, Part part, boolean noted) {}
