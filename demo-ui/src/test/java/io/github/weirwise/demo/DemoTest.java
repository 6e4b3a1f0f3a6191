package io.github.weirwise.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as a whole on a machine without a display. */
class DemoTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final Demo demo = new Demo(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            Front.DOOR);

    @Test
    void aWindowWithoutADisplayIsOneSentenceAndCodeThree() {
        assertThat(demo.run(List.of("--window"))).isEqualTo(3);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .hasLineCount(1)
                .contains("display")
                .endsWith(".\n");
        assertThat(out.size()).isZero();
    }

    @Test
    void aBadOptionIsCodeTwoAndTheListOfOptions() {
        assertThat(demo.run(List.of("--wimdow"))).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("--wimdow", "--text", "--window", "--picture", "--scale");
        assertThat(out.size()).isZero();
    }

    @Test
    void withoutOptionAndDisplayTwoLinesAndTheTextFollow() {
        assertThat(demo.run(List.of())).isZero();
        assertThat(err.toString(StandardCharsets.UTF_8)).hasLineCount(2);
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("result: changes=");
    }

    @Test
    void aPictureIsWrittenAtItsScale(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("new/window.png");
        assertThat(demo.run(List.of("--picture", file.toString(), "--scale", "1.5")))
                .isZero();
        BufferedImage image = ImageIO.read(file.toFile());
        assertThat(image.getWidth()).isEqualTo(1800);
        assertThat(image.getHeight()).isEqualTo(1200);
    }

    @Test
    void aPictureThatCannotBeWrittenIsOneSentence(@TempDir Path folder) throws IOException {
        Path inTheWay = Files.writeString(folder.resolve("file"), "");
        assertThat(demo.run(List.of("--picture", inTheWay.resolve("window.png").toString())))
                .isEqualTo(Demo.FAILED);
        assertThat(err.toString(StandardCharsets.UTF_8)).hasLineCount(1);
    }
}
