package io.github.weirwise.evidence;

import io.github.weirwise.commissioning.Fit;
import io.github.weirwise.commissioning.FitCheck;
import io.github.weirwise.commissioning.Installation;
import io.github.weirwise.commissioning.LanternQuaySites;
import io.github.weirwise.commissioning.StartUpPlan;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.sheet.FitText;
import io.github.weirwise.sheet.StartUpText;

/** Prints the fit check of the three invented installations and the start-up plan of the one that fits. */
public final class Setup {
    private Setup() {}

    /** Runs it. */
    public static void main(String[] args) {
        int fits = 0;
        int fails = 0;
        int answers = 0;
        for (Installation site : LanternQuaySites.all()) {
            FitCheck check = FitCheck.of(site);
            System.out.println(new FitText(PhraseBook.ENGLISH_METRIC).of(check));
            if (check.verdict() != Fit.FAILS) {
                System.out.println(new StartUpText(PhraseBook.ENGLISH_METRIC).of(StartUpPlan.of(check)));
            }
            fits += check.verdict() == Fit.FITS ? 1 : 0;
            fails += check.verdict() == Fit.FAILS ? 1 : 0;
            answers += check.answers().size();
        }
        System.out.println("result: installations=" + LanternQuaySites.all().size() + " fits=" + fits + " fails="
                + fails + " answers=" + answers);
    }
}
