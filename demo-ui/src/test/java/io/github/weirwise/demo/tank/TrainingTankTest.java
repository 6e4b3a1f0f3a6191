package io.github.weirwise.demo.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.reading.Observation;
import io.github.weirwise.unit.WeirSetting;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class TrainingTankTest {
    @Test
    void itsWeirStandsTooLowByTheAmountAskedFor() {
        TrainingTank tank = TrainingTank.tooLow(12, 2.6);
        double wanted = tank.unit().target().skimmateMlPerDay();
        double right = WeirSetting.crestForSkimmate(tank.unit(), tank.settings(), wanted)
                .orElseThrow();
        assertThat(right - tank.settings().weirCrestMm()).isCloseTo(12, within(0.5));
    }

    @Test
    void theLevelFollowsTheWeirAtOnceAndTheFoamHoursLater() {
        TrainingTank tank = TrainingTank.tooLow(12, 2.6);
        double levelBefore = tank.rest().submergenceMm();
        double amountBefore = tank.skimmateMlPerDay();
        tank.setWeir(tank.settings().weirCrestMm() + 8);
        assertThat(tank.rest().submergenceMm()).isGreaterThan(levelBefore + 7);
        assertThat(tank.skimmateMlPerDay()).isEqualTo(amountBefore);
        tank.run(Duration.ofHours(4));
        double early = tank.skimmateMlPerDay();
        tank.run(Duration.ofHours(44));
        assertThat(early).isBetween(amountBefore * 1.2, tank.rest().skimmateMlPerDay() * 0.8);
        assertThat(tank.skimmateMlPerDay()).isCloseTo(tank.rest().skimmateMlPerDay(), within(0.5));
    }

    @Test
    void theCupHoldsWhatCameOverAndNoMoreThanItCan() {
        TrainingTank tank = TrainingTank.tooLow(-3, 2);
        double perDay = tank.rest().skimmateMlPerDay();
        tank.run(Duration.ofHours(12));
        assertThat(tank.cupMl()).isCloseTo(perDay / 2, within(1.0));
        tank.run(Duration.ofDays(30));
        assertThat(tank.cupMl()).isEqualTo(tank.unit().cupMl());
        assertThat(tank.cupFull()).isTrue();
    }

    @Test
    void theSameSeedSeesTheSame() {
        assertThat(seen(7)).isEqualTo(seen(7)).isNotEqualTo(seen(8));
    }

    @Test
    void measuringTheCupEmptiesIt() {
        TrainingTank tank = TrainingTank.tooLow(0, 2);
        tank.run(Duration.ofHours(20));
        var reading = new Looker(1).read(tank, Looker.ROUND);
        assertThat(reading.find(Observation.CupVolume.class)).isPresent();
        assertThat(tank.cupMl()).isZero();
    }

    private static String seen(long seed) {
        TrainingTank tank = TrainingTank.tooLow(12, 2.6);
        Looker looker = new Looker(seed);
        StringBuilder all = new StringBuilder();
        for (int day = 0; day < 5; day++) {
            tank.run(Duration.ofDays(1));
            all.append(looker.read(tank, Looker.ROUND));
        }
        return all.toString();
    }
}
