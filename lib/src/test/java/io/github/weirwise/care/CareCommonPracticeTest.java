package io.github.weirwise.care;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Warning;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Facts of the trade; all of them common practice, without a published source. */
class CareCommonPracticeTest {
    private static final PhraseBook ENGLISH = PhraseBook.ENGLISH_METRIC;

    /** Common practice: cup washed weekly or as needed, neck included, with hot water. */
    @Test
    void cupAndNeckAreWashedWeeklyWithHotWater() {
        assertThat(CareTask.WASH_NECK_AND_CUP.usualDays()).isEqualTo(7);
        assertThat(ENGLISH.say(CareTask.WASH_NECK_AND_CUP.what())).contains("hot water", "neck");
    }

    /** Common practice: filter pad rinsed weekly, replaced monthly. */
    @Test
    void thePadIsRinsedWeeklyAndReplacedMonthly() {
        assertThat(CareTask.RINSE_PAD.usualDays()).isEqualTo(7);
        assertThat(CareTask.REPLACE_PAD.usualDays()).isEqualTo(30);
    }

    /** Common practice: media at least quarterly, in salt water, without any cleaner, kept wet. */
    @Test
    void theMediaAreCleanedAtLeastQuarterlyAndGently() {
        assertThat(CareTask.CLEAN_MEDIA.limitDays().high()).isLessThanOrEqualTo(92);
        assertThat(ENGLISH.say(CareTask.CLEAN_MEDIA.what()))
                .contains("tank water", "without any cleaner", "keep it wet", "a part of");
    }

    /** Common practice: pumps cleaned monthly, impeller assembly replaced yearly. */
    @Test
    void pumpsAreCleanedMonthlyAndTheirImpellersReplacedYearly() {
        assertThat(CareTask.CLEAN_INJECTOR_PUMP.usualDays()).isEqualTo(30);
        assertThat(CareTask.CLEAN_RETURN_PUMP.usualDays()).isEqualTo(30);
        assertThat(CareTask.RENEW_IMPELLERS.usualDays()).isEqualTo(365);
    }

    /** Common practice: media never on the same day as pad and pumps. */
    @Test
    void theMediaHaveADayOfTheirOwn() {
        Instant start = Instant.parse("2026-01-01T10:00:00Z");
        CareCalendar calendar =
                CareCalendar.of(CarePlan.of(Journal.EMPTY, start), ZoneOffset.UTC, 730, EnumSet.allOf(CareTask.class));
        Set<LocalDate> media = days(calendar, Set.of(CareTask.CLEAN_MEDIA));
        Set<LocalDate> padAndPumps = days(
                calendar,
                Set.of(
                        CareTask.RINSE_PAD,
                        CareTask.REPLACE_PAD,
                        CareTask.CLEAN_INJECTOR_PUMP,
                        CareTask.CLEAN_RETURN_PUMP,
                        CareTask.RENEW_IMPELLERS));
        assertThat(media).hasSize(8).doesNotContainAnyElementsOf(padAndPumps);
    }

    /** Common practice and usual electrical advice, from memory. */
    @Test
    void allCautionsOfTheTradeAreThere() {
        String all =
                CareCaution.all().stream().map(warning -> ENGLISH.say(warning)).collect(Collectors.joining("\n"));
        assertThat(all)
                .contains("Unplug before hands go in")
                .contains("floods the floor and dilutes the salt", "cut-off", "no larger than the tank can take")
                .contains("an air line can siphon", "above the highest pump-off level", "at all times")
                .contains("less oxygen gets in: watch the animals, above all at night")
                .contains("siphon-break hole open")
                .contains("RCD (GFCI)")
                .contains("Rehearse a power cut once")
                .contains("a part at a time, in old tank water")
                .contains("same day as pad and pumps", "ammonia")
                .contains("No detergent on cup or neck:")
                .contains("Local electrical codes", "licensed electricians", "veterinarian");
    }

    @Test
    void whatMustNeverBeDoneIsSaid() {
        for (CareNever never : CareNever.values()) {
            assertThat(ENGLISH.say(never.words())).startsWith("Never ").endsWith(".");
        }
    }

    @Test
    void everyTaskInWaterSaysToUnplugFirst() {
        for (CareTask task : CareTask.values()) {
            boolean wet = task.part().isPresent() && task != CareTask.CLEAR_CUP_VENT;
            if (wet) {
                assertThat(task.cautions()).extracting(Warning::text).contains(CareCaution.UNPLUG.words());
            }
            assertThat(task.limitDays().contains(task.usualDays()))
                    .as(task.name())
                    .isTrue();
        }
    }

    private static Set<LocalDate> days(CareCalendar calendar, Set<CareTask> tasks) {
        return calendar.dates().stream()
                .filter(date -> tasks.contains(date.task()))
                .map(CareDate::day)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
