package io.github.weirwise.demo.care;

import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Pieces;
import io.github.weirwise.demo.panel.Pieces.Piece;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.panel.Tabs;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.setup.LanternQuaySites;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JPanel;

/** The pages for setting up and looking after, one at a time. */
public final class CarePages {
    private CarePages() {}

    /**
     * The pages for the desk that is tuned at.
     *
     * @param pieces makes them one after another
     * @param controls what stands under the picture
     * @param tank keeps the description of one's own tank
     */
    public static Tabs of(
            Supplier<Desk> desk, Pieces pieces, JPanel controls, OwnTank tank, Saving saving, Supplier<Dress> dress) {
        Tabs tabs = new Tabs();
        FitPage[] fit = new FitPage[1];
        pieces.add(() -> {
            NeverCard never = new NeverCard(dress.get());
            controls.add(never);
            return Piece.still(never::dress);
        });
        FitCheck[] first = new FitCheck[1];
        pieces.also(() -> first[0] = FitCheck.of(LanternQuaySites.trainingTank()));
        pieces.also(() -> fit[0] = new FitPage(first[0], saving, tabs::refresh, dress.get()));
        pieces.also(() -> fit[0].refresh());
        pieces.add(() -> {
            tabs.add("care.fit", fit[0], Piece.still(fit[0]::dress), dress.get());
            return new Piece(tabs::refresh, tabs::dress);
        });
        pieces.also(() -> {
            OwnPage own = new OwnPage(
                    site -> {
                        fit[0].check(site);
                        tank.checked(fit[0].check());
                        tabs.turn("care.fit");
                    },
                    tank,
                    () -> Optional.of(desk.get())
                            .filter(FileDesk.class::isInstance)
                            .map(Desk::unit),
                    saving,
                    dress.get());
            tabs.add("care.own", own, Piece.still(own::dress), dress.get());
            own.steps().forEach(pieces::also);
            pieces.also(own::keep);
        });
        pieces.also(() -> {
            StartPage start = new StartPage(fit[0]::check, saving, dress.get());
            tabs.add("care.start", start, new Piece(start::refresh, start::dress), dress.get());
        });
        return tabs;
    }
}
