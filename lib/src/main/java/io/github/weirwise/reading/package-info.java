/**
 * Floor 4: what a person or a sensor can observe, and the journal.
 *
 * <p>A {@link io.github.weirwise.reading.Reading} bundles the {@link io.github.weirwise.reading.Observation}s of one look
 * at the unit; anything may be missing. A {@link io.github.weirwise.reading.Journal} is the time-ordered list of
 * readings, actions, services, happenings, notes and advice given.
 */
package io.github.weirwise.reading;
