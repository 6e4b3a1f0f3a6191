package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The small form of the command fuzz. */
class FuzzTest {
    @TempDir
    Path folder;

    @Test
    void damagedDocumentsGiveOurOwnExceptionOnly() {
        FuzzedReaders.Tally tally = new FuzzedReaders(11, folder.resolve("tank.jsonl")).read(0, 20_000);
        assertThat(tally.documents()).isEqualTo(20_000);
        assertThat(tally.readable()).as("not all damage is fatal").isBetween(1000L, 15_000L);
        assertThat(tally.answered()).isPositive();
        assertThat(tally.foreignExceptions()).isZero();
        assertThat(tally.hangs()).isZero();
    }
}
