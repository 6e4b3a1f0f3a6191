package io.github.weirwise.advice;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Observation;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every reading that can be asked for is recognised when it comes. */
class LookKindTest {
    private static final List<Observation> MEASURED = List.of(
            new Observation.FunnelLevel(20),
            new Observation.CupVolume(200, 24, false),
            new Observation.Darkness(DarknessWord.DARK_TEA),
            new Observation.DarknessMatch(1500),
            new Observation.FoamLook(FoamLookWord.values()[0]),
            new Observation.HeadOverCrest(20),
            new Observation.CrestAgainstMark(0),
            new Observation.OutsideLevel(10),
            new Observation.AirFlow(150),
            new Observation.FoamCollapse(30),
            new Observation.FoamCreep(25),
            new Observation.LevelBeyondWeir(-40),
            new Observation.ReturnFlow(2200),
            new Observation.Salinity(35));

    @Test
    void everyObservationButTheTemperatureIsWhatOneLookAsksFor() {
        List<Class<? extends Observation>> asked = Arrays.stream(LookKind.values())
                .filter(kind -> kind.part().isEmpty())
                .flatMap(kind -> kind.observations().stream())
                .toList();
        assertThat(asked).doesNotHaveDuplicates().doesNotContain(Observation.WaterTemperature.class);
        assertThat(asked)
                .hasSameElementsAs(MEASURED.stream().map(Observation::getClass).toList());
        assertThat(LookKind.values())
                .allSatisfy(kind -> assertThat(kind.observations()).isNotEmpty());
    }

    @Test
    void aLookAtAPartIsRecordedByAnInspection() {
        assertThat(LookKind.values())
                .filteredOn(kind -> kind.part().isPresent())
                .allSatisfy(kind -> assertThat(kind.observations()).containsExactly(Observation.Inspection.class));
    }
}
