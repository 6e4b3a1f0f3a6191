package io.github.weirwise.demo.window;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.look.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
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
        var told = SavedText.write(file, part -> {
            part.write("two, and lon".getBytes(StandardCharsets.UTF_8));
            throw new IOException("No space left on device");
        });
        assertThat(Words.ENGLISH.say(told.orElseThrow())).contains("sheet.txt", "the disk is full");
        assertThat(file).hasContent("one");
        var readOnly = SavedText.write(file, part -> {
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

    @Test
    void aLinkToAFileThatIsNotThereYetStaysALink() throws IOException {
        Path real = folder.resolve("later.html");
        Path link = Files.createSymbolicLink(folder.resolve("shown.html"), Path.of("later.html"));
        assertThat(SavedText.write(link, "new")).isEmpty();
        assertThat(link).isSymbolicLink();
        assertThat(real).hasContent("new");
        Path round = folder.resolve("round");
        Files.createSymbolicLink(round, round);
        assertThat(SavedText.write(round, "never")).isPresent();
        assertThat(round).isSymbolicLink();
    }

    /** Whoever could not read the file before cannot read it while it is written either. */
    @Test
    void nobodyElseReadsItMeanwhile() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.txt"), "old");
        Assumptions.assumeTrue(Files.getFileStore(file).supportsFileAttributeView(PosixFileAttributeView.class));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
        List<String> modes = new ArrayList<>();
        assertThat(SavedText.write(file, part -> {
                    try (Stream<Path> all = Files.list(folder)) {
                        for (Path each : all.filter(one -> !one.equals(file)).toList()) {
                            modes.add(PosixFilePermissions.toString(Files.getPosixFilePermissions(each)));
                        }
                    }
                    part.write('2');
                }))
                .isEmpty();
        assertThat(modes).containsExactly("rw-------");
        assertThat(file).hasContent("2");
    }

    /** A device of Linux that is always full. */
    @Test
    void aDeviceStaysADeviceAndAFullOneIsTold() {
        Path full = Path.of("/dev/full");
        Assumptions.assumeTrue(Files.isWritable(full) && !Files.isRegularFile(full));
        assertThat(Words.ENGLISH.say(SavedText.write(full, "gone").orElseThrow()))
                .contains("the disk is full");
        assertThat(Files.isRegularFile(full)).isFalse();
    }

    /** Two programs that write at once leave what one of them wrote, whole, and nothing beside it. */
    @Test
    void twoAtOnceLeaveOneOfBothWhole() throws Exception {
        Path file = folder.resolve("sheet.txt");
        String one = "1".repeat(200_000);
        String two = "2".repeat(300_000);
        Thread other = new Thread(() -> {
            for (int i = 0; i < 20; i++) {
                SavedText.write(file, two);
            }
        });
        other.start();
        for (int i = 0; i < 20; i++) {
            assertThat(SavedText.write(file, one)).isEmpty();
            assertThat(Files.readString(file)).isIn(one, two);
        }
        other.join();
        assertThat(Files.readString(file)).isIn(one, two);
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(file);
        }
    }
}
