package io.github.weirwise.advice;

import static io.github.weirwise.advice.Situations.NOW;
import static io.github.weirwise.advice.Situations.UNIT;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A keeper's own brackets: what was seen at this very weir overrules what a belief expects. */
class WeirNotedTest {
    private static final double CREST_MM = 205;
    private final List<JournalEntry> entries = new ArrayList<>();

    private static Instant daysAgo(double days) {
        return NOW.minus(Duration.ofMinutes(Math.round(days * 24 * 60)));
    }

    private WeirNotedTest cup(double daysAgo, double timesWanted) {
        double ml = timesWanted * UNIT.target().skimmateMlPerDay();
        entries.add(Reading.of(daysAgo(daysAgo), new Observation.CupVolume(ml, 24, false)));
        return this;
    }

    private WeirNotedTest streams(double daysAgo) {
        entries.add(Reading.of(daysAgo(daysAgo), new Observation.FoamLook(FoamLookWord.STREAMING)));
        return this;
    }

    private WeirNotedTest moved(double daysAgo, double toMm) {
        entries.add(new WeirMove(daysAgo(daysAgo), toMm, false));
        return this;
    }

    private WeirNoted noted() {
        return Noted.of(UNIT, UNIT.ratedSettings(CREST_MM), new Journal(entries))
                .weir();
    }

    @Test
    void theWeirGoesUpHalfWayAtMostToWhereItFlooded() {
        WeirNoted weir = moved(3, 215).streams(2).moved(2, 203).cup(0.5, 0.2).noted();
        assertThat(weir.allows(6, 203, NOW)).isTrue();
        assertThat(weir.allows(7, 203, NOW)).isFalse();
        assertThat(weir.allows(7, 203, NOW.plus(Duration.ofDays(8))))
                .as("long ago")
                .isTrue();
    }

    @Test
    void aServiceOpensTheBracket() {
        streams(2).moved(2, 195);
        entries.add(new Service(daysAgo(1), Part.FILTER_PAD));
        assertThat(noted().allows(10, 195, NOW)).isTrue();
    }

    @Test
    void muchIsNotRaisedAndLittleIsNotLowered() {
        assertThat(cup(2, 1.8).cup(1, 1.9).noted().allows(2, CREST_MM, NOW)).isFalse();
        assertThat(noted().allows(-2, CREST_MM, NOW)).isTrue();
        entries.clear();
        assertThat(cup(2, 0.5).cup(1, 0.5).noted().allows(-2, CREST_MM, NOW)).isFalse();
        assertThat(noted().allows(2, CREST_MM, NOW)).isTrue();
    }

    @Test
    void oneAmountThatStandsAloneIsNoReasonToGoFar() {
        assertThat(cup(3, 1).cup(2, 1.1).cup(1, 3).noted().allows(-8, CREST_MM, NOW))
                .isFalse();
        assertThat(noted().allows(-3, CREST_MM, NOW)).isTrue();
        assertThat(cup(0.5, 2.9).noted().allows(-8, CREST_MM, NOW))
                .as("seen twice")
                .isTrue();
    }

    @Test
    void twoAmountsOnOneSideAreTwiceOut() {
        assertThat(cup(2, 0.2).cup(1, 0.3).noted().twiceOut()).isTrue();
        assertThat(cup(0.5, 3).noted().twiceOut()).isFalse();
        assertThat(cup(0.2, 2.6).noted().twiceOut()).isTrue();
        assertThat(moved(0.1, 200).noted().twiceOut()).as("at other settings").isFalse();
    }

    @Test
    void aCupOfTheHoursAfterAMoveDoesNotCount() {
        assertThat(moved(0.2, 207).cup(0.1, 1).noted().readHere()).isFalse();
        assertThat(cup(-0.2, 1).noted().readHere()).isTrue();
    }

    @Test
    void aFloodIsAnsweredBackToWhereTheUnitRanWell() {
        cup(4, 1).cup(3, 1.2).moved(2.5, CREST_MM + 4).streams(0.1);
        Advice advice =
                io.github.weirwise.Weirwise.advise(UNIT, UNIT.ratedSettings(CREST_MM), new Journal(entries), NOW);
        assertThat(advice.step())
                .isInstanceOfSatisfying(
                        Step.MakeSafe.class,
                        safe -> assertThat(safe.toCrestMm()).isEqualTo(CREST_MM));
    }
}
