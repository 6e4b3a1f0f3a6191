package io.github.weirwise.demo;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.picture.UnitPages;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The pictures of the documents are those that the command "pictures" writes: none is left from a screen that went, none is missing. */
class DocumentPicturesTest {
    private static final Path ROOT = Path.of("").toAbsolutePath().getParent();
    private static final Path FOLDER = ROOT.resolve("docs/pictures/screens");

    private static final int FIELDS = 40;
    private static final double MOST_DIFFERENCE = 2;

    @Test
    void everyScreenHasItsPictureInItsSize() throws IOException {
        Set<String> wanted = new TreeSet<>(Set.of("unit.png", "foam.png"));
        for (Screen screen : ScreensRun.SCREENS) {
            Path file = FOLDER.resolve(screen.name() + ".png");
            BufferedImage image = ImageIO.read(file.toFile());
            assertThat(List.of(image.getWidth(), image.getHeight()))
                    .as(screen.name())
                    .isEqualTo(List.of(screen.width(), screen.height()));
            wanted.add(file.getFileName().toString());
        }
        try (Stream<Path> files = Files.list(FOLDER)) {
            Set<String> there = files.map(file -> file.getFileName().toString()).collect(Collectors.toSet());
            assertThat(there).isEqualTo(wanted);
        }
    }

    @Test
    void everyPictureStandsInADocument() throws IOException {
        String documents =
                Files.readString(ROOT.resolve("docs/screens.md")) + Files.readString(ROOT.resolve("README.md"));
        try (Stream<Path> files = Files.list(FOLDER)) {
            assertThat(files).allSatisfy(file -> assertThat(documents).contains("screens/" + file.getFileName()));
        }
    }

    /** Tone by tone on a coarse grid, so that other fonts pass and another drawing does not. */
    @Test
    void thePicturesOfUnitAndFoamAreTodays() throws IOException {
        assertThat(differenceFrom("unit.png", UnitPages.unit(Dress.USUAL, 2))).isLessThan(MOST_DIFFERENCE);
        assertThat(differenceFrom("foam.png", UnitPages.foam(Dress.USUAL, 1))).isLessThan(MOST_DIFFERENCE);
        assertThat(differenceFrom("unit.png", UnitPages.unit(new Dress(Words.ENGLISH, Palette.DARK), 2)))
                .isGreaterThan(MOST_DIFFERENCE);
    }

    /** Mean difference of the tones of both pictures in 40 by 40 fields, 0 to 255. */
    private static double differenceFrom(String name, BufferedImage now) throws IOException {
        BufferedImage then = ImageIO.read(FOLDER.resolve(name).toFile());
        assertThat(List.of(then.getWidth(), then.getHeight()))
                .as(name)
                .isEqualTo(List.of(now.getWidth(), now.getHeight()));
        double sum = 0;
        int[] one = fields(then);
        int[] other = fields(now);
        for (int i = 0; i < one.length; i++) {
            sum += Math.abs(one[i] - other[i]);
        }
        return sum / one.length;
    }

    private static int[] fields(BufferedImage image) {
        BufferedImage small = new BufferedImage(FIELDS, FIELDS, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = small.createGraphics();
        graphics.drawImage(image.getScaledInstance(FIELDS, FIELDS, Image.SCALE_AREA_AVERAGING), 0, 0, null);
        graphics.dispose();
        return small.getRaster().getSamples(0, 0, FIELDS, FIELDS, 0, (int[]) null);
    }
}
