package io.github.weirwise.tank;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.FoamState;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The tank's skimmer and the operating point are one law: the same numbers to the last digit, dry, wet and flooded. */
class SteadySkimmerTest {
    @Test
    void givesWhatTheOperatingPointGives() {
        SplittableRandom random = new SplittableRandom(7);
        int flooded = 0;
        int empty = 0;
        for (int i = 0; i < 3000; i++) {
            SkimmerUnit unit = FirstRoundUnits.units().get(i % 3);
            Settings settings = unit.ratedSettings(random.nextDouble(120, 420))
                    .withAirLitresPerHour(unit.ratedAirLitresPerHour() * random.nextDouble(0, 1.5))
                    .withFlowLitresPerHour(unit.ratedFlowLitresPerHour() * random.nextDouble(0, 1.5))
                    .withCondition(Condition.REFERENCE.withSkimmableMgPerLitre(random.nextDouble(0, 20)));
            OperatingPoint point = OperatingPoint.of(unit, settings);
            assertThat(SkimmerLaw.of(unit).at(settings))
                    .isEqualTo(new FoamOutput(
                            point.skimmateMlPerDay(),
                            point.strengthMgPerLitre(),
                            point.airLitresPerHour(),
                            point.foamState() == FoamState.FLOODING));
            flooded += point.foamState() == FoamState.FLOODING ? 1 : 0;
            empty += point.skimmateMlPerDay() == 0 ? 1 : 0;
        }
        assertThat(flooded).isGreaterThan(100);
        assertThat(empty).isGreaterThan(100);
    }
}
