package io.github.weirwise.evidence;

import io.github.weirwise.advice.Clocks;
import io.github.weirwise.practice.Hands;
import io.github.weirwise.report.PhraseBook;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;

/** Command {@code advice}: writes waiting times, worked journals and cases of common practice into docs/reference/advice.md. */
final class AdvicePage {
    private static final PhraseBook BOOK = PhraseBook.ENGLISH_METRIC;

    private AdvicePage() {}

    static void run() throws IOException {
        String text = text();
        page().write(text);
        System.out.print(text);
        List<Vignette> cases = Vignettes.all();
        System.out.println("result: journals=" + Vignettes.worked().size() + " cases=" + cases.size() + " met="
                + cases.stream().filter(each -> each.knownMiss().isEmpty()).count() + longCases());
    }

    /** Prints how the adviser fares in the cases of ninety days. */
    private static String longCases() {
        List<LongVignette> cases = LongVignette.all();
        int met = 0;
        double cost = 0;
        double keeper = 0;
        for (LongVignette each : cases) {
            LongVignette.Verdict verdict = each.judged(Hands.ADVISER, Integer.getInteger("seed", 1));
            met += verdict.broken().isEmpty() ? 1 : 0;
            cost += verdict.costDays();
            keeper += verdict.keeperDays();
            System.out.printf(
                    Locale.ROOT,
                    "%-22s cost %5.1f days, careful keeper %5.1f; %d moves; broken: %s%n",
                    each.name(),
                    verdict.costDays(),
                    verdict.keeperDays(),
                    verdict.moves(),
                    verdict.broken());
        }
        return String.format(
                Locale.ROOT, " longCases=%d longMet=%d longCostOverKeeper=%.2f", cases.size(), met, cost / keeper);
    }

    static DocumentPart page() {
        return new DocumentPart(Path.of("docs", "reference", "advice.md"), "advice");
    }

    /** The part of the page that the code decides. */
    static String text() {
        StringBuilder page = new StringBuilder(clocks(Clocks.COMMON_PRACTICE));
        page.append("\n## Five worked journals\n");
        for (Vignette each : Vignettes.worked()) {
            page.append("\n### ")
                    .append(each.worked().orElseThrow())
                    .append("\n\n")
                    .append(each.seen())
                    .append("\n\n");
            page.append("```text\n")
                    .append(AdviceText.of(each.request(), each.advice()))
                    .append("```\n");
        }
        return page.append(cases()).toString();
    }

    private static String clocks(Clocks clocks) {
        return "## Waiting times\n\nStarting values from common practice, from memory; `Clocks` takes others.\n\n"
                + "| after | wait | because |\n|---|---|---|\n"
                + row(
                        "any move, service or restart, before the flood look",
                        clocks.floodLook(),
                        "foam can rise at once")
                + row("a move, before it is judged", clocks.judge(), "foam follows in hours, a cup needs its interval")
                + row(
                        "washing neck and cup",
                        clocks.afterWashing(),
                        "a clean wall breaks foam until it has a film again")
                + row("feeding, hands in the tank", clocks.afterFeeding(), "fat breaks foam, and passes")
                + row("conditioner, medicine, sealant", clocks.afterAdditive(), "foam is wild, and calms by itself")
                + row("the first start, before any fine tuning", clocks.breakIn(), "clean surfaces make foam fickle");
    }

    private static String row(String after, Duration wait, String because) {
        String words = wait.toHours() >= 48
                ? wait.toDays() + " days"
                : wait.toHours() >= 1 ? wait.toHours() + " h" : wait.toMinutes() + " min";
        return "| " + after + " | " + words + " | " + because + " |\n";
    }

    private static String cases() {
        StringBuilder table = new StringBuilder("\n## Cases of common practice\n\n");
        table.append(
                "What a seasoned technician would do (common practice, from memory), and what the adviser says.\n\n");
        table.append("| seen | would do | would not | the adviser | |\n|---|---|---|---|---|\n");
        for (Vignette each : Vignettes.all()) {
            table.append("| ").append(each.seen());
            table.append(" | ").append(each.wouldDo());
            table.append(" | ").append(each.wouldNotDo());
            table.append(" | ").append(BOOK.say(each.advice().what()));
            table.append(" | ")
                    .append(each.knownMiss().map(why -> "missed: " + why).orElse("as it should"));
            table.append(" |\n");
        }
        return table.toString();
    }
}
