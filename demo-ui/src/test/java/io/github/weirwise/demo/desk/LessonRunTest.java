package io.github.weirwise.demo.desk;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.look.Words;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Lessons look at what is done, and can be walked to their end with every unit. */
class LessonRunTest {
    private final TryDesk desk = new TryDesk(LanternQuay.jetty());
    private final LessonRun run = new LessonRun(desk);

    private String told() {
        return run.told().map(Words.ENGLISH::say).orElse("");
    }

    private void crestBy(double mm) {
        desk.moveWeir(desk.settings().weirCrestMm() + mm);
    }

    private void airLine(double open) {
        desk.turn(
                Lever.AIR_LINE,
                settings -> settings.withCondition(settings.condition().withAirLineOpening(open)));
    }

    /** As a person would: half a millimetre at a time until it is seen to be right. */
    private void weirUntil(java.util.function.BooleanSupplier right, double stepMm) {
        for (int i = 0; i < 120 && !right.getAsBoolean(); i++) {
            crestBy(stepMm);
        }
    }

    private boolean levelRight() {
        return desk.scene().bandMm().contains(desk.tank().rest().submergenceMm());
    }

    @Test
    void levelAndFoam() {
        for (SkimmerUnit unit : LanternQuay.units()) {
            desk.choose(unit);
            run.begin(Optional.of(Lesson.LEVEL));
            assertThat(told()).startsWith("Step 1 of 5");
            crestBy(2);
            assertThat(told()).startsWith("Step 1 of 5");
            crestBy(10);
            assertThat(told()).startsWith("Step 2 of 5").contains("rose at once");
            desk.run(Duration.ofHours(3));
            assertThat(told()).startsWith("Step 3 of 5");
            desk.runUntilSettled();
            assertThat(told()).startsWith("Step 4 of 5");
            weirUntil(this::levelRight, -0.5);
            assertThat(told()).startsWith("Step 5 of 5");
            desk.runUntilSettled();
            assertThat(run.done()).isTrue();
            assertThat(told()).startsWith("Done.");
        }
    }

    @Test
    void airLooksLikeLevel() {
        for (SkimmerUnit unit : LanternQuay.units()) {
            desk.choose(unit);
            run.begin(Optional.of(Lesson.AIR));
            double crest = desk.settings().weirCrestMm();
            airLine(0.5);
            desk.runUntilSettled();
            assertThat(told()).as(unit.name()).startsWith("Step 3 of 5");
            weirUntil(() -> told().startsWith("Step 4"), 0.5);
            assertThat(desk.scene().bandMm().high())
                    .as("the level stands over its range")
                    .isLessThan(desk.tank().rest().submergenceMm());
            airLine(1);
            assertThat(told()).startsWith("Step 5 of 5").contains("hidden");
            desk.moveWeir(crest);
            assertThat(run.done()).isTrue();
        }
    }

    @Test
    void waiting() {
        run.begin(Optional.of(Lesson.WAITING));
        crestBy(-12);
        assertThat(told()).startsWith("Step 2 of 5");
        crestBy(3);
        assertThat(told()).as("a drag is one move, however often it is told of").startsWith("Step 2 of 5");
        desk.run(Duration.ofMinutes(30));
        crestBy(-1);
        assertThat(told()).startsWith("The weir was moved before it was time").contains("Step 2 of 5");
        desk.run(Duration.ofHours(1));
        assertThat(told()).startsWith("Step 3 of 5");
        desk.runUntilSettled();
        weirUntil(this::levelRight, 0.5);
        assertThat(told()).startsWith("Step 5 of 5");
        desk.runUntilSettled();
        assertThat(run.done()).isTrue();
    }

    @ParameterizedTest
    @EnumSource(Lesson.class)
    void nothingDoneNothingLearned(Lesson lesson) {
        run.begin(Optional.of(lesson));
        desk.run(Duration.ofDays(3));
        assertThat(told()).startsWith("Step 1 of");
        run.begin(Optional.empty());
        assertThat(told()).isEmpty();
    }

    private String technician() {
        return Words.ENGLISH.say(desk.technician());
    }

    @Test
    void aTechnicianPutsPartsBeforeTheWeirAndWaits() {
        assertThat(technician()).contains("leaves it alone");
        airLine(0.6);
        assertThat(technician()).contains("air line", "the weir stays");
        airLine(1);
        crestBy(-12);
        assertThat(technician()).contains("waits");
        desk.runUntilSettled();
        assertThat(technician()).contains("raises the weir by 4 mm");
        crestBy(70);
        assertThat(technician()).contains("lowers the weir by 10 mm at once");
    }

    @Test
    void followingTheTechnicianBringsEveryUnitBack() {
        for (SkimmerUnit unit : LanternQuay.units()) {
            desk.choose(unit);
            crestBy(-14);
            for (int day = 0; day < 12 && !technician().contains("leaves it"); day++) {
                if (technician().contains("raises the weir")) {
                    crestBy(4);
                }
                desk.runUntilSettled();
                desk.emptyCup();
            }
            Settings settings = desk.settings();
            double ratio = OperatingPoint.of(unit, settings).skimmateMlPerDay()
                    / unit.target().skimmateMlPerDay();
            assertThat(ratio).as(unit.name()).isBetween(0.4, 2.4);
        }
    }
}
