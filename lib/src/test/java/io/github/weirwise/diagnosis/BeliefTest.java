package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Reason;
import io.github.weirwise.unit.FoamState;
import io.github.weirwise.unit.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a belief says about journals whose story is plain, and what it must never do. */
class BeliefTest {
    @Test
    void chancesAddUpAndTheLikeliestComesFirst() {
        Diagnosis diagnosis = Journals.diagnosis(Journals.driedOut());
        assertThat(diagnosis.states().values().stream().mapToDouble(x -> x).sum())
                .isCloseTo(1, within(1e-9));
        assertThat(diagnosis.causes().stream()
                        .mapToDouble(CauseShare::probability)
                        .sum())
                .isCloseTo(1, within(1e-9));
        for (int i = 1; i < diagnosis.causes().size(); i++) {
            assertThat(diagnosis.causes().get(i).probability())
                    .isLessThanOrEqualTo(diagnosis.causes().get(i - 1).probability());
        }
        assertThat(diagnosis.likeliest()).isEqualTo(diagnosis.causes().get(0));
        assertThat(diagnosis.probability(diagnosis.likeliest().cause()))
                .isEqualTo(diagnosis.likeliest().probability());
        assertThat(Journals.belief(Journals.driedOut()).possibilities().stream()
                        .mapToDouble(Possibility::weight)
                        .sum())
                .isCloseTo(1, within(1e-9));
    }

    @Test
    void theSameJournalAndSeedGiveTheSameAndAnotherSeedNearlyTheSame() {
        Journal journal = Journals.driedOut(new Observation.AirFlow(100));
        Diagnosis once = Journals.diagnosis(journal);
        assertThat(Journals.diagnosis(journal)).isEqualTo(once);
        Diagnosis other = Belief.of(Journals.UNIT, Journals.SET, journal, Journals.NOW, new BeliefOptions(3000, 77))
                .diagnosis();
        assertThat(other.verdict()).isEqualTo(once.verdict());
        assertThat(other.skimmateMlPerDay().low())
                .isLessThan(once.skimmateMlPerDay().high());
    }

    @Test
    void whatLiesInTheFutureIsNotKnown() {
        Journal journal = new Journal(Journals.onTarget(3));
        List<JournalEntry> more = new ArrayList<>(journal.entries());
        more.add(Journals.seen(-5, 40, 3000));
        more.add(new WeirMove(Journals.NOW.plusSeconds(60), 240, false));
        assertThat(Journals.diagnosis(new Journal(more))).isEqualTo(Journals.diagnosis(journal));
        assertThat(Journals.belief(new Journal(more)).crestMm()).isEqualTo(205);
    }

    @Test
    void theSettingsFollowTheJournal() {
        Belief belief = Journals.belief(Journal.of(
                new WeirMove(Journals.hoursAgo(50), 199, false),
                new SettingChange(Journals.hoursAgo(40), SettingChange.Knob.AIR, 140),
                new SettingChange(Journals.hoursAgo(30), SettingChange.Knob.FLOW, 2000)));
        assertThat(belief.crestMm()).isEqualTo(199);
        assertThat(belief.settings().airLitresPerHour()).isEqualTo(140);
        assertThat(belief.settings().flowLitresPerHour()).isEqualTo(2000);
        assertThat(belief.unit()).isEqualTo(Journals.UNIT);
    }

    @Test
    void withoutAReadingNothingIsNamedAndThatIsSaid() {
        Diagnosis diagnosis = Journals.diagnosis(Journal.EMPTY);
        assertThat(diagnosis.verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(diagnosis.warnings())
                .anySatisfy(warning -> assertThat(warning.text().key()).isEqualTo("diagnosis.nothingRead"));
    }

    @Test
    void aReadingThatFitsNothingIsDoubted() {
        List<JournalEntry> entries = Journals.onTarget(6);
        entries.add(Reading.of(
                Journals.NOW,
                new Observation.FunnelLevel(-150),
                new Observation.AirFlow(9000),
                new Observation.Salinity(2),
                new Observation.HeadOverCrest(250)));
        assertThat(Journals.diagnosis(new Journal(entries)).warnings())
                .anySatisfy(warning -> assertThat(warning.text().key()).isEqualTo("diagnosis.doNotFit"));
        assertThat(Journals.diagnosis(new Journal(Journals.onTarget(6))).warnings())
                .noneSatisfy(warning -> assertThat(warning.text().key()).isEqualTo("diagnosis.doNotFit"));
    }

    @Test
    void aUnitThatKeepsOnTargetIsOnTarget() {
        Diagnosis diagnosis = Journals.diagnosis(new Journal(Journals.onTarget(8)));
        assertThat(diagnosis.verdict()).isEqualTo(Verdict.ON_TARGET);
        assertThat(diagnosis.states().get(FoamState.ON_TARGET)).isGreaterThan(0.8);
        assertThat(diagnosis.submergenceMm().low()).isLessThan(23);
        assertThat(diagnosis.submergenceMm().high()).isGreaterThan(21);
        assertThat(diagnosis.skimmateMlPerDay().low()).isLessThan(270);
        assertThat(diagnosis.skimmateMlPerDay().high()).isGreaterThan(230);
    }

    @Test
    void moreReadingsNarrowWhatIsKnown() {
        Diagnosis few = Journals.diagnosis(new Journal(Journals.onTarget(1)));
        Diagnosis many = Journals.diagnosis(new Journal(Journals.onTarget(10)));
        assertThat(many.submergenceMm().high() - many.submergenceMm().low())
                .isLessThan(few.submergenceMm().high() - few.submergenceMm().low());
        assertThat(many.skimmateMlPerDay().high() / many.skimmateMlPerDay().low())
                .isLessThan(
                        few.skimmateMlPerDay().high() / few.skimmateMlPerDay().low());
    }

    /** A part that is found bad names its cause. */
    @ParameterizedTest
    @CsvSource({
        "AIR_LINE, AIR_LINE_RESTRICTED",
        "INJECTOR_PUMP, INJECTOR_PUMP_WORN",
        "NECK_AND_CUP, NECK_DIRTY",
        "SEATING, PART_SEATED_WRONG",
        "RETURN_WATER, BUBBLES_CARRIED_UNDER"
    })
    void aPartFoundBadMakesItsCauseFarLikelier(Part part, Cause cause) {
        double without = chance(cause, Journals.driedOut());
        double found = chance(cause, Journals.driedOut(new Observation.Inspection(part, Finding.BAD)));
        double sound = chance(cause, Journals.driedOut(new Observation.Inspection(part, Finding.GOOD)));
        assertThat(found).isGreaterThan(Math.min(0.9, 2 * without)).isGreaterThan(0.3);
        assertThat(sound).isLessThan(Math.max(0.02, without));
    }

    /** By many beliefs together, so that the luck of one does not decide. */
    private static double chance(Cause cause, Journal journal) {
        List<Belief> beliefs = LongStream.rangeClosed(1, 6)
                .mapToObj(seed -> Journals.belief(journal, new BeliefOptions(1500, seed)))
                .toList();
        return Belief.pooled(beliefs).diagnosis().probability(cause);
    }

    /** A measured number names its cause. */
    @Test
    void measuredNumbersNameTheirCauses() {
        assertThat(top(new Observation.AirFlow(115), new Observation.Inspection(Part.INJECTOR_PUMP, Finding.GOOD)))
                .isIn(Cause.AIR_LINE_RESTRICTED, Cause.NOZZLE_SCALED);
        assertThat(top(new Observation.Salinity(22), new Observation.Salinity(22)))
                .isEqualTo(Cause.SALINITY_LOW);
        assertThat(Journals.diagnosis(Journals.sank(8, new Observation.CrestAgainstMark(-8)))
                        .likeliest()
                        .cause())
                .isEqualTo(Cause.WEIR_SLIPPED_DOWN);
        assertThat(top(new Observation.ReturnFlow(1300), new Observation.HeadOverCrest(15)))
                .isEqualTo(Cause.RETURN_FLOW_DOWN);
    }

    private static Cause top(Observation... looks) {
        return Journals.diagnosis(Journals.driedOut(looks)).likeliest().cause();
    }

    @ParameterizedTest
    @CsvSource({
        "CONDITIONER, FOAMING_AGENT",
        "SEALANT, FOAMING_AGENT",
        "MEDICATION, MEDICATION",
        "FED_HEAVILY, FILM_BREAKER",
        "FIRST_START, BREAK_IN",
        "TOP_OFF, SALINITY_LOW",
        "ANIMAL_DIED, HIGH_LOAD"
    })
    void whatHappenedMakesItsCauseLikelier(Happening.Kind kind, Cause cause) {
        Journal quiet = new Journal(Journals.onTarget(1));
        double without = Journals.diagnosis(quiet).probability(cause);
        double with = Journals.diagnosis(quiet.with(new Happening(Journals.hoursAgo(6), kind)))
                .probability(cause);
        double longAgo = Journals.diagnosis(quiet.with(new Happening(Journals.hoursAgo(40 * 24), kind)))
                .probability(cause);
        assertThat(with).isGreaterThan(without);
        assertThat(longAgo).isLessThan(with);
    }

    @Test
    void aServiceTakesItsCauseAway() {
        Journal bad = Journals.driedOut(new Observation.Inspection(Part.AIR_LINE, Finding.BAD));
        Belief before = Journals.belief(bad);
        Belief after = Journals.belief(bad.with(new Service(Journals.hoursAgo(0.05), Part.AIR_LINE)));
        assertThat(faulty(before, Part.AIR_LINE)).isGreaterThan(0.3);
        assertThat(faulty(after, Part.AIR_LINE)).isZero();
    }

    private static double faulty(Belief belief, Part part) {
        return belief.possibilities().stream()
                .filter(each -> each.faultyParts(0.1).contains(part) && each.faultNow(part) > 0.1)
                .mapToDouble(Possibility::weight)
                .sum();
    }

    @Test
    void theReasonsNameWhatSpeaksForACauseTheStrongestFirst() {
        Diagnosis diagnosis =
                Journals.diagnosis(Journals.driedOut(new Observation.Inspection(Part.AIR_LINE, Finding.BAD)));
        CauseShare share = diagnosis.causes().stream()
                .filter(each -> each.cause() == Cause.AIR_LINE_RESTRICTED)
                .findFirst()
                .orElseThrow();
        List<Reason> because = share.evidence().because();
        assertThat(because).isNotEmpty().hasSizeLessThanOrEqualTo(4);
        assertThat(because.get(0).line().key()).startsWith("diagnosis.for.");
        assertThat(PhraseBook.ENGLISH_METRIC.say(because.get(0).line())).containsIgnoringCase("air line");
        assertThat(share.sizes().low())
                .isBetween(0.0, 1.0)
                .isLessThan(share.sizes().high());
    }

    @Test
    void aResampledBeliefIsTheSameInSmall() {
        Belief belief = Journals.belief(Journals.driedOut(new Observation.AirFlow(100)));
        List<Possibility> sample = belief.resampled(500);
        assertThat(sample)
                .hasSize(500)
                .allSatisfy(each -> assertThat(each.weight()).isEqualTo(1.0 / 500));
        double mean = belief.possibilities().stream()
                .mapToDouble(each -> each.weight() * each.now(205).submergenceMm())
                .sum();
        double small = sample.stream()
                .mapToDouble(each -> each.now(205).submergenceMm())
                .average()
                .orElseThrow();
        assertThat(small).isCloseTo(mean, within(0.4));
        assertThat(belief.effectiveCount())
                .isBetween(5.0, belief.possibilities().size() + 1e-6);
    }
}
