package io.github.weirwise.advice;

import static io.github.weirwise.advice.Situations.NOW;
import static io.github.weirwise.advice.Situations.hoursAgo;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import org.junit.jupiter.api.Test;

/** What counts as seen: a flood, a part looked at, a sign that was there before. */
class SeenTest {
    private static Reading saw(double hoursAgo, Observation... observations) {
        return Reading.of(hoursAgo(hoursAgo), observations);
    }

    private static boolean flood(JournalEntry... entries) {
        return FloodSeen.lastIn(Situations.scene(205, entries)).isPresent();
    }

    @Test
    void aFloodIsAFullCupOrRunningFoamInTheNewestReadingThatTells() {
        Reading full = saw(3, new Observation.CupVolume(1000, 12, true));
        Reading streaming = saw(3, new Observation.FoamLook(FoamLookWord.STREAMING));
        Reading runny = saw(3, new Observation.FoamLook(FoamLookWord.RUNNY));
        Reading creamy = saw(2, new Observation.FoamLook(FoamLookWord.CREAMY));
        Reading level = saw(1, new Observation.FunnelLevel(40));
        assertThat(flood()).isFalse();
        assertThat(flood(full)).isTrue();
        assertThat(flood(streaming)).isTrue();
        assertThat(flood(runny)).isFalse();
        assertThat(flood(creamy)).isFalse();
        assertThat(flood(full, creamy)).isFalse();
        assertThat(flood(full, level)).isTrue();
        assertThat(flood(full, new Happening(hoursAgo(2), Happening.Kind.FED))).isTrue();
    }

    @Test
    void aPartIsLookedAtByItsInspectionOrByWhatItDoesUntilItIsServiced() {
        assertThat(looked(Part.AIR_LINE)).isFalse();
        assertThat(looked(Part.AIR_LINE, inspected(5, Part.AIR_LINE, Finding.GOOD)))
                .isTrue();
        assertThat(looked(Part.AIR_LINE, inspected(5, Part.NECK_AND_CUP, Finding.GOOD)))
                .isFalse();
        assertThat(looked(Part.RETURN_PUMP, saw(5, new Observation.ReturnFlow(2200))))
                .isTrue();
        assertThat(looked(Part.RETURN_PUMP, saw(5, new Observation.HeadOverCrest(20))))
                .isTrue();
        assertThat(looked(Part.WEIR_PLATE, saw(5, new Observation.CrestAgainstMark(0))))
                .isTrue();
        assertThat(looked(Part.FILTER_PAD, saw(5, new Observation.LevelBeyondWeir(-30))))
                .isTrue();
        assertThat(looked(Part.SALT_MIX, saw(5, new Observation.Salinity(35)))).isTrue();
        assertThat(looked(Part.SALT_MIX, saw(5, new Observation.ReturnFlow(2200))))
                .isFalse();
        assertThat(looked(
                        Part.AIR_LINE,
                        inspected(5, Part.AIR_LINE, Finding.GOOD),
                        new Service(hoursAgo(4), Part.AIR_LINE)))
                .isFalse();
        assertThat(looked(
                        Part.AIR_LINE,
                        inspected(5, Part.AIR_LINE, Finding.GOOD),
                        new Service(hoursAgo(4), Part.NECK_AND_CUP)))
                .isTrue();
    }

    private static Reading inspected(double hoursAgo, Part part, Finding finding) {
        return saw(hoursAgo, new Observation.Inspection(part, finding));
    }

    private static boolean looked(Part part, JournalEntry... entries) {
        return new Looked(Situations.of(entries)).at(part);
    }

    @Test
    void theNewestFindingSinceTheLastServiceCounts() {
        Reading bad = inspected(5, Part.AIR_LINE, Finding.BAD);
        Reading good = inspected(3, Part.AIR_LINE, Finding.GOOD);
        assertThat(new Looked(Situations.of(bad)).found(Part.AIR_LINE)).contains(Finding.BAD);
        assertThat(new Looked(Situations.of(bad, good)).found(Part.AIR_LINE)).contains(Finding.GOOD);
        assertThat(new Looked(Situations.of(bad, new Service(hoursAgo(4), Part.AIR_LINE))).found(Part.AIR_LINE))
                .isEmpty();
        assertThat(new Looked(Situations.of(bad)).found(Part.NECK_AND_CUP)).isEmpty();
        assertThat(new Looked(Situations.of(bad)).foundBad()).contains(Part.AIR_LINE);
        assertThat(new Looked(Situations.of(bad, good)).foundBad()).isEmpty();
        assertThat(new Looked(Situations.of(inspected(5, Part.AIR_LINE, Finding.DOUBTFUL))).foundBad())
                .isEmpty();
    }

    @Test
    void aPartIsFirstLookedAtWhereThatIsPossibleAndMeasuredElse() {
        assertThat(Looked.firstLook(Part.AIR_LINE)).contains(LookKind.AIR_LINE);
        assertThat(Looked.firstLook(Part.RETURN_PUMP)).contains(LookKind.RETURN_PUMP);
        assertThat(Looked.firstLook(Part.FILTER_PAD)).contains(LookKind.FILTER_PAD);
        assertThat(Looked.firstLook(Part.WEIR_PLATE)).contains(LookKind.CREST_AGAINST_MARK);
        assertThat(Looked.firstLook(Part.SALT_MIX)).contains(LookKind.SALINITY);
    }

    private static Reading off(double hoursAgo) {
        return Situations.round(hoursAgo(hoursAgo), 12, 30, DarknessWord.COFFEE, FoamLookWord.STIFF);
    }

    private static boolean firstSign(JournalEntry... entries) {
        return new Persistence(Situations.of(entries)).firstSign();
    }

    @Test
    void oneAmountOffTargetIsAFirstSignTwoAreNot() {
        assertThat(firstSign(off(0))).isTrue();
        assertThat(firstSign(Situations.onTarget(hoursAgo(24)), off(0))).isTrue();
        assertThat(firstSign(off(24), off(0))).isFalse();
        assertThat(firstSign(off(24), Situations.onTarget(NOW))).isFalse();
        assertThat(firstSign(off(24), Situations.onTarget(hoursAgo(12)), off(0)))
                .isTrue();
        assertThat(firstSign(off(1), saw(0, new Observation.FunnelLevel(12)))).isTrue();
        assertThat(firstSign()).isFalse();
    }

    @Test
    void afterAChangeThatDidNotHelpTheNextSignIsNotTheFirst() {
        assertThat(firstSign(off(60), new WeirMove(hoursAgo(50), 206, false), off(0)))
                .isFalse();
        assertThat(firstSign(off(60), new Service(hoursAgo(50), Part.AIR_LINE), off(0)))
                .isFalse();
        assertThat(firstSign(Situations.onTarget(hoursAgo(60)), new Service(hoursAgo(50), Part.AIR_LINE), off(0)))
                .as("washing on schedule is no attempt at a cure")
                .isTrue();
    }

    @Test
    void aFullCupIsOffTargetWhateverItsNumber() {
        Reading full = saw(0, new Observation.CupVolume(250, 24, true));
        assertThat(firstSign(full)).isTrue();
        assertThat(firstSign(saw(0, new Observation.CupVolume(250, 24, false)))).isFalse();
    }
}
