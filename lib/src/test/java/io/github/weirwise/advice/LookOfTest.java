package io.github.weirwise.advice;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.unit.Part;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every reading that can be asked for is recognised when it comes. */
class LookOfTest {
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
    void everyKindThatIsNoInspectionHasItsObservation() {
        Set<LookKind> recognised =
                MEASURED.stream().map(each -> LookOf.kind(each).orElseThrow()).collect(Collectors.toSet());
        Set<LookKind> measured = EnumSet.allOf(LookKind.class);
        measured.removeIf(kind -> kind.part().isPresent());
        assertThat(recognised).isEqualTo(measured);
    }

    @Test
    void everyInspectionIsTheLookAtItsPart() {
        for (LookKind kind : LookKind.values()) {
            kind.part()
                    .ifPresent(part -> assertThat(LookOf.kind(new Observation.Inspection(part, Finding.BAD)))
                            .contains(kind));
        }
        assertThat(Arrays.stream(Part.values())
                        .filter(part -> LookOf.kind(new Observation.Inspection(part, Finding.GOOD))
                                .isPresent()))
                .isNotEmpty();
    }

    @Test
    void theTemperatureIsNothingThatIsAskedFor() {
        assertThat(LookOf.kind(new Observation.WaterTemperature(25))).isEmpty();
    }
}
