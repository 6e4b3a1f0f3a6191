/**
 * The window: {@link io.github.weirwise.demo.window.MainPanel} is everything in it and needs no display,
 * {@link io.github.weirwise.demo.window.MainWindow} puts it on one.
 */
package io.github.weirwise.demo.window;
