package io.github.weirwise.advice;

import static io.github.weirwise.advice.Situations.NOW;
import static io.github.weirwise.advice.Situations.hoursAgo;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import org.junit.jupiter.api.Test;

/** How many changes and looks a person still grants. */
class PatienceTest {
    private static Patience after(JournalEntry... entries) {
        return new Patience(Situations.of(entries));
    }

    private static Reading dry(double hoursAgo) {
        return Situations.round(hoursAgo(hoursAgo), 15, 30, DarknessWord.COFFEE, FoamLookWord.LOW_IN_NECK);
    }

    private static Reading look(double hoursAgo, Part part) {
        return Reading.of(hoursAgo(hoursAgo), new Observation.Inspection(part, Finding.GOOD));
    }

    @Test
    void threeChangesAndFourLooksAreGranted() {
        Patience fresh = after(dry(24), dry(0));
        assertThat(fresh.changesLeft()).isEqualTo(3);
        assertThat(fresh.looksLeft()).isEqualTo(4);
    }

    @Test
    void everyChangeInVainTakesOneUntilOneIsLeft() {
        Service first = new Service(hoursAgo(90), Part.AIR_LINE);
        WeirMove second = new WeirMove(hoursAgo(60), 207, false);
        Service third = new Service(hoursAgo(30), Part.NECK_AND_CUP);
        WeirMove fourth = new WeirMove(hoursAgo(10), 210, false);
        assertThat(after(dry(100), first, dry(1)).changesLeft()).isEqualTo(2);
        assertThat(after(dry(100), first, second, dry(1)).changesLeft()).isEqualTo(1);
        assertThat(after(dry(100), first, second, third, fourth, dry(1)).changesLeft())
                .isEqualTo(1);
    }

    @Test
    void whatWasDoneBeforeTheUnitWasOnTargetCountsNoMore() {
        Service washed = new Service(hoursAgo(90), Part.NECK_AND_CUP);
        assertThat(after(washed, Situations.onTarget(hoursAgo(48)), dry(24), dry(0))
                        .changesLeft())
                .isEqualTo(3);
        Service longAgo = new Service(hoursAgo(15 * 24), Part.NECK_AND_CUP);
        assertThat(after(longAgo, dry(24), dry(0)).changesLeft()).isEqualTo(3);
    }

    @Test
    void looksAreSpentAndTwoMoreAreGrantedOnceTheChangesWere() {
        JournalEntry[] looked = {
            dry(100),
            look(99, Part.AIR_LINE),
            look(98, Part.CUP_VENT),
            look(97, Part.SEATING),
            look(96, Part.NECK_AND_CUP)
        };
        assertThat(after(looked).looksLeft()).isZero();
        assertThat(after(dry(100), look(99, Part.AIR_LINE)).looksLeft()).isEqualTo(3);
        assertThat(after(
                                dry(100),
                                look(99, Part.AIR_LINE),
                                look(98, Part.CUP_VENT),
                                look(97, Part.SEATING),
                                look(96, Part.NECK_AND_CUP),
                                new Service(hoursAgo(90), Part.AIR_LINE),
                                new Service(hoursAgo(60), Part.CUP_VENT),
                                new WeirMove(hoursAgo(30), 207, false),
                                dry(1))
                        .looksLeft())
                .isEqualTo(2);
        assertThat(after(dry(1)).looksLeft()).isEqualTo(4);
        assertThat(NOW).isAfter(hoursAgo(1));
    }
}
