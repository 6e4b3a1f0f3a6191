package io.github.weirwise.evidence;

import io.github.weirwise.json.DocumentException;
import io.github.weirwise.json.JournalContents;
import io.github.weirwise.json.JournalFile;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.FirstRoundUnits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Random;

/**
 * Single bits of a journal file flipped by chance, each in a file of its own.
 *
 * @param flips how many
 * @param silent how many changed a value without a spoilt line that tells it
 * @param unopenable how many made the whole file unreadable
 */
record JournalFlips(int flips, int silent, int unopenable) {
    static JournalFlips count(int flips, long seed) throws IOException {
        Path path = Files.createTempFile("weirwise-flips", ".jsonl");
        try {
            return count(path, flips, new Random(seed));
        } finally {
            Files.delete(path);
        }
    }

    private static JournalFlips count(Path path, int flips, Random random) throws IOException {
        JournalFile file = JournalFile.create(
                path, FirstRoundUnits.middle(), FirstRoundUnits.middle().ratedSettings(205));
        Instant start = Instant.parse("2026-03-01T08:00:00Z");
        for (int i = 0; i < 5; i++) {
            file.append(Reading.of(
                    start.plusSeconds(86_400L * i),
                    new Observation.FunnelLevel(20.5 + i),
                    new Observation.CupVolume(240 + i, 24, false)));
            file.append(new Note(start.plusSeconds(86_400L * i + 60), "fed at 07:5" + i), "note-" + i);
        }
        byte[] whole = Files.readAllBytes(path);
        JournalContents sound = file.read();
        int silent = 0;
        int unopenable = 0;
        for (int i = 0; i < flips; i++) {
            byte[] harmed = whole.clone();
            int bit = random.nextInt(8 * whole.length);
            harmed[bit / 8] ^= (byte) (1 << bit % 8);
            Files.write(path, harmed);
            try {
                JournalContents read = file.read();
                silent += read.spoiltCount() == 0 && !read.equals(sound) ? 1 : 0;
            } catch (DocumentException e) {
                unopenable++;
            }
        }
        return new JournalFlips(flips, silent, unopenable);
    }
}
