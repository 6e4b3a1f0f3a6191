package io.github.weirwise.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class TankWeekTest {
    /** Half a pixel is seen by nobody. */
    private static final double PIXEL = 0.5;

    @Test
    void theDrawingOfTheTankPageIsTodays() throws IOException {
        Path root = Files.isDirectory(Path.of("docs")) ? Path.of("") : Path.of("..");
        double[] then = numbers(Files.readString(root.resolve(TankWeek.FILE)));
        double[] now = numbers(TankWeek.draw(new StringBuilder()));
        assertThat(then).as("run the command tank-week again").hasSize(now.length);
        for (int i = 0; i < now.length; i++) {
            assertThat(then[i]).as("run the command tank-week again").isCloseTo(now[i], within(PIXEL));
        }
    }

    private static double[] numbers(String svg) {
        return Pattern.compile("-?\\d+(\\.\\d+)?")
                .matcher(svg)
                .results()
                .mapToDouble(each -> Double.parseDouble(each.group()))
                .toArray();
    }
}
