package io.github.weirwise.evidence;

import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.setup.Fit;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.setup.Installation;
import io.github.weirwise.setup.LanternQuaySites;
import io.github.weirwise.setup.StartUpPlan;
import io.github.weirwise.sheet.SetupText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Command {@code setup}: prints the fit check of the three invented installations and the start-up plan of the one that
 * fits, and writes docs/reference/setup.md from them.
 */
final class Setup {
    private static final PhraseBook ENGLISH = PhraseBook.ENGLISH_METRIC;
    private static final String HEAD = """
            # Does it fit, and the first start

            Written by the command `setup` (see [commands](../commands.md)); the three installations are invented.
            `FitCheck.of(installation)` answers every question with a number, its limit, the margin, whose formula it is, a
            sentence and cautions; `StartUpPlan.of(check)` turns the answers into steps. A computed figure is advice, not a
            safety device: local codes, licensed electricians and a rehearsed power cut go before it.

            What the answers rest on:

            - Lift and losses of the return line set the pump's working point; a data sheet shows a new pump.
            - The quiet limit of a drain (self-venting, V/sqrt(g D) = 0.3) is from memory and holds for upright pipes. Between it
              and the full-bore limit a drain gulps; the full bore is a limit, not a promise.
            - At a power cut all pipes count as full and a check valve does not count. The water held by trickling media is an
              assumed 3 % of their dry part.
            - Half of the media is covered before the start, a third in running: common practice.
            - Margins (2 on the full bore, 1.25 on the drain-back, 0.9 on the stand) are judgement, gathered in `FitLimits`.
            """;

    private Setup() {}

    static void run() throws IOException {
        List<FitCheck> checks =
                LanternQuaySites.all().stream().map(FitCheck::of).toList();
        StringBuilder page = new StringBuilder(HEAD);
        for (FitCheck check : checks) {
            Installation site = check.installation();
            page.append("\n## ").append(site.name()).append("\n\n```text\n");
            page.append(said(check)).append("```\n");
        }
        Path path = Path.of("docs", "reference", "setup.md");
        Files.createDirectories(path.getParent());
        Files.writeString(path, page);
        System.out.println(checks.stream().map(Setup::said).collect(Collectors.joining("\n")));
        System.out.println("wrote " + path);
        System.out.println("result: installations=" + checks.size() + " fits=" + count(checks, Fit.FITS) + " fails="
                + count(checks, Fit.FAILS) + " answers="
                + checks.stream().mapToInt(check -> check.answers().size()).sum());
    }

    private static String said(FitCheck check) {
        String answers = new SetupText(ENGLISH).of(check);
        return check.verdict() == Fit.FAILS
                ? answers
                : answers + "\n" + new SetupText(ENGLISH).of(StartUpPlan.of(check));
    }

    private static long count(List<FitCheck> checks, Fit verdict) {
        return checks.stream().filter(check -> check.verdict() == verdict).count();
    }
}
