package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.unit.Part;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Every observation can be said, with its number and unit. */
class ObservationWordsTest {
    @Test
    void measuredNumbersComeWithTheirUnits() {
        assertThat(said(new Observation.FunnelLevel(21.4))).contains("21 mm");
        assertThat(said(new Observation.CupVolume(120, 12, false))).contains("120 mL", "12 h", "240 mL/day");
        assertThat(said(new Observation.DarknessMatch(1500))).contains("1,500 Pt-Co");
        assertThat(said(new Observation.HeadOverCrest(20))).contains("20 mm");
        assertThat(said(new Observation.CrestAgainstMark(-4))).contains("4 mm");
        assertThat(said(new Observation.OutsideLevel(12))).contains("12 mm");
        assertThat(said(new Observation.AirFlow(140))).contains("140 L/h");
        assertThat(said(new Observation.FoamCollapse(40))).contains("40 s");
        assertThat(said(new Observation.LevelBeyondWeir(-30))).contains("30 mm");
        assertThat(said(new Observation.ReturnFlow(2100))).contains("2,100 L/h");
        assertThat(said(new Observation.Salinity(33.5))).contains("33.5");
        assertThat(said(new Observation.WaterTemperature(24.5))).contains("24.5");
    }

    @Test
    void aFullCupIsToldAsOne() {
        assertThat(said(new Observation.CupVolume(120, 12, true)))
                .isNotEqualTo(said(new Observation.CupVolume(120, 12, false)));
    }

    @Test
    void everyWordIsItsOwn() {
        Set<String> said = new HashSet<>();
        int count = 0;
        for (DarknessWord word : DarknessWord.values()) {
            said.add(said(new Observation.Darkness(word)));
            count++;
        }
        for (FoamLookWord look : FoamLookWord.values()) {
            said.add(said(new Observation.FoamLook(look)));
            count++;
        }
        for (Part part : Part.values()) {
            for (Finding finding : Finding.values()) {
                said.add(said(new Observation.Inspection(part, finding)));
                count++;
            }
        }
        assertThat(said).hasSize(count).noneMatch(String::isBlank);
    }

    private static String said(Observation observation) {
        return PhraseBook.ENGLISH_METRIC.say(ObservationWords.of(observation));
    }
}
