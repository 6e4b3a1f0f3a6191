package io.github.weirwise.demo.picture;

import static io.github.weirwise.demo.picture.Painted.CREST_MM;
import static io.github.weirwise.demo.picture.Painted.HEIGHT;
import static io.github.weirwise.demo.picture.Painted.JETTY;
import static io.github.weirwise.demo.picture.Painted.WIDTH;
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
import io.github.weirwise.unit.Settings;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Foam that creeps, and what is seen beside the foam: container, floor, air line, filter, outlet. */
class MovingPictureTest {
    private static final double PX = 2;
    private static final double MIDDLE_OF_CAN_MM = -65;

    /** Pixels between two heights of the neck, as lightness; row by row. */
    private static double[] neckRows(BufferedImage image, View view) {
        Section section = new Section(JETTY);
        int left = (int) view.x(section.axisMm - section.radiusAt(section.lipMm()) + 3);
        int right = (int) view.x(section.axisMm + section.radiusAt(section.lipMm()) - 3);
        int top = (int) view.y(section.lipMm() - 8);
        int foot = (int) view.y(section.lipMm() - 85);
        double[] all = new double[(foot - top) * (right - left)];
        for (int i = 0; i < all.length; i++) {
            all[i] = lightness(new Color(image.getRGB(left + i % (right - left), top + i / (right - left))));
        }
        return all;
    }

    @ParameterizedTest
    @ValueSource(doubles = {80, 205, 600})
    void foamCreepsUpTheNeckAtTheComputedSpeed(double ml) {
        UnitPicture picture = new UnitPicture(amount(ml), Words.ENGLISH, Palette.LIGHT);
        picture.setSize(WIDTH, HEIGHT);
        picture.name(false);
        BufferedImage first = shown(picture);
        double computedMm = Sight.CREEP_DRAWN_TIMES * Sight.of(amount(ml)).creepMmPerMin() / 60;
        double wantedPx = picture.view().length(computedMm);
        picture.animate(1);
        double[] before = neckRows(first, picture.view());
        double[] after = neckRows(shown(picture), picture.view());
        Section section = new Section(JETTY);
        int wide = (int) picture.view().x(section.axisMm + section.radiusAt(section.lipMm()) - 3)
                - (int) picture.view().x(section.axisMm - section.radiusAt(section.lipMm()) + 3);
        int best = 0;
        double least = Double.MAX_VALUE;
        for (int up = 0; up < 30; up++) {
            double sum = 0;
            int count = 0;
            for (int i = 0; i + up * wide < before.length; i++) {
                sum += Math.abs(before[i + up * wide] - after[i]);
                count++;
            }
            if (sum / count < least) {
                least = sum / count;
                best = up;
            }
        }
        assertThat((double) best).isCloseTo(wantedPx, within(PX));
        assertThat(wantedPx).as("it can be seen to move").isGreaterThan(1.5);
    }

    private static BufferedImage shown(UnitPicture picture) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        picture.paint(graphics);
        graphics.dispose();
        return image;
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 2, 3})
    void whatWasSpilledLiesOnTheFloorAsWideAsItSpreads(double scale) {
        Section section = new Section(JETTY);
        double row = section.floorMm - 3.5;
        for (double litres : new double[] {0, 0.01, 0.015, 0.025}) {
            Painted seen = Painted.of(collecting(400, litres), scale, Palette.LIGHT);
            double dryUpTo = -121;
            while (dryUpTo < MIDDLE_OF_CAN_MM && distance(seen.at(dryUpTo, row), Palette.LIGHT.paper()) <= 12) {
                dryUpTo += 0.25;
            }
            double computed = litres > 0 ? section.puddle(litres).getMinX() : MIDDLE_OF_CAN_MM;
            assertThat(seen.view().length(dryUpTo))
                    .as(litres + " L")
                    .isCloseTo(seen.view().length(computed), within(PX));
        }
        assertThat(section.puddle(1.0).getWidth())
                .isGreaterThan(section.puddle(0.1).getWidth());
    }

    @Test
    void theContainerFillsAndItsColourIsThatOfWhatIsInIt() {
        Section section = new Section(JETTY);
        double beside = section.canLeftMm + 8;
        for (double ml : new double[] {400, 1500, 3000}) {
            Painted seen = Painted.of(collecting(ml, 0), 2, Palette.LIGHT);
            double level = section.floorMm + Section.CAN_DEEP_MM * ml / 4000;
            assertThat(seen.at(beside, level - 2)).isEqualTo(SkimmateColour.of(1500));
            assertThat(seen.at(beside, level + 2)).isEqualTo(Palette.LIGHT.paper());
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 2, 3})
    void saltGrowsAtTheEndOfTheAirLineTheMoreItIsClosed(double scale) {
        Settings rated = JETTY.ratedSettings(CREST_MM);
        Section section = new Section(JETTY);
        for (Palette palette : List.of(Palette.LIGHT, Palette.DARK)) {
            double before = -1;
            for (double closed : new double[] {0, 0.2, 0.5, 0.8}) {
                var condition = rated.condition().withAirLineOpening(1 - closed);
                Painted clean = Painted.of(amount(205), scale, palette);
                Painted seen =
                        Painted.of(scene(JETTY, rated.withCondition(condition), 205, CupFill.EMPTY), scale, palette);
                assertThat(seen.sight().saltCrust()).isCloseTo(closed, within(1e-9));
                double changed = changedMm2(clean, seen, section.airEndMm(), 16);
                assertThat(changed)
                        .as("closed by %s, dark %s", closed, palette.dark())
                        .isGreaterThan(before);
                before = changed + (closed > 0 ? 4 : 0);
            }
        }
    }

    /** Area round a place that looks otherwise in one picture than in another. */
    private static double changedMm2(Painted one, Painted other, java.awt.geom.Point2D round, double reachMm) {
        double sum = 0;
        for (double x = round.getX() - reachMm; x < round.getX() + reachMm; x += 0.5) {
            for (double z = round.getY() - reachMm; z < round.getY() + reachMm; z += 0.5) {
                sum += distance(one.at(x, z), other.at(x, z)) > 12 ? 0.25 : 0;
            }
        }
        return sum;
    }

    @Test
    void frothFillsTheColumnAndMicrobubblesTheOutletOnlyWhereTheyWereComputed() {
        Settings rated = JETTY.ratedSettings(CREST_MM);
        Section section = new Section(JETTY);
        for (Palette palette : List.of(Palette.LIGHT, Palette.DARK)) {
            Painted calm = Painted.of(amount(205), 2, palette);
            Painted flooded =
                    Painted.of(scene(JETTY, rated.withAirLitresPerHour(3200), 205, CupFill.EMPTY), 2, palette);
            assertThat(flooded.sight().froth()).isTrue();
            double foot = section.column().openingMm() + 20;
            assertThat(distance(calm.mean(foot, foot + 60), flooded.mean(foot, foot + 60)))
                    .as("the column is white instead of blue")
                    .isGreaterThan(18);
            var outlet = new java.awt.geom.Point2D.Double(section.beyondRightMm - 12, section.sumpFloorMm + 50);
            assertThat(changedMm2(calm, flooded, outlet, 10))
                    .as("specks in the sump")
                    .isGreaterThan(4);
        }
    }

    @Test
    void filmSaltAndStandingWaterAreSeenTheMoreThereIs() {
        Settings rated = JETTY.ratedSettings(CREST_MM);
        Section section = new Section(JETTY);
        double left = section.beyondLeftMm + 20;
        int before = 0;
        for (double share : new double[] {0, 0.3, 0.6, 0.9}) {
            var condition =
                    rated.condition().withNeckFouling(share).withLevelBeyondWeirMm(section.padTopMm + 3 + 40 * share);
            Painted seen =
                    Painted.of(scene(JETTY, rated.withCondition(condition), 205, CupFill.EMPTY), 2, Palette.LIGHT);
            int brown = 0;
            for (double z = section.lipMm() - 60; z < section.lipMm() - 4; z += 0.5) {
                for (double x = 1.5; x < 9; x += 0.5) {
                    brown += lightness(seen.at(section.axisMm - section.radiusAt(z) + x, z)) < 170 ? 1 : 0;
                }
            }
            assertThat(brown).as("film " + share).isGreaterThanOrEqualTo(before + (share > 0 ? 20 : 0));
            before = brown;
            Color below = seen.at(left, section.padTopMm + seen.sight().padWaterMm() - 1.6);
            Color above = seen.at(left, section.padTopMm + seen.sight().padWaterMm() + 3);
            assertThat(below).as("water stands up to here").isNotEqualTo(above);
            assertThat(above).isEqualTo(Palette.LIGHT.paper());
        }
    }

    @Test
    void foamThatLagsBehindCreepsAtTheSpeedOfItsAmount() {
        double rest = amount(205).point().skimmateMlPerDay();
        double creep = amount(205).point().foamCreepMmPerMin();
        for (double times : new double[] {0.25, 1, 4}) {
            assertThat(Sight.of(amount(times * rest)).creepMmPerMin())
                    .isCloseTo(creep * Math.sqrt(times), within(1e-9));
        }
        Settings noAir = JETTY.ratedSettings(CREST_MM).withAirLitresPerHour(0);
        assertThat(Sight.of(scene(JETTY, noAir, 205, CupFill.EMPTY)).rowsPerSecond())
                .isZero();
    }
}
