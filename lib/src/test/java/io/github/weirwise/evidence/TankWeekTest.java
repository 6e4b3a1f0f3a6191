package io.github.weirwise.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class TankWeekTest {
    @Test
    void theDrawingOfTheTankPageIsTodays() throws IOException {
        Path root = Files.isDirectory(Path.of("docs")) ? Path.of("") : Path.of("..");
        assertThat(Files.readString(root.resolve(TankWeek.FILE)))
                .as("run the command tank-week again")
                .isEqualTo(TankWeek.draw(new StringBuilder()));
    }
}
