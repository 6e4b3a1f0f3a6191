package io.github.weirwise.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The programs that the benchmarks are held against solve the same equations; skipped where a language is not installed. */
class OtherLanguageTest {
    @TempDir
    private Path folder;

    @Test
    void theSteadyLawInCGivesTheSameNumbers() throws Exception {
        Optional<OtherLanguage> c = OtherLanguage.c("steady", folder);
        assumeTrue(c.isPresent(), "no gcc here");
        assertThat(difference(c.get(), SteadyPoints.general())).isLessThan(1e-12);
        assertThat(difference(c.get(), SteadyPoints.usual())).isLessThan(1e-12);
    }

    @Test
    void theSteadyLawInNumpyGivesTheSameNumbers() throws Exception {
        Optional<OtherLanguage> numpy = OtherLanguage.python("steady_bench", "numpy");
        assumeTrue(numpy.isPresent(), "no NumPy here");
        assertThat(difference(numpy.get(), SteadyPoints.general())).isLessThan(1e-11);
    }

    private double difference(OtherLanguage language, SteadyPoints points) throws Exception {
        Path inputs = folder.resolve("in");
        Path answers = folder.resolve("out");
        points.write(inputs);
        language.run(inputs, answers, 0.01);
        return points.worstDifference(answers);
    }

    @Test
    void theFoamColumnInScipyPassesTheSameLiquidOverTheLip() throws Exception {
        Optional<OtherLanguage> scipy = OtherLanguage.python("column_bench", "scipy");
        assumeTrue(scipy.isPresent(), "no SciPy here");
        ColumnCases cases = new ColumnCases();
        Path inputs = folder.resolve("in");
        Path answers = folder.resolve("out");
        cases.write(inputs);
        scipy.get().run(inputs, answers, ColumnCases.TOLERANCE, 0);
        assertThat(cases.worstDifference(answers)).isLessThan(1e-4);
    }
}
