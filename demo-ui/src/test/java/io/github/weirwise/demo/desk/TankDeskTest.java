package io.github.weirwise.demo.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.json.Request;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.WeirSetting;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Tuning on the invented tank: one clock, one knob in hand, and a journal of what was done and seen. */
class TankDeskTest {
    private final TankDesk desk = new TankDesk(InventedTank.of(7));

    @Test
    void itsWeirStandsTooLowByWhatIsSaid() {
        double wanted = desk.unit().target().skimmateMlPerDay();
        double right = WeirSetting.crestForSkimmate(
                        desk.tank().unit(), desk.tank().settings(), wanted)
                .orElseThrow();
        assertThat(right - desk.settings().weirCrestMm()).isCloseTo(InventedTank.TOO_LOW_MM, within(3.0));
    }

    @Test
    void aKnobTurnedToAndFroCountsOnceAndShowsAtOnce() {
        Instant before = desk.now();
        double level = desk.scene().point().submergenceMm();
        double amount = desk.tank().truth().of(Stock.SKIMMATE_ML_PER_DAY);
        desk.moveWeir(211);
        desk.moveWeir(215);
        assertThat(desk.scene().point().submergenceMm()).isGreaterThan(level + 9);
        assertThat(desk.tank().truth().of(Stock.SKIMMATE_ML_PER_DAY)).isEqualTo(amount);
        assertThat(desk.journal().entries()).containsExactly(new WeirMove(before, 215, false));
        assertThat(desk.now()).isEqualTo(before);
        desk.undo();
        assertThat(desk.settings().weirCrestMm()).isEqualTo(desk.told().weirCrestMm());
        assertThat(desk.journal().entries()).isEmpty();
        assertThat(desk.scene().point())
                .isEqualTo(new TankDesk(InventedTank.of(7)).scene().point());
    }

    @Test
    void handsTakeTheirMinutesAndWhatTimeHasPassedOverIsNotUndone() {
        Instant before = desk.now();
        desk.moveWeir(210);
        desk.look(List.of(LookKind.FUNNEL_LEVEL));
        assertThat(Duration.between(before, desk.now())).isEqualTo(Duration.ofMinutes(5 + 2));
        desk.undo();
        assertThat(desk.canUndo()).isFalse();
        assertThat(desk.settings().weirCrestMm()).isEqualTo(210);
    }

    @Test
    void lookingEmptiesTheCupOnlyWhenItIsMeasured() {
        desk.run(Duration.ofHours(20));
        desk.look(List.of(LookKind.FOAM_LOOK));
        assertThat(desk.tank().truth().of(Stock.CONTAINER_ML)).isPositive();
        assertThat(desk.look().find(Observation.CupVolume.class)).isPresent();
        assertThat(desk.tank().truth().of(Stock.CONTAINER_ML)).isZero();
    }

    @Test
    void savedWorkIsLivedAgain() {
        desk.liveThroughFirstDay();
        desk.moveWeir(214);
        desk.setAir(130);
        desk.run(Duration.ofHours(30));
        desk.look();
        Request saved = desk.saved();
        TankDesk again = SavedTank.again(SavedTank.of(saved), () -> new TankDesk(InventedTank.of(7)))
                .orElseThrow();
        assertThat(again.journal()).isEqualTo(desk.journal());
        assertThat(again.settings()).isEqualTo(desk.settings());
        OperatingPoint rest = desk.tank().rest();
        assertThat(again.tank().rest().submergenceMm()).isCloseTo(rest.submergenceMm(), within(0.05));
        assertThat(again.tank().truth().of(Stock.SKIMMATE_ML_PER_DAY))
                .isCloseTo(desk.tank().truth().of(Stock.SKIMMATE_ML_PER_DAY), within(1.0));
        assertThat(again.now()).isEqualTo(desk.now());
    }
}
