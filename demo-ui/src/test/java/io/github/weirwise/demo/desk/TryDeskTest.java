package io.github.weirwise.demo.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.picture.UnitPicture;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.unit.FoamState;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** Free play: it begins on target, and every turn is told truly. */
class TryDeskTest {
    private final TryDesk desk = new TryDesk(LanternQuay.jetty());

    private String told() {
        return desk.whatChanged().map(Words.ENGLISH::say).orElse("");
    }

    @Test
    void everyUnitBeginsOnTarget() {
        for (SkimmerUnit unit : LanternQuay.units()) {
            desk.choose(unit);
            assertThat(desk.tank().rest().foamState()).isEqualTo(FoamState.ON_TARGET);
            assertThat(desk.settled()).isTrue();
        }
    }

    @Test
    void raisingTheWeirIsToldAsHigherWetterPaler() {
        desk.moveWeir(desk.settings().weirCrestMm() + 3);
        assertThat(told()).contains("goes up by", "wetter", "paler", "follows the weir");
    }

    @Test
    void lessFlowIsToldByTheHead() {
        desk.turn(Lever.FLOW, settings -> settings.withFlowLitresPerHour(1800));
        assertThat(told()).contains("goes down by", "drier", "head over the crest is now");
    }

    @Test
    void lessAirIsToldByTheGasLift() {
        desk.turn(Lever.AIR, settings -> settings.withAirLitresPerHour(120));
        assertThat(told()).contains("lifts the level by");
    }

    @Test
    void turnsOfOneLeverAddUp() {
        double start = desk.settings().weirCrestMm();
        desk.moveWeir(start + 1);
        desk.moveWeir(start + 2);
        assertThat(told()).startsWith("Weir crest from " + Words.ENGLISH.book().number(start, Lever.WEIR.unit()));
    }

    @Test
    void theSameLeverTurnedHoursLaterIsAnotherChange() {
        double right = desk.settings().weirCrestMm();
        desk.moveWeir(right - 8);
        desk.run(Duration.ofHours(10));
        desk.moveWeir(right - 4);
        desk.run(Duration.ofMinutes(1));
        desk.moveWeir(right);
        assertThat(told())
                .startsWith("Weir crest from " + Words.ENGLISH.book().number(right - 8, Lever.WEIR.unit()))
                .contains("goes up by 8", "wetter");
    }

    @Test
    void aChangeIsStillToldWhenTimeHasPassed() {
        desk.moveWeir(desk.settings().weirCrestMm() + 3);
        String before = told();
        desk.run(Duration.ofHours(5));
        assertThat(told()).isEqualTo(before).contains("goes up by");
    }

    @Test
    void runningUntilSettledComesToAnEnd() {
        desk.moveWeir(desk.settings().weirCrestMm() - 6);
        assertThat(desk.settled()).isFalse();
        desk.runUntilSettled();
        assertThat(desk.settled()).isTrue();
        assertThat(Duration.between(desk.start(), desk.now())).isBetween(Duration.ofHours(6), Duration.ofDays(4));
    }

    @Test
    void anHourAtFullCompressionKeepsABoundedPast() {
        for (int i = 0; i < 36_000; i++) {
            desk.run(Duration.ofMinutes(36));
        }
        assertThat(desk.points()).hasSizeLessThanOrEqualTo(600);
    }

    /** What falls into the cup is as dark as the foam that is seen, from the first hour until all has settled. */
    @Test
    void colourGoesWithTheAmountNotAtOnceWithTheWeir() {
        double before = desk.tank().rest().darknessPtCo();
        desk.moveWeir(desk.settings().weirCrestMm() + 8);
        double settled = desk.tank().rest().darknessPtCo();
        double last = before * 1.2;
        desk.run(Duration.ofHours(1));
        for (int hour = 0; hour < 12; hour++) {
            double ml = desk.scene().collected().ml();
            double mixed = ml * desk.tank().cupPtCo();
            desk.run(Duration.ofMinutes(30));
            double cameIn = (desk.scene().collected().ml() * desk.tank().cupPtCo() - mixed)
                    / (desk.scene().collected().ml() - ml);
            assertThat(cameIn).as("hour " + hour).isBetween(0.98 * settled, last);
            last = cameIn * 1.001;
        }
        assertThat(last).isLessThan(settled * 1.15);
    }

    @Test
    void aDrainedCupFillsItsCanWhichAlarmsWhenFullAndIsEmptied() {
        desk.run(Duration.ofDays(1));
        double ml = desk.scene().collected().waste().orElseThrow().ml();
        assertThat(ml).isCloseTo(desk.tank().truth().of(Stock.SKIMMATE_ML_PER_DAY), within(0.05 * ml));
        desk.moveWeir(desk.unit().weir().highestCrestMm() - 20);
        desk.runUntilSettled();
        desk.run(Duration.ofDays(1));
        UnitPicture picture = new UnitPicture(desk.scene(), Words.ENGLISH, Palette.LIGHT);
        assertThat(picture.describe()).startsWith("The waste container is full").contains("Water on the floor");
        assertThat(Words.ENGLISH.say(desk.technician())).contains("empties the waste container");
        desk.emptyCup();
        assertThat(desk.scene().collected().ml()).isZero();
        assertThat(desk.scene().collected().spilledLitres()).isZero();
    }

    @Test
    void aCupWithoutADrainFillsAndAlarms() {
        SkimmerUnit seahorse = LanternQuay.units().get(0);
        desk.choose(seahorse);
        desk.run(Duration.ofDays(5));
        assertThat(desk.scene().collected().waste()).isEmpty();
        assertThat(new UnitPicture(desk.scene(), Words.ENGLISH, Palette.LIGHT).describe())
                .startsWith("The cup is full");
    }
}
