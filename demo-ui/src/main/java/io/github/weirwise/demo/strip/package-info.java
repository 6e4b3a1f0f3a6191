/**
 * The strip of the last days. An immutable {@link io.github.weirwise.demo.strip.StripData} is drawn by JFreeChart into an
 * image on a background thread, and the event thread only shows the image.
 */
package io.github.weirwise.demo.strip;
