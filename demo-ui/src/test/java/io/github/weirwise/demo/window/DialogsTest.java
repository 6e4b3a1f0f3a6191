package io.github.weirwise.demo.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import org.junit.jupiter.api.Test;

/** What a new journal is called, and how large the window opens. */
class DialogsTest {
    @Test
    void aJournalIsCalledAsItsUnitInLettersThatEveryFileSystemTakes() {
        assertThat(Dialogs.fileName("Reef hall 2")).isEqualTo("Reef hall 2");
        assertThat(Dialogs.fileName("../Bäcken: 3*?\n")).isEqualTo("Bäcken 3");
        assertThat(Dialogs.fileName("/?*")).isEqualTo("unit");
        assertThat(Dialogs.fileName("x".repeat(200))).hasSize(60);
    }

    @Test
    void theWindowOpensNoLargerThanItsScreen() {
        assertThat(MainWindow.within(new Dimension(1024, 700))).isEqualTo(new Dimension(1024, 700));
        assertThat(MainWindow.within(new Dimension(2560, 1440))).isEqualTo(new Dimension(1200, 800));
    }
}
