package io.github.weirwise.evidence;

import io.github.weirwise.json.JournalFile;
import io.github.weirwise.reading.Note;
import java.nio.file.Path;
import java.time.Instant;

/** A program that adds numbered notes to a journal until it is stopped, and says each number once the disk has it. */
final class JournalWriter {
    private JournalWriter() {}

    /**
     * Writes until it is killed.
     *
     * @param args the journal, the writer's own name
     */
    public static void main(String[] args) throws Exception {
        JournalFile file = JournalFile.open(Path.of(args[0]));
        Instant start = Instant.parse("2026-03-01T00:00:00Z");
        for (int i = 0; ; i++) {
            String text = args[1] + "-" + i;
            file.append(new Note(start.plusSeconds(i), text));
            System.out.println(text);
            System.out.flush();
        }
    }
}
