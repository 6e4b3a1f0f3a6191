package io.github.weirwise.demo.window;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.Evaluations;
import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.OperatingPoint;
import javax.swing.AbstractButton;
import javax.swing.JSlider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A change is worked out once, however many parts of the window show it. */
class EvaluationsTest {
    private MainPanel panel;

    @BeforeEach
    void open() {
        panel = Parts.onEvents(() -> Sample.window(Dress.USUAL));
    }

    private void use(String key) {
        Parts.onEvents(() -> {
            Parts.named(panel, key, AbstractButton.class).doClick();
            return panel;
        });
    }

    private void raiseTheWeir() {
        Parts.onEvents(() -> Parts.press(panel.picture(), "UP"));
    }

    private void moreFlow() {
        Parts.onEvents(() -> {
            JSlider flow = Parts.named(panel, "lever.FLOW.slider", JSlider.class);
            flow.setValue(flow.getValue() + 3);
            return panel;
        });
    }

    @Test
    void theCounterCounts() {
        var jetty = LanternQuay.jetty();
        assertThat(Evaluations.during(() -> {
                    OperatingPoint.of(jetty, jetty.ratedSettings(200));
                    OperatingPoint.of(jetty, jetty.ratedSettings(201));
                }))
                .isEqualTo(2);
    }

    @Test
    void aMoveOfTheWeirInTryMovesTheDotAlongTheCurveThatIsThere() {
        use("use.try");
        raiseTheWeir();
        assertThat(Evaluations.during(this::raiseTheWeir)).isBetween(1L, 4L);
    }

    @Test
    void aMoveOfTheWeirInTuneCostsAtMostThree() {
        use("use.tune");
        raiseTheWeir();
        double before = panel.desk().settings().weirCrestMm();
        assertThat(Evaluations.during(this::raiseTheWeir)).isBetween(1L, 3L);
        assertThat(panel.desk().settings().weirCrestMm()).isGreaterThan(before);
    }

    @Test
    void anotherKnobCostsItsSweepAndLittleMore() {
        use("use.try");
        moreFlow();
        assertThat(Evaluations.during(this::moreFlow)).isBetween(41L, 45L);
    }
}
