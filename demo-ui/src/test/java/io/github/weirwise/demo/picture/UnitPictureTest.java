package io.github.weirwise.demo.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.SkimmateColour;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Range;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.SkimmerUnit;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import javax.accessibility.AccessibleRole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The picture, painted without a screen: colours and rows at points that the model names. */
class UnitPictureTest {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 600;

    private static UnitPicture picture(double crestMm) {
        SkimmerUnit unit = LanternQuay.jetty();
        UnitPicture picture =
                new UnitPicture(Scene.atRest(unit, unit.ratedSettings(crestMm), 18), Words.ENGLISH, Palette.LIGHT);
        picture.setSize(WIDTH, HEIGHT);
        picture.name(false);
        return picture;
    }

    private static double axisPx(UnitPicture picture) {
        return picture.view().x(new Section(picture.scene().unit()).axisMm);
    }

    private static BufferedImage paint(UnitPicture picture, double scale) {
        BufferedImage image =
                new BufferedImage((int) (WIDTH * scale), (int) (HEIGHT * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.scale(scale, scale);
        picture.paint(graphics);
        graphics.dispose();
        return image;
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.25, 1.5, 1.75, 2, 3})
    void thePictureIsTheSameAtEveryScale(double scale) {
        UnitPicture picture = picture(218);
        BufferedImage image = paint(picture, scale);
        double level = picture.scene().point().columnLevelMm();
        int x = (int) (scale * (axisPx(picture) + 52 * picture.view().pxPerMm()));
        Color under = at(image, x, scale * picture.view().y(level - 20));
        assertThat(under.getBlue()).as("water is blue").isGreaterThan(under.getRed() + 15);
        Color neck = at(image, scale * axisPx(picture), scale * picture.view().y(330));
        assertThat(neck.getRed()).as("foam is warm").isGreaterThanOrEqualTo(neck.getBlue());
        Color paper = at(image, scale * (WIDTH - 6), scale * (HEIGHT - 4));
        assertThat(paper).isEqualTo(Palette.LIGHT.paper());
    }

    @Test
    void theCupHasTheComputedColourUpToItsContents() {
        UnitPicture picture = picture(222);
        BufferedImage image = paint(picture, 2);
        Section section = new Section(picture.scene().unit());
        double x = 2 * picture.view().x(section.cupRightMm - 6);
        Color liquid = at(image, x, 2 * picture.view().y(section.cupFloorMm + 5));
        assertThat(liquid)
                .isEqualTo(SkimmateColour.of(picture.scene().collected().ptCo()));
        Color above = at(image, x, 2 * picture.view().y(section.lipMm() - 4));
        assertThat(above).isNotEqualTo(liquid);
    }

    @Test
    void aHigherWeirIsDrawnWithAHigherLevel() {
        UnitPicture low = picture(200);
        UnitPicture high = picture(206);
        double perMm = low.view().pxPerMm();
        double rise = low.view().y(low.scene().point().clearLevelMm())
                - high.view().y(high.scene().point().clearLevelMm());
        assertThat(rise).isCloseTo(6 * perMm, within(0.2 * perMm));
    }

    @Test
    void arrowKeysMoveTheWeirByHalfAMillimetreAndWithShiftByFive() {
        UnitPicture picture = picture(218);
        List<Double> wanted = new ArrayList<>();
        picture.onWeirMoved(wanted::add);
        for (String key : List.of("UP", "DOWN", "shift UP", "shift DOWN")) {
            assertThat(Parts.press(picture, key)).as(key).isTrue();
        }
        assertThat(wanted).containsExactly(218.5, 217.5, 223.0, 213.0);
    }

    @Test
    void theWeirIsDraggedByTheMouse() {
        UnitPicture picture = picture(218);
        List<Double> wanted = new ArrayList<>();
        picture.onWeirMoved(wanted::add);
        int x = (int) picture.weirHandle().getCenterX();
        int y = (int) picture.weirHandle().getCenterY();
        int tenMm = (int) Math.round(10 * picture.view().pxPerMm());
        mouse(picture, MouseEvent.MOUSE_PRESSED, x, y);
        mouse(picture, MouseEvent.MOUSE_DRAGGED, x, y - tenMm);
        mouse(picture, MouseEvent.MOUSE_RELEASED, x, y - tenMm);
        assertThat(wanted).hasSize(1);
        assertThat(wanted.get(0)).isCloseTo(228, within(0.6));
    }

    @Test
    void aPressBesideTheWeirMovesNothing() {
        UnitPicture picture = picture(218);
        List<Double> wanted = new ArrayList<>();
        picture.onWeirMoved(wanted::add);
        mouse(picture, MouseEvent.MOUSE_PRESSED, 20, 20);
        mouse(picture, MouseEvent.MOUSE_DRAGGED, 20, 60);
        assertThat(wanted).isEmpty();
    }

    @Test
    void itTellsInWordsWhatItShows() {
        UnitPicture picture = picture(218);
        var context = picture.getAccessibleContext();
        assertThat(context.getAccessibleRole()).isEqualTo(AccessibleRole.CANVAS);
        assertThat(context.getAccessibleName()).isNotBlank();
        assertThat(context.getAccessibleDescription())
                .contains("weir crest 218 mm", "over the funnel base", "198 mL/day", "dark tea");
        List<Object> told = new ArrayList<>();
        context.addPropertyChangeListener(change -> told.add(change.getNewValue()));
        picture.show(picture.scene());
        assertThat(told).as("no news without a change").isEmpty();
        picture.show(
                Scene.atRest(picture.scene().unit(), picture.scene().settings().withWeirCrestMm(193), 18));
        assertThat(told).hasSize(1);
        assertThat(told.get(0).toString()).contains("weir crest 193 mm");
    }

    @Test
    void withoutMotionTwoPaintsAreTheSame() {
        UnitPicture picture = picture(218);
        assertThat(pixels(paint(picture, 1))).isEqualTo(pixels(paint(picture, 1)));
    }

    @Test
    void everyUnitAndEveryStateCanBePainted() {
        for (SkimmerUnit unit : LanternQuay.units()) {
            for (double crest = unit.weir().lowestCrestMm();
                    crest <= unit.weir().highestCrestMm();
                    crest += 15) {
                UnitPicture picture =
                        new UnitPicture(Scene.atRest(unit, unit.ratedSettings(crest), 18), Words.ENGLISH, Palette.DARK);
                picture.setSize(WIDTH, HEIGHT);
                assertThat(paint(picture, 1).getWidth()).isEqualTo(WIDTH);
                assertThat(picture.describe()).isNotBlank();
            }
        }
    }

    @Test
    void noFigureIsCutAtTheTopHoweverManyThereAreAndHowSmallThePicture() {
        Scene scene = Painted.collecting(2070, 0).expecting(new Range(32, 32), new Range(2370, 2620));
        Section section = new Section(scene.unit());
        View view = View.fit(section.bounds(), new Rectangle2D.Double(8, 8, 480, 280));
        Brush brush = new Brush(section, view, Palette.LIGHT, Words.ENGLISH, new Font(Font.SANS_SERIF, Font.PLAIN, 13));
        BufferedImage image = new BufferedImage(520, 500, BufferedImage.TYPE_INT_ARGB);
        Graphics2D graphics = image.createGraphics();
        graphics.translate(0, 200);
        new LabelPainter(brush).paint(new Ink(graphics), scene, new NamePainter(brush));
        graphics.dispose();
        for (int y = 0; y < 200; y++) {
            for (int x = 0; x < 520; x++) {
                assertThat(image.getRGB(x, y))
                        .as("above the picture, at " + x + ", " + y)
                        .isZero();
            }
        }
    }

    private static void mouse(UnitPicture picture, int id, int x, int y) {
        picture.dispatchEvent(
                new MouseEvent(picture, id, 0, MouseEvent.BUTTON1_DOWN_MASK, x, y, 1, false, MouseEvent.BUTTON1));
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    private static Color at(BufferedImage image, double x, double y) {
        return new Color(image.getRGB((int) Math.round(x), (int) Math.round(y)));
    }
}
