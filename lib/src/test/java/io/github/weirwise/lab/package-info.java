/**
 * The laboratory: hidden tanks of several truths on which policies are played, and what that costs. Numbers about people, events
 * and noise stand in {@link io.github.weirwise.lab.Habits}, prices in {@link io.github.weirwise.lab.Cost}.
 */
package io.github.weirwise.lab;
