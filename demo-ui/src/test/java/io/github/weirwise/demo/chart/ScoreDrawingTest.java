package io.github.weirwise.demo.chart;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.score.Bell;
import io.github.weirwise.score.Scored;
import io.github.weirwise.unit.LanternQuay;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Forecasts that held and forecasts that did not are told apart in figures and in the table, not by a colour alone. */
class ScoreDrawingTest {
    private static final Instant START = Instant.parse("2026-03-02T08:00:00Z");

    private static Scored cup(int day, double forecast, double came) {
        return new Scored(
                START.plus(Duration.ofDays(day)),
                new Bell(Math.log(forecast), 0.2),
                new Bell(0, 0.6),
                new Bell(0, 0.6),
                Math.log(came));
    }

    @Test
    void whatHeldIsCountedAndTold() {
        ScoreDrawing drawing = new ScoreDrawing(
                List.of(cup(1, 1, 1.1), cup(2, 1, 3), cup(3, 0.5, 0.45)),
                LanternQuay.jetty().target(),
                Clock.invented(START));
        assertThat(drawing.held()).isEqualTo(2);
        assertThat(drawing.offBy(each -> each.forecast().mean()))
                .as("the middle one of 1.1, 3 and 1.11")
                .isCloseTo(0.5 / 0.45, Offset.offset(1e-9));
        assertThat(drawing.rows(Words.ENGLISH)).extracting(row -> row.get(3)).containsExactly("yes", "no", "yes");
        assertThat(drawing.describe(Words.ENGLISH)).contains("of 3 forecasts 2 held");
    }
}
