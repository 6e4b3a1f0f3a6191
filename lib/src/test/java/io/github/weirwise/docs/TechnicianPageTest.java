package io.github.weirwise.docs;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.advice.Clocks;
import io.github.weirwise.care.CareTask;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** The technician's page says the library's own intervals and waiting times. */
class TechnicianPageTest {
    private static final PhraseBook ENGLISH = PhraseBook.ENGLISH_METRIC;
    private final String page =
            Markdown.of(Markdown.ROOT.resolve("docs/technician.md")).text();

    @Test
    void everyTaskOfUpkeepStandsThereWithItsInterval() {
        for (CareTask task : CareTask.values()) {
            String every = ENGLISH.say(Quantity.of(task.usualDays(), Unit.DAY));
            assertThat(page).contains("| " + ENGLISH.say(task.what()) + " | every " + every + " |");
        }
    }

    @Test
    void waitingTimesAreTheAdvisers() {
        Clocks clocks = Clocks.COMMON_PRACTICE;
        assertThat(page)
                .contains("look for a flood after " + said(clocks.floodLook()))
                .contains("| moving the weir | " + said(clocks.judge()) + " |")
                .contains("| washing neck and cup | " + said(clocks.afterWashing()) + " |")
                .contains("| feeding, hands in the tank | " + said(clocks.afterFeeding()) + " |")
                .contains("| conditioner, medicine, fresh sealant | " + said(clocks.afterAdditive()) + " |")
                .contains("| first start | " + said(clocks.breakIn()) + " before");
    }

    @Test
    void itIsFoundFromTheReadmeInOneClick() {
        assertThat(Markdown.of(Markdown.ROOT.resolve("README.md")).links())
                .contains("docs/technician.md", "docs/embedding.md", "docs/trainer.md");
    }

    private static String said(Duration wait) {
        return ENGLISH.say(Quantity.of(wait.toMinutes() / 60.0, Unit.HOUR));
    }
}
