package io.github.weirwise.setup;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Warning;

/**
 * One step of the first filling and start.
 *
 * @param order its place, from 1
 * @param task what kind of step it is
 * @param figure the figure for this unit
 * @param todo what to do, with the figure and others in words
 * @param see what to see when it is done
 * @param ifNot what to do if that is not to be seen
 * @param caution what to mind
 */
public record StartUpStep(
        int order, StartUpTask task, Quantity figure, Phrase todo, Phrase see, Phrase ifNot, Warning caution) {}
