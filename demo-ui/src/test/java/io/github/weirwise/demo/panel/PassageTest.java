package io.github.weirwise.demo.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.desk.TryDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.unit.LanternQuay;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;

/** Hours pass before the eyes, may be skipped, and jump where nothing moves; the end is the same. */
class PassageTest {
    private final TryDesk desk = new TryDesk(LanternQuay.jetty());
    private final List<Double> amounts = new ArrayList<>();
    private final List<Double> levels = new ArrayList<>();

    private ClockRow row(boolean moving) {
        desk.moveWeir(desk.settings().weirCrestMm() + 8);
        desk.onChange(() -> {
            amounts.add(desk.scene().skimmateMlPerDay());
            levels.add(desk.scene().point().submergenceMm());
        });
        return Parts.onEvents(() -> {
            ClockRow row = new ClockRow(Dress.USUAL);
            row.follow(Optional.of(desk));
            row.moves(() -> moving);
            return row;
        });
    }

    private static AbstractButton button(ClockRow row, String name) {
        return Parts.named(row, name, AbstractButton.class);
    }

    private double jumped() {
        TryDesk other = new TryDesk(LanternQuay.jetty());
        other.moveWeir(desk.settings().weirCrestMm());
        other.run(Duration.between(desk.start(), desk.now()));
        return other.scene().skimmateMlPerDay();
    }

    @Test
    void withoutMotionItJumpsAndTellsBeforeAndAfter() {
        ClockRow row = row(false);
        Instant start = desk.now();
        Parts.onEvents(() -> {
            button(row, "clock.day").doClick(0);
            return null;
        });
        assertThat(amounts).hasSize(1);
        assertThat(desk.now()).isEqualTo(start.plus(Duration.ofDays(1)));
        JLabel told = Parts.named(row, "clock.told", JLabel.class);
        assertThat(told.isVisible()).isTrue();
        assertThat(told.getText()).contains("Computed: skimmate", "then", "mL/day");
    }

    @Test
    void anHourIsSeenToPassAndTheFoamFollowsWhileTheLevelStays() throws InterruptedException {
        ClockRow row = row(true);
        Instant start = desk.now();
        Parts.onEvents(() -> {
            button(row, "clock.hour").doClick(0);
            return null;
        });
        assertThat(button(row, "clock.skip").isVisible()).isTrue();
        assertThat(button(row, "clock.day").isEnabled()).isFalse();
        long patience = System.currentTimeMillis() + 15_000;
        while (Parts.onEvents(() -> button(row, "clock.skip").isVisible()) && System.currentTimeMillis() < patience) {
            Thread.sleep(20);
        }
        assertThat(desk.now()).isEqualTo(start.plus(Duration.ofHours(1)));
        assertThat(amounts).hasSizeGreaterThan(3).isSorted();
        assertThat(levels).allSatisfy(level -> assertThat(level).isCloseTo(levels.get(0), within(0.01)));
        assertThat(desk.scene().skimmateMlPerDay()).isCloseTo(jumped(), within(0.5));
    }

    @Test
    void skippedByButtonOrByEscapeItEndsWhereItWouldHaveEnded() {
        for (boolean byKey : new boolean[] {false, true}) {
            ClockRow row = row(true);
            Instant start = desk.now();
            Parts.onEvents(() -> {
                button(row, "clock.day").doClick(0);
                if (byKey) {
                    assertThat(Parts.press(row, "ESCAPE")).isTrue();
                } else {
                    button(row, "clock.skip").doClick(0);
                }
                return null;
            });
            assertThat(desk.now()).isEqualTo(start.plus(Duration.ofDays(1)));
            assertThat(Parts.named(row, "clock.told", JLabel.class).isVisible()).isTrue();
        }
    }

    @Test
    void skippedOnTheWayToSettledItIsSettled() {
        ClockRow row = row(true);
        Parts.onEvents(() -> {
            button(row, "clock.settle").doClick(0);
            button(row, "clock.skip").doClick(0);
            return null;
        });
        assertThat(desk.settled()).isTrue();
    }

    @Test
    void aLessonThatBeginsMeanwhileEndsTheFilmAndIsNotToldOfIt() throws InterruptedException {
        ClockRow row = row(true);
        Instant start = desk.now();
        Parts.onEvents(() -> {
            button(row, "clock.day").doClick(0);
            return null;
        });
        long patience = System.currentTimeMillis() + 15_000;
        while (Parts.onEvents(() -> !desk.now().isAfter(start)) && System.currentTimeMillis() < patience) {
            Thread.sleep(20);
        }
        Parts.onEvents(() -> {
            desk.choose(LanternQuay.jetty());
            row.refresh();
            return null;
        });
        assertThat(button(row, "clock.skip").isVisible()).isFalse();
        Thread.sleep(200);
        assertThat(desk.now()).isEqualTo(start);
        assertThat(Parts.named(row, "clock.told", JLabel.class).isVisible()).isFalse();
    }
}
