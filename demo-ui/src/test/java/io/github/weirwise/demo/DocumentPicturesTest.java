package io.github.weirwise.demo;

import static org.assertj.core.api.Assertions.assertThat;

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
}
