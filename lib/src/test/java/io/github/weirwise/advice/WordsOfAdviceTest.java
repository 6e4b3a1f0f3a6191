package io.github.weirwise.advice;

import static io.github.weirwise.advice.Situations.NOW;
import static io.github.weirwise.advice.Situations.hours;
import static io.github.weirwise.advice.Situations.hoursAgo;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.diagnosis.CauseShare;
import io.github.weirwise.diagnosis.Outlook;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Reason;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** The words around a step rest on the belief and on nothing else: headline, likely causes, rival, doubts, ranges. */
class WordsOfAdviceTest {
    private static final List<Situation> SCENES = List.of(
            Situations.of(
                    198,
                    Situations.round(hoursAgo(24), 15, 60, DarknessWord.COFFEE, FoamLookWord.STIFF),
                    Situations.round(NOW, 15, 55, DarknessWord.COFFEE, FoamLookWord.STIFF)),
            Situations.of(
                    205,
                    Situations.round(hoursAgo(24), 20, 25, DarknessWord.COFFEE, FoamLookWord.LOW_IN_NECK),
                    Situations.round(NOW, 20, 12, DarknessWord.COFFEE, FoamLookWord.NONE)),
            Situations.of(
                    216,
                    Situations.round(hoursAgo(24), 34, 900, DarknessWord.LIGHT_TEA, FoamLookWord.RUNNY),
                    Situations.round(NOW, 34, 1000, DarknessWord.STRAW, FoamLookWord.STREAMING)),
            Situations.of(Situations.onTarget(hoursAgo(24)), Situations.onTarget(NOW)),
            Situations.of(),
            Situations.of(Reading.of(NOW, new Observation.CupVolume(60, 24, false))),
            Situations.of(Reading.of(NOW, new Observation.CupVolume(90, 24, false), new Observation.AirFlow(138))),
            Situations.of(Reading.of(NOW, new Observation.FunnelLevel(16), new Observation.CupVolume(90, 24, false))));

    private static final Step HOLD = new Step.Hold(NOW.plus(hours(24)), HoldReason.WITHIN_NOISE);

    private static Advice held(Situation situation) {
        return new AdviceWriter(situation, new StepValues(situation), Situations.scene(205)).write(HOLD);
    }

    @Test
    void twoCausesAreNamedWhenTheFirstIsNoFavourite() {
        int both = 0;
        int one = 0;
        for (Situation situation : SCENES) {
            List<CauseShare> causes = situation.diagnosis().causes();
            boolean close = causes.size() > 1
                    && (causes.get(0).probability() < 0.5
                            || causes.get(1).probability() > 0.6 * causes.get(0).probability());
            Phrase headline = held(situation).why().line();
            assertThat(headline.key()).isEqualTo(close ? "advice.why.between" : "advice.why.headline");
            assertThat(headline.values().get(1))
                    .isEqualTo(Phrase.of(causes.get(0).cause().nameKey()));
            both += close ? 1 : 0;
            one += close ? 0 : 1;
        }
        assertThat(both).isPositive();
        assertThat(one).isPositive();
    }

    @Test
    void atMostThreeCausesAreToldAndNoneThatIsUnlikely() {
        for (Situation situation : SCENES) {
            List<Reason> told = held(situation).why().because().get(2).because();
            List<CauseShare> causes = situation.diagnosis().causes();
            long wanted = causes.stream()
                    .limit(3)
                    .filter(each -> each.probability() >= 0.04)
                    .count();
            assertThat(told).hasSize((int) wanted);
            for (int i = 0; i < told.size(); i++) {
                assertThat(told.get(i).line().values().get(0))
                        .isEqualTo(Phrase.of(causes.get(i).cause().nameKey()));
            }
        }
    }

    @Test
    void theRivalIsTheBestStepOfAnotherKind() {
        for (Situation situation : SCENES) {
            StepValues values = new StepValues(situation);
            int best = -1;
            for (int i = 0; i < values.steps().size(); i++) {
                boolean other = !(values.steps().get(i) instanceof Step.Hold);
                if (other && (best < 0 || values.mean(i) > values.mean(best))) {
                    best = i;
                }
            }
            Reason choice = new AdviceWriter(situation, values, Situations.scene(205))
                    .write(HOLD)
                    .why()
                    .because()
                    .get(3);
            Reason rival = choice.because().get(choice.because().size() - 1);
            assertThat(rival.line().key()).isEqualTo("advice.why.rival");
            assertThat(rival.line().values())
                    .containsExactly(StepWords.of(values.steps().get(best), NOW));
        }
    }

    @Test
    void aRangeHoldsFourFifthsOfWhatThePossibilitiesExpect() {
        for (Situation situation : SCENES) {
            assertThat(situation.judgeHours()).isEqualTo(24);
            Expectation expectation = held(situation).expectation();
            List<Outlook> ahead = situation.sample().stream()
                    .map(each -> each.ahead(situation.crestMm(), 24, null))
                    .toList();
            double levels = share(ahead, Outlook::submergenceMm, expectation.submergenceMm());
            assertThat(levels).isBetween(0.75, 0.88);
            double amounts = share(ahead, each -> 250 * Math.exp(each.logAmount()), expectation.skimmateMlPerDay());
            assertThat(amounts).isBetween(0.72, 0.95);
            double inBand =
                    share(ahead, each -> each.flooding() ? 0 : 250 * Math.exp(each.logAmount()), new Range(100, 600));
            assertThat(expectation.chanceOnTarget()).isCloseTo(inBand, within(0.12));
        }
    }

    private static double share(List<Outlook> outlooks, ToDoubleFunction<Outlook> value, Range range) {
        return outlooks.stream()
                        .filter(each -> range.contains(value.applyAsDouble(each)))
                        .count()
                / (double) outlooks.size();
    }

    @Test
    void whatALookCouldShowLiesWhereThePossibilitiesExpectIt() {
        Situation situation = SCENES.get(1);
        spans(situation, LookKind.FUNNEL_LEVEL, i -> situation.outlooks().get(i).submergenceMm());
        spans(
                situation,
                LookKind.OUTSIDE_LEVEL,
                i -> situation.outlooks().get(i).outsideMm());
        spans(
                situation,
                LookKind.HEAD_OVER_CREST,
                i -> situation.outlooks().get(i).headMm());
        spans(situation, LookKind.AIR_FLOW, i -> situation.outlooks().get(i).airLitresPerHour());
        spans(situation, LookKind.DARKNESS, i -> situation.outlooks().get(i).darknessPtCo());
        spans(
                situation,
                LookKind.CUP_VOLUME,
                i -> 250 * Math.exp(situation.outlooks().get(i).logAmount()));
        spans(
                situation,
                LookKind.FOAM_LOOK,
                i -> 250 * Math.exp(situation.outlooks().get(i).logAmount()));
        spans(
                situation,
                LookKind.CREST_AGAINST_MARK,
                i -> situation.sample().get(i).slipMm());
        spans(situation, LookKind.FOAM_COLLAPSE, i -> situation.sample().get(i).meanLifeSeconds());
        spans(situation, LookKind.RETURN_FLOW, i -> situation.sample().get(i).flowLitresPerHour());
        spans(situation, LookKind.SALINITY, i -> 35 + situation.sample().get(i).salinityShift());
        spans(
                situation,
                LookKind.LEVEL_BEYOND_WEIR,
                i -> Math.max(
                        -40,
                        situation.sample().get(i).drownedByMm() > 0
                                ? situation.sample().get(i).drownedByMm()
                                : -40));
    }

    /** Each outcome is one of the values that the possibilities expect, and the middle one is theirs. */
    private static void spans(Situation situation, LookKind kind, ToDoubleFunction<Integer> expected) {
        double[] values = new double[situation.sample().size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = expected.applyAsDouble(i);
        }
        java.util.Arrays.sort(values);
        List<Double> shown = new LookOutcomes(situation)
                .of(kind).stream().map(WordsOfAdviceTest::number).toList();
        for (double each : shown) {
            assertThat(java.util.Arrays.stream(values)
                            .map(value -> Math.abs(value - each))
                            .min()
                            .orElseThrow())
                    .as("%s shows %s", kind, each)
                    .isLessThan(1e-6);
        }
        double middle = values[values.length / 2];
        assertThat(shown).as("%s around %s", kind, middle).anyMatch(each -> Math.abs(each - middle) < 1e-6);
    }

    private static double number(Observation observation) {
        if (observation instanceof Observation.FunnelLevel each) {
            return each.mm();
        }
        if (observation instanceof Observation.OutsideLevel each) {
            return each.mm();
        }
        if (observation instanceof Observation.HeadOverCrest each) {
            return each.mm();
        }
        if (observation instanceof Observation.CrestAgainstMark each) {
            return each.mm();
        }
        if (observation instanceof Observation.LevelBeyondWeir each) {
            return each.mm();
        }
        if (observation instanceof Observation.AirFlow each) {
            return each.litresPerHour();
        }
        if (observation instanceof Observation.ReturnFlow each) {
            return each.litresPerHour();
        }
        if (observation instanceof Observation.CupVolume each) {
            return each.mlPerDay();
        }
        if (observation instanceof Observation.DarknessMatch each) {
            return each.ptCo();
        }
        if (observation instanceof Observation.FoamCollapse each) {
            return each.seconds();
        }
        return ((Observation.Salinity) observation).practicalSalinity();
    }

    private static boolean longSeen(JournalEntry... entries) {
        return new Persistence(Situations.of(entries)).longSeen();
    }

    /** Three days without anything having been done make a state that is more than weather. */
    @Test
    void threeAmountsSinceTheLastChangeAreALongLook() {
        Reading[] days = new Reading[8];
        for (int i = 0; i < days.length; i++) {
            days[i] = Situations.onTarget(hoursAgo(24.0 * (days.length - 1 - i)));
        }
        assertThat(longSeen(days[6], days[7])).isFalse();
        assertThat(longSeen(days[5], days[6], days[7])).isTrue();
        assertThat(longSeen(days[5], Reading.of(hoursAgo(30), new Observation.FunnelLevel(22)), days[7]))
                .isFalse();
        WeirMove move = new WeirMove(hoursAgo(24 * 2.5), 206, false);
        assertThat(longSeen(days[3], days[4], move, days[5], days[6])).isFalse();
        assertThat(longSeen(days[3], days[4], move, days[5], days[6], days[7])).isTrue();
        Happening fed = new Happening(hoursAgo(24 * 4.5), Happening.Kind.FED_HEAVILY);
        assertThat(longSeen(days[0], days[1], days[2], fed, days[3], days[4], days[5], days[6]))
                .isFalse();
        assertThat(longSeen(days[0], days[1], days[2], fed, days[3], days[4], days[5], days[6], days[7]))
                .isTrue();
        Happening salted = new Happening(hoursAgo(24 * 4.5), Happening.Kind.TOP_OFF);
        assertThat(longSeen(days[0], days[1], days[2], salted, days[3])).isTrue();
    }
}
