package io.github.weirwise.lab.score;

import io.github.weirwise.score.Bell;
import io.github.weirwise.score.JournalScore;
import io.github.weirwise.score.Scored;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** The page of a scored journal, HTML that stands by itself. */
record ScorePage(JournalScore score) {
    String html() {
        List<Scored> amounts = score.amounts();
        List<Scored> levels = score.levels();
        StringBuilder page = new StringBuilder("""
                <!DOCTYPE html>
                <html lang="en"><head><meta charset="utf-8"><title>Forecasts against readings</title>
                <style>body{font:14px/1.5 sans-serif;max-width:60rem;margin:2rem auto;padding:0 1rem}
                table{border-collapse:collapse}td,th{padding:.2rem .7rem;border-bottom:1px solid #ddd;text-align:right}
                td:first-child,th:first-child{text-align:left}svg{width:100%}</style></head><body>
                <h1>Forecasts against readings</h1>
                <p>Before each reading the library was asked, with nothing but the entries before it, what the unit does at that moment. Bars are
                the stated 80 % ranges, widened by the usual scatter of a reading; dots are what was read, hollow and red where the range did not
                hold. In a fair forecast one dot in five is hollow. A forecast that is no better than &quot;as last time&quot; is of no use.</p>
                """);
        if (amounts.isEmpty()) {
            return page.append("<p>Too few readings of the cup: at least two are needed.</p></body></html>\n")
                    .toString();
        }
        page.append(table(amounts, JournalScore.AMOUNT_WIDTH, "Amount"));
        page.append(String.format(
                Locale.ROOT,
                "<p>Chance to be in band, mean squared error (0 is best): library %.3f, as last time %.3f, mean of the last five %.3f.%s</p>%n",
                JournalScore.brier(amounts, Scored::forecast),
                JournalScore.brier(amounts, Scored::asLastTime),
                JournalScore.brier(amounts, Scored::average),
                score.fullCups() == 0 ? "" : " Full cups left out: " + score.fullCups() + "."));
        page.append(ScorePlot.ofAmounts(amounts));
        if (!levels.isEmpty()) {
            page.append(table(levels, JournalScore.LEVEL_WIDTH_MM, "Level"));
            page.append(ScorePlot.ofLevels(levels, score.unit().target().submergenceMm()));
        }
        return page.append("</body></html>\n").toString();
    }

    private static String table(List<Scored> all, double width, String what) {
        return String.format(
                Locale.ROOT,
                """
                <h2>%s: %d forecasts</h2>
                <table><tr><th>forecast</th><th>80 %% range holds</th><th>log score, more is better</th></tr>
                <tr><td>the library</td><td>%.2f</td><td>%.3f</td></tr>
                <tr><td>as last time</td><td>%.2f</td><td>%.3f</td></tr>
                <tr><td>mean of the last five</td><td>%.2f</td><td>%.3f</td></tr></table>
                """,
                what,
                all.size(),
                JournalScore.coverage(all),
                JournalScore.logScore(all, Scored::forecast, width),
                held(all, Scored::asLastTime),
                JournalScore.logScore(all, Scored::asLastTime, width),
                held(all, Scored::average),
                JournalScore.logScore(all, Scored::average, width));
    }

    private static double held(List<Scored> all, Function<Scored, Bell> whose) {
        return all.stream()
                .mapToDouble(each -> whose.apply(each).holds(each.came()) ? 1 : 0)
                .average()
                .orElse(Double.NaN);
    }
}
