package io.github.weirwise.demo.picture;

import static io.github.weirwise.demo.picture.Painted.CREST_MM;
import static io.github.weirwise.demo.picture.Painted.JETTY;
import static io.github.weirwise.demo.picture.Painted.amount;
import static io.github.weirwise.demo.picture.Painted.collecting;
import static io.github.weirwise.demo.picture.Painted.distance;
import static io.github.weirwise.demo.picture.Painted.lightness;
import static io.github.weirwise.demo.picture.Painted.scene;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.SkimmateColour;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.unit.FoamTraits;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.awt.Color;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is seen of the foam is what was computed: its top, its tone, its bubbles, its cup, over a sweep of states. */
class FoamPictureTest {
    private static final double PX = 2;
    private static final int TONE = 9;

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.5, 2, 3})
    void dryFoamIsSeenToBreakWhereItWasComputed(double scale) {
        for (SkimmerUnit unit : LanternQuay.units()) {
            Settings settings = unit.ratedSettings(
                    (unit.weir().lowestCrestMm() + unit.weir().highestCrestMm()) / 2);
            for (double log : new double[] {-2.8, -3.6, -4.5, -6}) {
                Scene scene = scene(unit, settings, unit.target().skimmateMlPerDay() * Math.exp(log), CupFill.EMPTY);
                Painted seen = Painted.of(scene, scale, Palette.LIGHT);
                assertThat(seen.sight().topMm()).isLessThan(unit.column().lipMm());
                assertThat(seen.seenTopMm() * seen.view().pxPerMm())
                        .as("%s at %s", unit.name(), log)
                        .isCloseTo(seen.sight().topMm() * seen.view().pxPerMm(), within(PX));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 2, 3})
    void theMeanToneIsTheComputedOne(double scale) {
        for (Palette palette : List.of(Palette.LIGHT, Palette.DARK)) {
            for (double ml : new double[] {20, 60, 205, 600, 1800}) {
                Painted seen = Painted.of(amount(ml), scale, palette);
                Color wanted = FoamTone.of(seen.sight(), palette).mean();
                double lip = JETTY.column().lipMm();
                assertThat(distance(seen.mean(lip - 90, lip - 12), wanted))
                        .as("%s mL/day, dark %s", ml, palette.dark())
                        .isLessThanOrEqualTo(TONE);
            }
        }
    }

    @Test
    void moreNeverStandsLowerAndWetterIsPalerAndFiner() {
        SplittableRandom dice = new SplittableRandom(7);
        for (SkimmerUnit unit : LanternQuay.units()) {
            for (int i = 0; i < 200; i++) {
                double crest =
                        dice.nextDouble(unit.weir().lowestCrestMm(), unit.weir().highestCrestMm());
                Settings settings = unit.ratedSettings(crest);
                double less = unit.target().skimmateMlPerDay() * Math.exp(dice.nextDouble(-8, 3));
                double more = less * Math.exp(dice.nextDouble(0, 2));
                Sight dry = Sight.of(scene(unit, settings, less, CupFill.EMPTY));
                Sight wet = Sight.of(scene(unit, settings, more, CupFill.EMPTY));
                assertThat(wet.topMm()).isGreaterThanOrEqualTo(dry.topMm() - 1e-6);
                assertThat(wet.lipCellMm()).isLessThanOrEqualTo(dry.lipCellMm());
                assertThat(wet.foamPtCo()).isLessThanOrEqualTo(dry.foamPtCo() * 1.000001);
                for (Palette palette : List.of(Palette.LIGHT, Palette.DARK)) {
                    assertThat(lightness(FoamTone.of(wet, palette).mean()))
                            .isGreaterThanOrEqualTo(
                                    lightness(FoamTone.of(dry, palette).mean()) - 1);
                }
            }
        }
    }

    @Test
    void wetFoamIsSeenPalerThanDryFoam() {
        double lip = JETTY.column().lipMm();
        double before = 0;
        for (double ml : new double[] {25, 80, 205, 500, 1500}) {
            double light = lightness(Painted.of(amount(ml), 2, Palette.LIGHT).mean(lip - 90, lip - 12));
            assertThat(light).as(ml + " mL/day").isGreaterThan(before);
            before = light;
        }
    }

    @Test
    void sixStatesOfTheFoamAreSixWords() {
        double wanted = JETTY.target().skimmateMlPerDay();
        for (FoamLookWord word : FoamLookWord.values()) {
            double log = (word.amountLog().low() + word.amountLog().high()) / 2;
            assertThat(Sight.of(amount(wanted * Math.exp(log))).look()).isEqualTo(word);
        }
    }

    @Test
    void theLevelAnswersAtOnceAndTheFoamStaysUntilTheAmountFollows() {
        Sight before = Sight.of(scene(JETTY, JETTY.ratedSettings(CREST_MM), 205, CupFill.EMPTY));
        Sight raised = Sight.of(scene(JETTY, JETTY.ratedSettings(CREST_MM + 8), 205, CupFill.EMPTY));
        assertThat(raised.footMm()).isCloseTo(before.footMm() + 8, within(1.0));
        assertThat(raised.look()).isEqualTo(before.look());
        assertThat(raised.foamPtCo()).isCloseTo(before.foamPtCo(), within(0.25 * before.foamPtCo()));
    }

    @Test
    void aFullCupAlarmsInWordsAndInTheDrawing() {
        Scene almost = scene(JETTY, JETTY.ratedSettings(CREST_MM), 205, CupFill.of(0.9 * JETTY.cupMl(), 2000));
        Scene full = scene(JETTY, JETTY.ratedSettings(CREST_MM), 205, CupFill.of(JETTY.cupMl(), 2000));
        assertThat(Painted.of(almost, 1, Palette.LIGHT).has(Palette.LIGHT.danger()))
                .isFalse();
        assertThat(Painted.of(full, 1, Palette.LIGHT).has(Palette.LIGHT.danger()))
                .isTrue();
        assertThat(Words.ENGLISH.say(PictureWords.of(full))).startsWith("The cup is full");
    }

    @Test
    void everyAlarmIsDrawnAndSaid() {
        Settings rated = JETTY.ratedSettings(CREST_MM);
        List<Scene> scenes = List.of(
                collecting(4000, 0),
                scene(JETTY, rated, 205, CupFill.of(950, 2000)),
                collecting(400, 0.3),
                scene(JETTY, rated, 9000, CupFill.EMPTY),
                scene(JETTY, rated.withAirLitresPerHour(0), 0, CupFill.EMPTY),
                scene(JETTY, rated.withAirLitresPerHour(3200), 205, CupFill.EMPTY),
                scene(JETTY, rated.withCondition(rated.condition().withLevelBeyondWeirMm(180)), 205, CupFill.EMPTY));
        for (Sight.Alarm alarm : Sight.Alarm.values()) {
            Scene scene = scenes.get(alarm.ordinal());
            assertThat(Sight.of(scene).alarms()).contains(alarm);
            assertThat(Words.ENGLISH.say(PictureWords.of(scene))).contains(Words.ENGLISH.of("picture.alarm." + alarm));
            assertThat(Painted.of(scene, 1, Palette.DARK).has(Palette.DARK.danger()))
                    .as(alarm.toString())
                    .isTrue();
        }
        assertThat(Sight.of(amount(205)).alarms()).isEmpty();
    }

    @Test
    void theCupShowsItsLayersInTheirOrder() {
        CupFill cup = CupFill.of(200, 700).risenTo(400, 1500).risenTo(500, 1300);
        assertThat(cup.layers()).hasSize(3);
        Painted seen = Painted.of(scene(JETTY, JETTY.ratedSettings(CREST_MM), 205, cup), 2, Palette.LIGHT);
        Section section = new Section(JETTY);
        double deep = section.lipMm() - 3 - section.cupFloorMm;
        double below = 0;
        for (CupFill.Layer layer : cup.layers()) {
            double middle = section.cupFloorMm + deep * (below + 0.6 * layer.ml()) / JETTY.cupMl();
            assertThat(seen.at(section.cupRightMm - 7, middle)).isEqualTo(SkimmateColour.of(layer.ptCo()));
            below += layer.ml();
        }
    }

    @Test
    void amberStaysAmberWhenALittleDarkIsAdded() {
        CupFill amber = CupFill.of(93, 900);
        double mixed = (93 * 900 + 7 * 6000) / 100.0;
        CupFill after = amber.risenTo(100, mixed);
        assertThat(after.ml()).isCloseTo(100, within(1e-9));
        assertThat(after.ptCo()).isCloseTo(mixed, within(1e-6));
        assertThat(after.layers().get(0)).isEqualTo(amber.layers().get(0));
        assertThat(after.layers().get(1).ptCo()).isCloseTo(6000, within(1e-6));
    }

    @Test
    void layersKeepVolumeAndColourHoweverManyCameIn() {
        SplittableRandom dice = new SplittableRandom(11);
        CupFill cup = CupFill.EMPTY;
        double ml = 0;
        double colour = 0;
        for (int i = 0; i < 300; i++) {
            double more = dice.nextDouble(0.5, 20);
            double ptCo = dice.nextDouble(50, 9000);
            colour = (ml * colour + more * ptCo) / (ml + more);
            ml += more;
            cup = cup.risenTo(ml, colour);
            assertThat(cup.ml()).isCloseTo(ml, within(1e-6));
            assertThat(cup.ptCo()).isCloseTo(colour, within(1e-3));
            assertThat(cup.layers()).hasSizeLessThanOrEqualTo(8);
        }
        assertThat(cup.risenTo(0, 0).layers()).isEmpty();
    }

    @Test
    void lessAirDoesNotMoveTheWantedLevels() {
        Settings rated = JETTY.ratedSettings(CREST_MM);
        Scene clean = scene(JETTY, rated, 205, CupFill.EMPTY);
        Scene closed = scene(JETTY, rated.withCondition(rated.condition().withAirLineOpening(0.6)), 60, CupFill.EMPTY);
        assertThat(closed.bandMm()).isEqualTo(clean.bandMm());
        assertThat(clean.bandMm().contains(JETTY.target().submergenceMm())).isTrue();
    }

    @Test
    void aFloodedColumnIsFrothAndSendsMicrobubblesOn() {
        Settings rated = JETTY.ratedSettings(CREST_MM);
        Sight calm = Sight.of(scene(JETTY, rated, 205, CupFill.EMPTY));
        Sight flooded = Sight.of(scene(JETTY, rated.withAirLitresPerHour(3200), 205, CupFill.EMPTY));
        assertThat(calm.froth()).isFalse();
        assertThat(calm.microbubbles()).isZero();
        assertThat(flooded.froth()).isTrue();
        assertThat(flooded.microbubbles()).isEqualTo(1);
        FoamTraits t = JETTY.traits();
        SkimmerUnit fed = JETTY.withTraits(new FoamTraits(
                t.meanLifeSeconds(),
                t.lifeShape(),
                t.freshBubbleMm(),
                t.lipBubbleMm(),
                t.filmMobility(),
                t.drainageExponent(),
                t.holdupExponent(),
                t.meanFoamLiquidFraction(),
                t.weightOnWater(),
                0.15,
                t.lipAnswer()));
        assertThat(Sight.of(scene(fed, rated, 205, CupFill.EMPTY)).microbubbles())
                .as("water that goes down through the column takes the finest along")
                .isBetween(0.05, 0.95);
    }
}
