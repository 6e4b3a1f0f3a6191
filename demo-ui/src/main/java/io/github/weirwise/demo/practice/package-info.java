/**
 * Practising on a hidden fault: {@link io.github.weirwise.demo.practice.PracticeDesk} holds the session and its branches,
 * the pages show one {@link io.github.weirwise.demo.practice.Moment} of it and hand steps back, the trainer's desk is a
 * panel of its own for a second window.
 */
package io.github.weirwise.demo.practice;
