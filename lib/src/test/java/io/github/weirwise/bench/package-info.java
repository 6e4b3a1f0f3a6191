/**
 * Benchmarks by the Java Microbenchmark Harness; compiled only with the profile {@code bench}. The command {@code bench} runs
 * them beside the same equations in other languages. All of them are timed call by call after a fixed number of calls, not
 * of seconds, so that a busy machine cannot cut the warm-up short.
 */
package io.github.weirwise.bench;
