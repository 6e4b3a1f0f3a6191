package io.github.weirwise.demo.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The list of journals, and what is typed for them, come back from their text; lines that mean nothing harm nothing. */
class ShelfTest {
    private static final Path REEF = Path.of("reef.jsonl").toAbsolutePath();
    private static final Path QUAY = Path.of("quay.jsonl").toAbsolutePath();

    @Test
    void journalsAndDraftsComeBack() {
        Shelf shelf = new Shelf();
        shelf.add(REEF);
        shelf.add(QUAY);
        shelf.draft(REEF, Map.of("CUP_VOLUME", "80;24;false", "FUNNEL_LEVEL", "= 12\t"));
        shelf.draft(Shelf.NEW, Map.of("name", "Reef hall", "BORE", "110"));
        shelf.draft(Shelf.TANK, Map.of("name", "Corner"));
        assertThat(shelf.text()).as("not where the program was started").doesNotContain(Shelf.NEW.toString());
        Shelf again = new Shelf();
        again.read(shelf.text());
        assertThat(again.journals()).containsExactly(QUAY, REEF);
        assertThat(again.draft(REEF)).containsEntry("CUP_VOLUME", "80;24;false").containsEntry("FUNNEL_LEVEL", "= 12");
        assertThat(again.draft(Shelf.NEW)).containsEntry("name", "Reef hall").containsEntry("BORE", "110");
        assertThat(again.draft(Shelf.TANK)).containsEntry("name", "Corner");
        assertThat(again.draft(QUAY)).isEmpty();
    }

    @Test
    void strangeLinesAreLeftOut() {
        Shelf shelf = new Shelf();
        shelf.read("\tno=journal\n{\n\u0000.jsonl\n" + REEF + "\n\tnothing\n\n" + REEF + "\n");
        assertThat(shelf.journals()).contains(REEF).doesNotHaveDuplicates().hasSizeLessThanOrEqualTo(2);
        assertThat(shelf.draft(REEF)).isEmpty();
    }

    @Test
    void aJournalThatIsTakenOffTheListTakesItsDraftAlong() {
        Shelf shelf = new Shelf();
        shelf.add(REEF);
        shelf.draft(REEF, Map.of("FUNNEL_LEVEL", "12"));
        shelf.renamed(REEF, QUAY);
        assertThat(shelf.journals()).containsExactly(QUAY);
        assertThat(shelf.draft(QUAY)).containsEntry("FUNNEL_LEVEL", "12");
        shelf.drop(QUAY);
        assertThat(shelf.journals()).isEmpty();
        assertThat(shelf.draft(QUAY)).isEmpty();
    }
}
