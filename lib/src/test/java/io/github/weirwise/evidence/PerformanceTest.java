package io.github.weirwise.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page of performance has a place for what each command writes, and the commands' last lines can be read. */
class PerformanceTest {
    private static final Path ROOT =
            Path.of(System.getProperty("basedir", "")).toAbsolutePath().getParent();

    @Test
    void everyPartOfThePageHasItsCommand() throws IOException {
        List<DocumentPart> parts =
                Stream.of(Bench.part(), StartUp.part(), Performance.part()).toList();
        String page = Files.readString(ROOT.resolve("docs/reference/performance.md"));
        for (DocumentPart part : parts) {
            assertThat(page).contains("written by the command " + part.command(), "end of " + part.command());
            assertThat(Evidence.commands()).containsKey(part.command());
        }
    }

    /** The race itself refuses to time two solvers that find other roots. */
    @Test
    void theGeneralSolverFindsTheSameRoots() {
        List<SolverRace.Lap> laps = SolverRace.run();
        assertThat(laps).hasSize(4);
        assertThat(SolverRace.table(laps)).contains("| head of a weir |", "| holdup, any exponent |");
    }

    @Test
    void lastLinesAreKeysAndValues() {
        assertThat(Performance.keys("result: units=200 seconds=1.5 engineEqual=1"))
                .isEqualTo(Map.of("units", "200", "seconds", "1.5", "engineEqual", "1"));
    }

    /** Ten units are enough to see that nothing is lost between the batches, and that the second run is the first again. */
    @Test
    void aFleetIsAssessedWholeAndCountedOnce() throws Exception {
        FleetRun.Count count = FleetRun.count(InventedFleet.young(3), 10);
        assertThat(count.units()).isEqualTo(10);
        assertThat(count.entries()).isBetween(30L, 100L);
        assertThat(FleetRun.count(InventedFleet.young(3), 10)).isEqualTo(count);
        assertThat(FleetRun.count(InventedFleet.settled(3), 2).entries()).isEqualTo(60);
    }
}
