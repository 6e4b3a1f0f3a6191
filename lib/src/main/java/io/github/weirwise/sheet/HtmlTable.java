package io.github.weirwise.sheet;

import java.util.List;

/** A table of escaped cells, row by row. */
final class HtmlTable {
    private final StringBuilder text = new StringBuilder("<table>\n");

    HtmlTable head(List<String> cells) {
        return row("th", cells);
    }

    HtmlTable row(List<String> cells) {
        return row("td", cells);
    }

    private HtmlTable row(String tag, List<String> cells) {
        text.append("<tr>");
        for (String cell : cells) {
            text.append('<').append(tag).append("><bdi>");
            text.append(Html.escaped(cell));
            text.append("</bdi></").append(tag).append('>');
        }
        text.append("</tr>\n");
        return this;
    }

    String end() {
        return text + "</table>\n";
    }
}
