package io.github.weirwise.lab;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.lab.rival.CarefulKeeper;
import io.github.weirwise.lab.rival.Decision;
import io.github.weirwise.lab.rival.Visit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The page and the line for programs, with a stand-in for the adviser whose worth is known. */
class PanelPageTest {
    /** Plays as the keeper and states the same of every day; "wide" says it may be anything. */
    private static Entrant standIn(boolean wide, boolean upkeep) {
        return Entrant.blind("adviser", visit -> {
            Decision keeper = new CarefulKeeper(upkeep).next(visit);
            return new Decision(keeper.step(), Optional.of(stated(visit, wide)));
        });
    }

    private static Decision.Stated stated(Visit visit, boolean wide) {
        double wanted = visit.sheet().target().skimmateMlPerDay();
        return new Decision.Stated(
                wanted * (wide ? 1e-3 : 0.99),
                wanted * (wide ? 1e3 : 1.01),
                0.7,
                visit.now().plus(Duration.ofDays(1)),
                "NECK_DIRTY",
                Optional.empty(),
                0.3);
    }

    private static PanelReport report(Entrant adviser) {
        List<Entrant> all = new ArrayList<>(Entrant.ALL);
        all.set(0, adviser);
        return new PanelReport(
                List.of(Played.of(Truth.GENTLE, "tune", 5, 24, all), Played.of(Truth.STEEP, "tune", 5, 24, all)));
    }

    @Test
    void whoPlaysAsTheKeeperCostsAsTheKeeper() {
        PanelReport same = report(standIn(true, true));
        assertThat(same.resultLine())
                .contains("truths=2")
                .contains("meanCostOverKeeper=1.0000")
                .contains("worstCostOverKeeper=1.0000")
                .contains("worstDaysOutOverKeeper=1.0000")
                .contains("worstLooks=0.0000")
                .contains("lowestCoverage80=1.0000");
        assertThat(same.losses()).noneMatch(line -> line.contains("careful keeper"));
    }

    @Test
    void rangesThatAreTooWideOrTooNarrowAreNamedAsLosses() {
        assertThat(report(standIn(true, true)).losses())
                .anyMatch(line -> line.startsWith("steep: stated 80 % ranges hold in 1.000"))
                .anyMatch(line -> line.startsWith("steep: forecasts score"));
        assertThat(report(standIn(false, true)).losses())
                .anyMatch(line -> line.startsWith("steep: stated 80 % ranges hold in 0.0"));
    }

    @Test
    void whoDoesNoUpkeepIsSaidToLose() {
        assertThat(report(standIn(true, false)).losses())
                .anyMatch(line -> line.contains("costs more than the careful keeper"));
    }

    @Test
    void thePageHasEveryTableAndNoHole() {
        String page = PanelPage.of(report(standIn(true, true)), 24, 5);
        assertThat(page)
                .contains("## Where the adviser loses", "## How honest", "## By hidden fault", "| steep | 24 |")
                .contains("The adviser of the first round")
                .doesNotContain("NaN", "null", "%s");
    }
}
