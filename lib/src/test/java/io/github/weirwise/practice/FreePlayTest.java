package io.github.weirwise.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankEvent;
import io.github.weirwise.tank.TankPart;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One tank, one eye, one pair of hands: what is done in free play does what it does in a session. */
class FreePlayTest {
    private static final Prediction SOME = new Prediction(Trend.MORE, Trend.MORE, 1.5, 0.8);

    /** The first lesson with nothing asked and everything offered. */
    private static Scenario lesson(List<ScenarioEvent> events) {
        Scenario lesson = ScenarioJson.builtIn("first-steps");
        return new Scenario(
                lesson.name(),
                lesson.title(),
                lesson.level(),
                lesson.teaches(),
                lesson.told(),
                lesson.unit(),
                lesson.tank(),
                new ScenarioStart(lesson.start().settings(), false, 8, 10, List.of(8.0)),
                events,
                List.of(),
                lesson.faults(),
                Offers.EVERYTHING,
                new Coaching(Guidance.NONE, List.of(), List.of(), List.of()),
                lesson.goals(),
                lesson.limits());
    }

    private static PracticeSession session() {
        return PracticeSession.begin(lesson(List.of()), SessionOptions.DEFAULT.withSeed(5));
    }

    private static FreePlay play() {
        Scenario lesson = lesson(List.of());
        return FreePlay.begin(lesson.unit(), lesson.tank(), lesson.start(), 5);
    }

    private static double amount(FreePlay play) {
        return play.truth().of(Stock.SKIMMATE_ML_PER_DAY);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 4})
    void theSameMoveGivesTheSameAmountAfterTheSameTime(double hours) {
        PracticeSession moved = session().act(new Act.MoveWeir(20), SOME);
        PracticeSession later = moved.waitFor(60 * hours - Act.Kind.MOVE_WEIR.minutes());
        FreePlay played = play().act(new Act.MoveWeir(20)).run(Duration.ofMinutes((long) (60 * hours)));
        assertThat(amount(played)).isCloseTo(later.truth().of(Stock.SKIMMATE_ML_PER_DAY), within(0.1));
        assertThat(amount(played)).isGreaterThan(1.5 * amount(play()));
        assertThat(played.rest().submergenceMm()).isCloseTo(later.truePoint().submergenceMm(), within(0.01));
        assertThat(played.now()).isEqualTo(later.now());
        assertThat(played.settings().weirCrestMm()).isEqualTo(later.markMm());
    }

    /** Each part fouled, slipped or out of place as far as the tank knows it; then its service in both. */
    @ParameterizedTest
    @EnumSource(Part.class)
    void theServiceOfAPartDoesTheSame(Part part) {
        List<TankEvent> trouble = List.of(
                new TankEvent.Fouled(8.5, TankPart.AIR_LINE, 0.3),
                new TankEvent.Fouled(8.5, TankPart.INJECTOR_PUMP, 0.2),
                new TankEvent.Fouled(8.5, TankPart.NOZZLE, 0.2),
                new TankEvent.Fouled(8.5, TankPart.NECK, 0.6),
                new TankEvent.Fouled(8.5, TankPart.PAD, 0.7),
                new TankEvent.Fouled(8.5, TankPart.STRAINER, 0.3),
                new TankEvent.CupPressure(8.5, 60),
                new TankEvent.WeirSlipped(8.5, -4),
                new TankEvent.WaterChanged(8.5, 60, 10),
                new TankEvent.OilFilm(8.5, 0.3));
        PracticeSession session = PracticeSession.begin(
                lesson(trouble.stream()
                        .map(each -> new ScenarioEvent(each, Optional.empty()))
                        .toList()),
                SessionOptions.DEFAULT.withSeed(5));
        session = session.waitFor(60).act(new Act.ServicePart(part), SOME).waitFor(60 * 30);
        FreePlay play = with(trouble)
                .run(Duration.ofMinutes(60))
                .act(new Act.ServicePart(part))
                .run(Duration.ofMinutes(60 * 30 + (long) part.work().minutes()));
        assertThat(play.now()).isEqualTo(session.now());
        assertThat(play.truth().of(Stock.NECK_FILM)).isCloseTo(session.truth().of(Stock.NECK_FILM), within(1e-4));
        assertThat(amount(play)).isCloseTo(session.truth().of(Stock.SKIMMATE_ML_PER_DAY), within(0.2));
        assertThat(play.settings().condition().injectorHealth())
                .isCloseTo(session.bench().settings().condition().injectorHealth(), within(1e-6));
        assertThat(play.settings().condition().weirSlipMm())
                .isEqualTo(session.bench().settings().condition().weirSlipMm());
        assertThat(play.rest().submergenceMm()).isCloseTo(session.truePoint().submergenceMm(), within(0.05));
    }

    private static FreePlay with(List<TankEvent> events) {
        Scenario lesson = lesson(List.of());
        return FreePlay.begin(lesson.unit(), lesson.tank(), lesson.start(), 5, events);
    }

    @Test
    void theSameEyeLooksInBoth() {
        PracticeSession session = session().waitFor(300);
        FreePlay play = play().run(Duration.ofMinutes(300));
        for (Look look :
                List.of(Look.ROUND, Look.FOAM_COLLAPSE, Look.NECK_AND_CUP, Look.CREST_AGAINST_MARK, Look.WATER_TEST)) {
            session = session.look(look);
            play = play.look(look);
            assertThat(play.noted())
                    .isEqualTo(session.log().get(session.log().size() - 1).written());
        }
    }

    @Test
    void timeRunsWhileHandsAreBusyButAKnobShowsAtOnce() {
        FreePlay play = play();
        FreePlay turned = play.setWeir(play.settings().weirCrestMm() + 8);
        assertThat(turned.now()).isEqualTo(play.now());
        assertThat(turned.rest().submergenceMm()).isGreaterThan(play.rest().submergenceMm() + 7);
        assertThat(amount(turned)).isEqualTo(amount(play));
        assertThat(turned.noted()).singleElement().isInstanceOf(WeirMove.class);
        FreePlay seen = turned.look(Look.FOAM_LOOK);
        assertThat(Duration.between(play.now(), seen.now())).isEqualTo(Duration.ofMinutes(6));
    }

    @Test
    void measuringTheCupEmptiesItAndItHoldsNoMoreThanItCan() {
        FreePlay play = play().run(Duration.ofHours(20));
        double before = play.truth().of(Stock.CUP_ML);
        FreePlay seen = play.look(Look.ROUND);
        assertThat(before).isGreaterThan(10);
        assertThat(seen.truth().of(Stock.CUP_ML)).isZero();
        assertThat(((Reading) seen.noted().get(0)).find(Observation.CupVolume.class))
                .isPresent();
        FreePlay full = play.setWeir(250).run(Duration.ofDays(20));
        assertThat(full.truth().of(Stock.CUP_ML))
                .isLessThanOrEqualTo(play.unit().cupMl() + 0.5);
        assertThat(full.truth().is(Stock.CUP_FULL)).isTrue();
    }

    @Test
    void inStillWaterOnlyTheFoamFollows() {
        SkimmerUnit unit = LanternQuay.jetty();
        Settings rated = unit.ratedSettings(215);
        FreePlay still = FreePlay.still(unit, rated);
        assertThat(still.settled()).isTrue();
        assertThat(amount(still)).isCloseTo(OperatingPoint.of(unit, rated).skimmateMlPerDay(), within(0.5));
        FreePlay turned = still.set(settings -> settings.withPracticalSalinity(28)
                .withWeirCrestMm(221)
                .withCondition(settings.condition().withNeckFouling(0.3).withSkimmableMgPerLitre(3)));
        FreePlay later = turned.run(Duration.ofDays(9));
        for (FreePlay each : List.of(turned, later)) {
            assertThat(each.settings().practicalSalinity()).isCloseTo(28, within(1e-9));
            assertThat(each.settings().condition().skimmableMgPerLitre()).isCloseTo(3, within(1e-9));
            assertThat(each.settings().condition().neckFouling()).isEqualTo(0.3);
            assertThat(each.settings().weirCrestMm()).isEqualTo(221);
        }
        assertThat(turned.settled()).isFalse();
        assertThat(later.settled()).isTrue();
        assertThat(later.truth().of(Stock.CUP_ML)).as("the cup's drain is open").isZero();
        assertThat(later.truth().of(Stock.CONTAINER_ML))
                .isGreaterThan(still.truth().of(Stock.CONTAINER_ML));
        assertThat(later.cupEmptied().truth().of(Stock.CONTAINER_ML)).isZero();
        assertThatThrownBy(() -> play().set(settings -> settings)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void aFullCanRunsOverAndWhoEmptiesItWipesUp() {
        SkimmerUnit unit = LanternQuay.jetty();
        FreePlay wet = FreePlay.still(unit, unit.ratedSettings(238)).run(Duration.ofDays(2));
        assertThat(wet.truth().is(Stock.CONTAINER_FULL)).isTrue();
        assertThat(wet.spilledLitres()).isGreaterThan(0.5);
        assertThat(wet.cupEmptied().spilledLitres()).isZero();
        assertThat(wet.cupEmptied().run(Duration.ofHours(1)).spilledLitres()).isZero();
    }

    /** The look is the time to half, not the mean life: a half is gone before a mean life is over. */
    @Test
    void aCollapseIsReadAsTheTimeToHalf() {
        FreePlay still = FreePlay.still(LanternQuay.jetty(), LanternQuay.jetty().ratedSettings(215));
        double sum = 0;
        for (int day = 0; day < 40; day++) {
            still = still.run(Duration.ofHours(5));
            Reading reading = (Reading) still.look(Look.FOAM_COLLAPSE).noted().get(0);
            sum += reading.find(Observation.FoamCollapse.class).orElseThrow().seconds();
        }
        double life = LanternQuay.jetty().traits().meanLifeSeconds();
        assertThat(sum / 40).isCloseTo(0.69 * life, within(0.07 * life));
    }
}
