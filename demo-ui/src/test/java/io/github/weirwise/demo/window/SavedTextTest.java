package io.github.weirwise.demo.window;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.look.Words;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SavedTextTest {
    @TempDir
    Path folder;

    @Test
    void aTextIsWrittenWholeAndReplacesTheOneBefore() throws IOException {
        Path file = folder.resolve("sheet.txt");
        assertThat(SavedText.write(file, "one")).isEmpty();
        assertThat(SavedText.write(file, "two \u00b0C")).isEmpty();
        assertThat(Files.readString(file)).isEqualTo("two \u00b0C");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(file);
        }
    }

    @Test
    void whatCannotBeWrittenIsToldAndLeavesNothing() throws IOException {
        Path inTheWay = Files.createDirectory(folder.resolve("sheet.txt"));
        Files.writeString(inTheWay.resolve("full"), "x");
        assertThat(SavedText.write(inTheWay, "text")).isPresent();
        assertThat(SavedText.write(folder.resolve("nowhere/sheet.txt"), "text")).isPresent();
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(inTheWay);
        }
    }

    @Test
    void aDiskThatGetsFullHalfWayLeavesTheFileBeforeAsItWas() throws IOException {
        Path file = folder.resolve("sheet.txt");
        SavedText.write(file, "one");
        var told = SavedText.write(file, "two, and longer", (part, bytes) -> {
            Files.write(part, Arrays.copyOf(bytes, bytes.length / 2));
            throw new IOException("No space left on device");
        });
        assertThat(Words.ENGLISH.say(told.orElseThrow())).contains("sheet.txt", "the disk is full");
        assertThat(file).hasContent("one");
        var readOnly = SavedText.write(file, "two", (part, bytes) -> {
            throw new AccessDeniedException(file.toString());
        });
        assertThat(Words.ENGLISH.say(readOnly.orElseThrow())).contains("read-only");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(file);
        }
    }

    @Test
    void aLinkStaysALinkAndTheFileKeepsItsMode() throws IOException {
        Path real = Files.writeString(folder.resolve("kept elsewhere.html"), "old");
        Assumptions.assumeTrue(Files.getFileStore(real).supportsFileAttributeView(PosixFileAttributeView.class));
        Files.setPosixFilePermissions(real, PosixFilePermissions.fromString("rw-r-----"));
        Path link = Files.createSymbolicLink(folder.resolve("shown.html"), real);
        assertThat(SavedText.write(link, "new")).isEmpty();
        assertThat(link).isSymbolicLink();
        assertThat(real).hasContent("new");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(real)))
                .isEqualTo("rw-r-----");
    }
}
