package io.github.weirwise.sheet;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import java.util.List;
import java.util.stream.Stream;

/** An HTML page in the making: no scripts, nothing loaded from anywhere, and every word that is said on it escaped. */
final class Page {
    private static final String STYLE = """
            @page { size: A4; margin: 11mm } @media screen { body { padding: 8mm } }
            body { font: 10pt/1.35 sans-serif; color: #1f2933; max-width: 190mm; margin: 0 auto }
            h1 { font-size: 16pt; margin: 0 0 1mm } h2 { font-size: 12pt; margin: 5mm 0 1mm; break-after: avoid }
            h3 { font-size: 10pt; margin: 3mm 0 .5mm; break-after: avoid } p, ul, table { margin: 0 0 1.5mm }
            ul, ol { padding-left: 5mm } table { border-collapse: collapse; width: 100% } tr, li li, svg { break-inside: avoid }
            tr:first-child { break-after: avoid }
            td, th { text-align: left; vertical-align: top; padding: .6mm 2mm .6mm 0; border-bottom: .2mm solid #c8ccd2 }
            th { font-weight: normal; color: #595f69 } td, li, h1, p { overflow-wrap: anywhere } td:first-child { overflow-wrap: break-word }
            svg { width: 100%; height: auto } svg text { font-family: sans-serif; font-size: 9px; fill: #1f2933 }
            .lines { border-bottom: .2mm solid #c8ccd2; height: 7mm } .key { border-left: 1mm solid #0072b2; padding-left: 3mm } ol.key { padding-left: 8mm }
            .danger, .late { font-weight: bold } .two { columns: 2; column-gap: 6mm } .history th { white-space: nowrap }
            """;

    private final PhraseBook book;
    private final StringBuilder text = new StringBuilder();

    /**
     * A page with its title.
     *
     * @param style what is added to the usual style
     */
    Page(PhraseBook book, String title, String style) {
        this.book = book;
        text.append("<!DOCTYPE html>\n<html lang=\"")
                .append(Html.escaped(book.locale().toLanguageTag()))
                .append("\">\n<head>\n<meta charset=\"utf-8\"/>\n")
                .append("<meta http-equiv=\"Content-Security-Policy\" ")
                .append("content=\"default-src 'none'; style-src 'unsafe-inline'\"/>\n<title>")
                .append(Html.escaped(title))
                .append("</title>\n<style>\n")
                .append(STYLE)
                .append(style)
                .append("</style>\n</head>\n<body>\n<h1><bdi>")
                .append(Html.escaped(title))
                .append("</bdi></h1>\n");
    }

    PhraseBook book() {
        return book;
    }

    /** A phrase in the page's language. */
    String say(String key, Object... values) {
        return book.say(Phrase.of(key, values));
    }

    /** A heading. */
    Page head(String key) {
        return element("h2", say(key));
    }

    /** An element with escaped content. */
    Page element(String name, String words) {
        text.append(Html.element(name, words));
        return this;
    }

    /** Markup of our own as it stands. */
    Page raw(String markup) {
        text.append(markup);
        return this;
    }

    /**
     * A table.
     *
     * @param heads headings in words; none for a table without
     */
    Page table(List<String> heads, Stream<List<String>> rows) {
        text.append("<table>\n");
        if (!heads.isEmpty()) {
            cells("<tr>", "th", "th", heads);
        }
        rows.forEach(row -> cells("<tr>", "td", "td", row));
        return raw("</table>\n");
    }

    /** Phrases without values. */
    List<String> all(String... keys) {
        return Stream.of(keys).map(this::say).toList();
    }

    /** A row of a table whose first cell names it. */
    Page named(String name, String value) {
        return cells("<tr>", "th", "td", List.of(name, value));
    }

    /** A row of a table. */
    Page cells(String opened, String first, String others, List<String> cells) {
        text.append(opened);
        for (int i = 0; i < cells.size(); i++) {
            String tag = i == 0 ? first : others;
            text.append('<').append(tag).append("><bdi>").append(Html.escaped(cells.get(i)));
            text.append("</bdi></").append(tag).append('>');
        }
        text.append("</tr>\n");
        return this;
    }

    /** The whole page, to be written in UTF-8. */
    String end() {
        return text.append("</body>\n</html>\n").toString();
    }
}
