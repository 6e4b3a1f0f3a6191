package io.github.weirwise.demo.text;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.Weirwise;
import io.github.weirwise.demo.look.Words;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The whole job on the invented tank, as text. */
class TuningRunTest {
    private static List<String> run() {
        List<String> lines = new ArrayList<>();
        new TuningRun(Weirwise::advise, Words.ENGLISH, lines::add).run();
        return lines;
    }

    @Test
    void aWeirTwelveMillimetresTooLowIsOnTargetAfterAtMostFourChanges() {
        List<String> lines = run();
        String last = lines.get(lines.size() - 1);
        assertThat(last).matches("result: changes=[1-4] onTarget=1 submergenceMm=\\d+\\.\\d skimmateMlPerDay=\\d+");
    }

    @Test
    void everyRoundTellsReadingStepReasonWaitAndExpectation() {
        String text = String.join("\n", run());
        assertThat(text).contains("Seen", "Step", "Why", "Wait", "Expect", "Safety");
        int steps = text.split("\nStep ").length - 1;
        assertThat(steps).isGreaterThanOrEqualTo(2);
        assertThat(text.split("\nWhy ").length - 1).isEqualTo(steps);
        assertThat(text.split("\nExpect ").length - 1).isEqualTo(steps);
    }

    @Test
    void everyRunIsTheSame() {
        assertThat(run()).isEqualTo(run());
    }
}
