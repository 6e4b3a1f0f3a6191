package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.weirwise.lab.LabUnits;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A planned experiment keeps to what was allowed and tells the steepness of units that it knows nothing of. */
class LearningPlanTest {
    private static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    private static final Duration DAY = Duration.ofDays(1);
    private static final int KNOWN_DAYS = 4;
    private static final int UNITS = 60;

    /** A unit whose amount goes as a plain exponential of crest and power of air: no law of the library. */
    private static final class PlainUnit {
        private final SkimmerUnit sheet;
        private final Settings start;
        private final double slope;
        private final double airPower;
        private final Random random;

        PlainUnit(long seed) {
            random = new Random(seed);
            sheet = LabUnits.ALL.get(random.nextInt(LabUnits.ALL.size()));
            double middle = 0.5 * (sheet.weir().lowestCrestMm() + sheet.weir().highestCrestMm());
            start = sheet.ratedSettings(middle);
            slope = Math.log(1.05) + random.nextDouble() * Math.log(1.35 / 1.05);
            airPower = 1.5 + 3 * random.nextDouble();
        }

        /** A day's cup, rounded to 5 mL. */
        Reading cup(Instant at, Settings now) {
            double log = slope * (now.weirCrestMm() - start.weirCrestMm())
                    + airPower * Math.log(now.airLitresPerHour() / start.airLitresPerHour())
                    + 0.12 * random.nextGaussian();
            double ml = 5 * Math.round(sheet.target().skimmateMlPerDay() * Math.exp(log) / 5);
            boolean full = ml >= sheet.cupMl();
            return Reading.of(at, new Observation.CupVolume(Math.min(ml, sheet.cupMl()), 24, full));
        }

        List<JournalEntry> quietDays() {
            List<JournalEntry> entries = new ArrayList<>();
            for (int day = 0; day <= KNOWN_DAYS; day++) {
                entries.add(cup(START.plus(DAY.multipliedBy(day)), start));
            }
            return entries;
        }

        LearningPlan plan(LearningPlan.Wish wish) {
            return LearningPlan.of(sheet, start, new Journal(quietDays()), now(), wish)
                    .orElseThrow();
        }

        Instant now() {
            return START.plus(DAY.multipliedBy(KNOWN_DAYS));
        }

        /** The plan as a keeper runs it. */
        Belief after(LearningPlan plan) {
            List<JournalEntry> entries = new ArrayList<>(quietDays());
            Settings now = start;
            for (LearningPlan.Stage stage : plan.stages()) {
                if (stage.weirCrestMm() != now.weirCrestMm()) {
                    entries.add(new WeirMove(stage.from(), stage.weirCrestMm(), false));
                    now = now.withWeirCrestMm(stage.weirCrestMm());
                }
                if (stage.airLitresPerHour() != now.airLitresPerHour()) {
                    entries.add(new SettingChange(stage.from(), SettingChange.Knob.AIR, stage.airLitresPerHour()));
                    now = now.withAirLitresPerHour(stage.airLitresPerHour());
                }
                for (Instant at = stage.from().plus(DAY); !at.isAfter(stage.until()); at = at.plus(DAY)) {
                    entries.add(cup(at, now));
                }
            }
            return Belief.of(sheet, start, new Journal(entries), plan.end());
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void aPlanKeepsToWhatWasAllowed(boolean withAir) {
        for (long seed = 0; seed < UNITS; seed++) {
            PlainUnit unit = new PlainUnit(seed);
            LearningPlan.Wish wish = new LearningPlan.Wish(4 + (int) (seed % 10), 0.02, withAir);
            LearningPlan plan = unit.plan(wish);
            assertThat(plan.stages()).hasSizeBetween(3, 6);
            assertThat(plan.stages().get(0).from()).isEqualTo(unit.now());
            assertThat(Duration.between(unit.now(), plan.end())).isLessThanOrEqualTo(DAY.multipliedBy(wish.mostDays()));
            for (LearningPlan.Stage stage : plan.stages()) {
                assertThat(stage.floodChance()).isBetween(0.0, 0.02);
                assertThat(stage.weirCrestMm())
                        .isBetween(
                                unit.sheet.weir().lowestCrestMm(),
                                unit.sheet.weir().highestCrestMm());
                assertThat(plan.stages().get(plan.stageAt(stage.from()))).isEqualTo(stage);
            }
            assertThat(plan.stageAt(plan.end())).isEqualTo(plan.stages().size());
            assertThat(plan.slopeAfter().width())
                    .isLessThan(0.8 * plan.slopeNow().width());
            if (withAir) {
                assertThat(plan.airAfter().width()).isLessThan(plan.airNow().width());
            }
        }
    }

    @Test
    void whatIsLearnedIsTrueAboutAsOftenAsSaidAndAsNarrowAsPromised() {
        int held = 0;
        double promised = 0;
        double came = 0;
        double before = 0;
        for (long seed = 0; seed < UNITS; seed++) {
            PlainUnit unit = new PlainUnit(seed);
            LearningPlan plan = unit.plan(new LearningPlan.Wish(9, 0.02, false));
            Ledgers learned = unit.after(plan).ledgers();
            held += learned.slopePerMm().contains(unit.slope) ? 1 : 0;
            promised += Math.log(plan.slopeAfter().high() / plan.slopeAfter().low());
            came += Math.log(learned.slopePerMm().high() / learned.slopePerMm().low());
            before += Math.log(plan.slopeNow().high() / plan.slopeNow().low());
        }
        assertThat(held / (double) UNITS).as("80 %% range holds the true slope").isBetween(0.65, 1.0);
        assertThat(came / promised).as("width that came over width promised").isBetween(0.7, 1.4);
        assertThat(came / before).as("width after over width before").isLessThan(0.75);
    }

    @Test
    void aUnitThatNearlyRunsOverIsNotRaised() {
        SkimmerUnit unit = LabUnits.ALL.get(0);
        Settings start = unit.ratedSettings(unit.weir().lowestCrestMm() + 15);
        List<JournalEntry> entries = new ArrayList<>();
        for (int day = 0; day < KNOWN_DAYS; day++) {
            entries.add(Reading.of(
                    START.plus(DAY.multipliedBy(day)), new Observation.CupVolume(unit.cupMl() * 0.97, 24, false)));
        }
        LearningPlan.of(
                        unit,
                        start,
                        new Journal(entries),
                        START.plus(DAY.multipliedBy(KNOWN_DAYS)),
                        LearningPlan.Wish.USUAL)
                .ifPresent(plan -> assertThat(plan.stages())
                        .allSatisfy(stage -> assertThat(stage.weirCrestMm()).isLessThan(start.weirCrestMm())));
    }

    @Test
    void aWishOutOfItsRangeIsRefused() {
        assertThatThrownBy(() -> new LearningPlan.Wish(2, 0.02, false)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new LearningPlan.Wish(7, 0.5, false)).isInstanceOf(OutOfRangeException.class);
    }
}
