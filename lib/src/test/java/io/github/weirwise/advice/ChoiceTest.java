package io.github.weirwise.advice;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.diagnosis.RandomJournals;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The step goes the way that a keeper would go, and the efforts and looks that a keeper states are kept to. */
class ChoiceTest {
    private static final SkimmerUnit UNIT = FirstRoundUnits.middle();
    private static final int JOURNALS = 30;
    private static final double DEAREST = 100;

    private static Advice advise(AdviserOptions options, Journal journal, Instant now) {
        return new Adviser(options).advise(UNIT, UNIT.ratedSettings(RandomJournals.CREST_MM), journal, now);
    }

    private static Step chosen(AdviserOptions options, Journal journal) {
        Instant now = journal.entries().isEmpty()
                ? RandomJournals.START
                : journal.entries().get(journal.entries().size() - 1).at().plusSeconds(1800);
        GuardScene scene =
                GuardScene.of(UNIT, UNIT.ratedSettings(RandomJournals.CREST_MM), journal, now, options.looks());
        Belief belief = Belief.of(UNIT, UNIT.ratedSettings(RandomJournals.CREST_MM), journal, now);
        return new Choice(belief, scene, options).step();
    }

    private static Journal sound(double levelMm, double mlPerDay, DarknessWord dark, FoamLookWord look) {
        List<JournalEntry> entries = new ArrayList<>();
        entries.add(Situations.round(Situations.hoursAgo(48), levelMm, mlPerDay, dark, look));
        entries.add(Situations.round(Situations.hoursAgo(24), levelMm, mlPerDay, dark, look));
        List<Observation> good = new ArrayList<>();
        for (Part part : Part.values()) {
            good.add(new Observation.Inspection(part, Finding.GOOD));
        }
        good.add(new Observation.AirFlow(150));
        good.add(new Observation.ReturnFlow(2200));
        good.add(new Observation.Salinity(35));
        good.add(new Observation.CrestAgainstMark(0));
        entries.add(new Reading(Situations.NOW, "", good));
        entries.add(Situations.round(Situations.NOW, levelMm, mlPerDay, dark, look));
        return new Journal(entries);
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 20, 40})
    void aSoundUnitThatIsClearlyDryIsRaisedByTenMillimetresAtMost(double mlPerDay) {
        Journal dry = sound(15, mlPerDay, DarknessWord.COFFEE, FoamLookWord.STIFF);
        assertThat(advise(AdviserOptions.DEFAULT, dry, Situations.NOW).step())
                .isInstanceOfSatisfying(
                        Step.MoveWeir.class, move -> assertThat(move.byMm()).isBetween(0.5, 10.0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {780, 900, 980})
    void aSoundUnitThatIsClearlyWetIsLowered(double mlPerDay) {
        Journal wet = sound(29, mlPerDay, DarknessWord.LIGHT_TEA, FoamLookWord.RUNNY);
        assertThat(advise(AdviserOptions.DEFAULT, wet, Situations.NOW).step())
                .isInstanceOfSatisfying(
                        Step.MoveWeir.class, move -> assertThat(move.byMm()).isNegative());
    }

    @Test
    void theDrierItIsTheFartherItIsRaised() {
        double before = 0;
        for (double mlPerDay : new double[] {70, 40, 20}) {
            Step step = chosen(AdviserOptions.DEFAULT, sound(18, mlPerDay, DarknessWord.COFFEE, FoamLookWord.STIFF));
            double mm = step instanceof Step.MoveWeir move ? move.byMm() : 0;
            assertThat(mm).as("%s mL/day", mlPerDay).isGreaterThanOrEqualTo(before);
            before = mm;
        }
        assertThat(before).isPositive();
    }

    /** A look that is worth its effort is worth it at a smaller one too. */
    @Test
    void theDearerLooksAreTheFewerAreAskedFor() {
        double[] efforts = {0, 0.05, 0.1, 0.2, DEAREST};
        int[] looks = new int[efforts.length];
        for (long seed = 0; seed < JOURNALS; seed++) {
            Journal journal = RandomJournals.of(seed);
            for (int i = 0; i < efforts.length; i++) {
                AdviserOptions options = AdviserOptions.DEFAULT.withEfforts(new Efforts(1, 3, 0.1, efforts[i], 1, 0.1));
                looks[i] += chosen(options, journal) instanceof Step.Look ? 1 : 0;
            }
        }
        for (int i = 1; i < looks.length; i++) {
            assertThat(looks[i]).as("at an effort of %s", efforts[i]).isLessThanOrEqualTo(looks[i - 1]);
        }
        assertThat(looks[0]).as("free against dear").isGreaterThan(looks[efforts.length - 1]);
    }

    @Test
    void theDearerMovesAreTheFewerAreMade() {
        int before = Integer.MAX_VALUE;
        for (double move : new double[] {0, 0.1, 0.5, DEAREST}) {
            int moves = 0;
            AdviserOptions options = AdviserOptions.DEFAULT
                    .withLooks(Set.of(LookKind.CUP_VOLUME))
                    .withEfforts(new Efforts(1, 3, move, 0.1, 1, 0.1));
            for (long seed = 0; seed < JOURNALS; seed++) {
                moves += chosen(options, RandomJournals.of(seed)) instanceof Step.MoveWeir ? 1 : 0;
            }
            assertThat(moves).as("at an effort of %s", move).isLessThanOrEqualTo(before);
            before = moves;
        }
        assertThat(before).isZero();
    }

    @Test
    void whoCanTakeNoLookIsAskedForNone() {
        AdviserOptions none = AdviserOptions.DEFAULT.withLooks(Set.of());
        for (long seed = 0; seed < JOURNALS; seed++) {
            assertThat(chosen(none, RandomJournals.of(seed)))
                    .as("seed %d", seed)
                    .isNotInstanceOf(Step.Look.class);
        }
    }

    @Test
    void whoCanTakeNoLookIsAskedForNoneByTheWholeAdvice() {
        AdviserOptions none = AdviserOptions.DEFAULT.withLooks(Set.of());
        for (long seed = 0; seed < JOURNALS; seed++) {
            Journal journal = RandomJournals.of(seed);
            Instant now =
                    journal.entries().get(journal.entries().size() - 1).at().plusSeconds(1800);
            assertThat(advise(none, journal, now).step()).as("seed %d", seed).isNotInstanceOf(Step.Look.class);
        }
    }

    @Test
    void anEmptyJournalIsNotAnsweredByALookThatCannotBeTaken() {
        AdviserOptions none = AdviserOptions.DEFAULT.withLooks(Set.of());
        assertThat(advise(none, Journal.EMPTY, Situations.NOW).step()).isNotInstanceOf(Step.Look.class);
    }

    @Test
    void nothingIsTouchedWhileAChangeSettlesOrAUnitBreaksIn() {
        Reading dry = Situations.round(Situations.hoursAgo(3), 16, 40, DarknessWord.COFFEE, FoamLookWord.STIFF);
        assertThat(chosen(AdviserOptions.DEFAULT, new Journal(List.of(dry, moved(dry.at())))))
                .isInstanceOfSatisfying(
                        Step.Hold.class, hold -> assertThat(hold.reason()).isEqualTo(HoldReason.STILL_SETTLING));
        Happening started = new Happening(Situations.hoursAgo(30), Happening.Kind.FIRST_START);
        assertThat(chosen(AdviserOptions.DEFAULT, new Journal(List.of(started, dry))))
                .isInstanceOfSatisfying(
                        Step.Hold.class, hold -> assertThat(hold.reason()).isEqualTo(HoldReason.BREAKING_IN));
    }

    private static WeirMove moved(Instant at) {
        return new WeirMove(at.plusSeconds(60), RandomJournals.CREST_MM + 2, false);
    }

    @Test
    void aPartMayBeServicedWhenItWasSeenBadAndNotWhenJustServiced() {
        Reading bad = Reading.of(Situations.hoursAgo(3), new Observation.Inspection(Part.CUP_VENT, Finding.BAD));
        assertThat(mayService(bad)).contains(Part.CUP_VENT);
        assertThat(mayService(bad, new Service(Situations.hoursAgo(2), Part.CUP_VENT)))
                .doesNotContain(Part.CUP_VENT);
        assertThat(mayService(Situations.onTarget(Situations.hoursAgo(3)))).doesNotContain(Part.CUP_VENT);
    }

    @Test
    void overdueUpkeepMayBeDoneWithoutALook() {
        Service monthAgo = new Service(Situations.hoursAgo(24 * 40), Part.NECK_AND_CUP);
        assertThat(mayService(monthAgo, Situations.onTarget(Situations.hoursAgo(1))))
                .contains(Part.NECK_AND_CUP);
        Service yesterday = new Service(Situations.hoursAgo(24), Part.NECK_AND_CUP);
        assertThat(mayService(yesterday, Situations.onTarget(Situations.hoursAgo(1))))
                .doesNotContain(Part.NECK_AND_CUP);
    }

    private static Set<Part> mayService(JournalEntry... entries) {
        Belief belief = Belief.of(
                UNIT, UNIT.ratedSettings(RandomJournals.CREST_MM), new Journal(List.of(entries)), Situations.NOW);
        return MayService.parts(belief, Situations.scene(RandomJournals.CREST_MM, entries));
    }
}
