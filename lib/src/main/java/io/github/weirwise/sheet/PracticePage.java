package io.github.weirwise.sheet;

import io.github.weirwise.report.PhraseBook;

/** Head and style that the pages about practice share: no scripts, nothing loaded from anywhere. */
final class PracticePage {
    private static final String STYLE = """
            @page { size: A4; margin: 11mm } @media screen { body { padding: 8mm } }
            body { font: 10pt/1.35 sans-serif; color: #1f2933; max-width: 190mm; margin: 0 auto }
            h1 { font-size: 16pt; margin: 0 0 1mm } h2 { font-size: 12pt; margin: 5mm 0 1mm; break-after: avoid }
            h3 { font-size: 10pt; margin: 3mm 0 .5mm; break-after: avoid } p, ul, table { margin: 0 0 1.5mm }
            ul, ol { padding-left: 5mm } table { border-collapse: collapse; width: 100% } tr, li, svg { break-inside: avoid }
            td, th { text-align: left; vertical-align: top; padding: .6mm 2mm .6mm 0; border-bottom: .2mm solid #c8ccd2 }
            th { font-weight: normal; color: #595f69 } td, li, h1, p { overflow-wrap: break-word }
            svg { width: 100%; height: auto } svg text { font: 9px sans-serif; fill: #1f2933 }
            .lines { border-bottom: .2mm solid #c8ccd2; height: 7mm } .key { border-left: 1mm solid #0072b2; padding-left: 3mm }
            """;

    private PracticePage() {}

    static StringBuilder begin(PhraseBook book, String title) {
        return new StringBuilder("<!DOCTYPE html>\n<html lang=\"")
                .append(Html.escaped(book.locale().toLanguageTag()))
                .append("\">\n<head>\n<meta charset=\"utf-8\"/>\n")
                .append("<meta http-equiv=\"Content-Security-Policy\" ")
                .append("content=\"default-src 'none'; style-src 'unsafe-inline'\"/>\n<title>")
                .append(Html.escaped(title))
                .append("</title>\n<style>\n")
                .append(STYLE)
                .append("</style>\n</head>\n<body>\n<h1><bdi>")
                .append(Html.escaped(title))
                .append("</bdi></h1>\n");
    }

    static String end(StringBuilder page) {
        return page.append("</body>\n</html>\n").toString();
    }
}
