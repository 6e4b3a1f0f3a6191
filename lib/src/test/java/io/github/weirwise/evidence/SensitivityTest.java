package io.github.weirwise.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.unit.FirstRoundUnits;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The table of assumptions in the document is the one that the command prints now. */
class SensitivityTest {
    @Test
    void theDocumentHoldsWhatTheCommandPrints() throws IOException {
        Path root = Path.of(System.getProperty("basedir", "")).toAbsolutePath().getParent();
        DocumentPart part = new DocumentPart(root.resolve("docs/reference/model.md"), "sensitivity");
        assertThat(part.read()).isEqualTo(Sensitivity.text());
    }

    @Test
    void noAssumptionOfTheFastFormIsWithoutAnyEffectInTheTable() {
        SensitivityScene base = SensitivityScene.of(FirstRoundUnits.middle());
        assertThat(SensitivityRows.of(FirstRoundUnits.middle()))
                .hasSizeGreaterThan(20)
                .allSatisfy(row -> {
                    SensitivityScene low = row.scene().apply(row.low());
                    SensitivityScene high = row.scene().apply(row.high());
                    double amount = low.skimmateMlPerDay() / high.skimmateMlPerDay();
                    double answer = low.answerTo(2) / high.answerTo(2);
                    double darkness = low.darknessPtCo() / high.darknessPtCo();
                    assertThat(Math.abs(Math.log(amount)) + Math.abs(Math.log(answer)) + Math.abs(Math.log(darkness)))
                            .as(row.what())
                            .isGreaterThan(1e-3);
                });
        assertThat(base.submergenceMm()).isCloseTo(22, within(0.01));
    }
}
