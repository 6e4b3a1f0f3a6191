/**
 * Charts. A {@link io.github.weirwise.demo.chart.Drawing} is an immutable snapshot that JFreeChart draws into an image on
 * a background thread; {@link io.github.weirwise.demo.chart.ChartView} shows the image, and the same snapshot fills the
 * table twin and the words for a screen reader.
 */
package io.github.weirwise.demo.chart;
