package io.github.weirwise.advice;

import static io.github.weirwise.advice.Situations.NOW;
import static io.github.weirwise.advice.Situations.UNIT;
import static io.github.weirwise.advice.Situations.hoursAgo;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.Weirwise;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.Part;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Patience and means of a person: what cannot be read is not asked for, what was just read not asked again. */
class StepChoiceTest {
    private static List<JournalEntry> collapsed() {
        List<JournalEntry> entries = new ArrayList<>();
        entries.add(Situations.round(hoursAgo(72), 22, 250, DarknessWord.DARK_TEA, FoamLookWord.CREAMY));
        entries.add(Situations.round(hoursAgo(48), 21, 230, DarknessWord.DARK_TEA, FoamLookWord.CREAMY));
        entries.add(Situations.round(hoursAgo(24), 20, 20, DarknessWord.COFFEE, FoamLookWord.LOW_IN_NECK));
        entries.add(Situations.round(NOW, 20, 8, DarknessWord.COFFEE, FoamLookWord.NONE));
        return entries;
    }

    private static Step step(List<JournalEntry> entries, Set<LookKind> looks) {
        AdviserOptions usual = AdviserOptions.DEFAULT;
        return Weirwise.advise(
                        UNIT,
                        UNIT.ratedSettings(205),
                        new Journal(entries),
                        NOW,
                        new AdviserOptions(usual.belief(), usual.clocks(), looks))
                .step();
    }

    @Test
    void aReadingThatCannotBeTakenIsNotAskedFor() {
        assertThat(step(collapsed(), EnumSet.allOf(LookKind.class))).isInstanceOf(Step.Look.class);
        assertThat(step(collapsed(), EnumSet.noneOf(LookKind.class))).isNotInstanceOf(Step.Look.class);
        Set<LookKind> few = EnumSet.of(LookKind.SALINITY, LookKind.AIR_FLOW);
        Step step = step(collapsed(), few);
        if (step instanceof Step.Look look) {
            assertThat(few).contains(look.what());
        }
    }

    @Test
    void whatIsPartOfEveryVisitIsNotAskedForAsAnExtra() {
        Set<LookKind> routine =
                EnumSet.of(LookKind.FUNNEL_LEVEL, LookKind.CUP_VOLUME, LookKind.DARKNESS, LookKind.FOAM_LOOK);
        assertThat(step(collapsed(), routine)).isNotInstanceOf(Step.Look.class);
    }

    @Test
    void theSameLookIsNotAskedForAgainAndAfterSomePatienceIsSpent() {
        List<JournalEntry> entries = collapsed();
        Set<LookKind> asked = EnumSet.noneOf(LookKind.class);
        Step step = step(entries, EnumSet.allOf(LookKind.class));
        while (step instanceof Step.Look look) {
            assertThat(asked.add(look.what()))
                    .as("%s is asked twice", look.what())
                    .isTrue();
            assertThat(asked).hasSizeLessThanOrEqualTo(6);
            entries.add(Reading.of(NOW, sound(look.what())));
            step = step(entries, EnumSet.allOf(LookKind.class));
        }
        assertThat(asked).hasSizeGreaterThan(1);
    }

    /** What a look shows on a unit without fault. */
    private static Observation sound(LookKind kind) {
        if (kind.part().isPresent()) {
            return new Observation.Inspection(kind.part().get(), Finding.GOOD);
        }
        return switch (kind) {
            case AIR_FLOW -> new Observation.AirFlow(150);
            case SALINITY -> new Observation.Salinity(35);
            case RETURN_FLOW -> new Observation.ReturnFlow(2200);
            case HEAD_OVER_CREST -> new Observation.HeadOverCrest(22);
            case OUTSIDE_LEVEL -> new Observation.OutsideLevel(12);
            case LEVEL_BEYOND_WEIR -> new Observation.LevelBeyondWeir(-40);
            case CREST_AGAINST_MARK -> new Observation.CrestAgainstMark(0);
            case FOAM_COLLAPSE -> new Observation.FoamCollapse(24);
            default -> throw new AssertionError("no extra reading: " + kind);
        };
    }

    @Test
    void whatIsSeenBadAndLikeliestIsPutRightWithoutAnotherLook() {
        List<JournalEntry> entries = collapsed();
        entries.add(
                Reading.of(NOW, new Observation.Inspection(Part.AIR_LINE, Finding.BAD), new Observation.AirFlow(95)));
        assertThat(step(entries, EnumSet.allOf(LookKind.class))).isEqualTo(new Step.ServicePart(Part.AIR_LINE));
    }

    @Test
    void aQuietUnitOnTargetIsHeldBecauseItIsOnTarget() {
        List<JournalEntry> entries = new ArrayList<>();
        for (int day = 5; day >= 0; day--) {
            entries.add(Situations.onTarget(hoursAgo(24.0 * day)));
        }
        assertThat(step(entries, EnumSet.noneOf(LookKind.class))).isInstanceOfSatisfying(Step.Hold.class, hold -> {
            assertThat(hold.reason()).isEqualTo(HoldReason.ON_TARGET);
            assertThat(hold.until()).isEqualTo(NOW.plus(Situations.hours(24)));
        });
    }
}
