/**
 * The demo's front: {@link io.github.weirwise.demo.Options} says what is wanted, {@link io.github.weirwise.demo.Demo}
 * starts it and turns what went wrong into an exit code.
 *
 * <p>{@code tank} is the invented tank, {@code text} the tuning run as text, {@code desk} what the window works on,
 * {@code picture} and {@code strip} what is painted, {@code panel} what is pressed, {@code look} colours and words.
 */
package io.github.weirwise.demo;
