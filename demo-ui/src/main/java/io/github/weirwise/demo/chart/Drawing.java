package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Words;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** What a chart shows: a value that can be drawn on any thread, told in words, and listed as a table. */
public interface Drawing {
    /** Draws into an area. */
    void draw(Graphics2D graphics, Rectangle2D area, Dress dress, Font font);

    /** What the chart shows, in a sentence or two. */
    String describe(Words words);

    /** Headings of the table twin. */
    List<String> columns(Words words);

    /** Rows of the table twin, one for each point of the main series. */
    List<List<String>> rows(Words words);
}
