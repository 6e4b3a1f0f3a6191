package io.github.weirwise.lab.score;

import io.github.weirwise.json.JournalContents;
import io.github.weirwise.json.JournalFile;
import io.github.weirwise.lab.InventedJournal;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.score.JournalScore;
import io.github.weirwise.score.Scored;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Command {@code score}: property {@code file} names a journal file. Writes beside it a page ({@code .score.html}) and a copy without
 * names ({@code .unnamed.jsonl}).
 */
public final class ScoreRun {
    private static final Path EXAMPLE = Path.of("docs/examples/journal.jsonl");

    private ScoreRun() {}

    /** Scores the file that the property names; without one an invented journal, which it writes to docs/examples. */
    public static void run() throws IOException {
        String given = System.getProperty("file", "");
        Path file = given.isBlank() ? EXAMPLE : Path.of(given);
        if (given.isBlank()) {
            InventedJournal invented = InventedJournal.of(1);
            write(EXAMPLE, invented.unit(), invented.start(), invented.journal());
        }
        JournalContents contents = JournalFile.open(file).read();
        contents.spoilt().forEach(line -> System.out.println("left out: " + line));
        JournalScore score = JournalScore.of(contents.unit(), contents.settings(), contents.journal());
        Path page = beside(file, ".score.html");
        Files.writeString(page, new ScorePage(score).html());
        System.out.println("written: " + page);
        if (!given.isBlank()) {
            Path unnamed = beside(file, ".unnamed.jsonl");
            write(unnamed, Unnamed.of(contents.unit()), contents.settings(), Unnamed.of(contents.journal()));
            System.out.println("written: " + unnamed + ", to be sent: without names");
        }
        System.out.println(resultLine(score));
    }

    private static Path beside(Path file, String ending) {
        String name = file.getFileName().toString().replaceFirst("\\.jsonl$", "");
        return file.resolveSibling(name + ending);
    }

    private static void write(Path file, SkimmerUnit unit, Settings start, Journal journal) throws IOException {
        Files.deleteIfExists(file);
        JournalFile copy = JournalFile.create(file, unit, start);
        for (JournalEntry entry : journal.entries()) {
            copy.append(entry);
        }
    }

    static String resultLine(JournalScore score) {
        List<Scored> amounts = score.amounts();
        List<Scored> levels = score.levels();
        if (amounts.isEmpty()) {
            return "result: forecasts=0";
        }
        StringBuilder line = new StringBuilder(String.format(
                Locale.ROOT,
                "result: forecasts=%d coverage80=%.4f logScore=%.4f persistenceLogScore=%.4f averageLogScore=%.4f"
                        + " bandBrier=%.4f persistenceBandBrier=%.4f",
                amounts.size(),
                JournalScore.coverage(amounts),
                JournalScore.logScore(amounts, Scored::forecast, JournalScore.AMOUNT_WIDTH),
                JournalScore.logScore(amounts, Scored::asLastTime, JournalScore.AMOUNT_WIDTH),
                JournalScore.logScore(amounts, Scored::average, JournalScore.AMOUNT_WIDTH),
                JournalScore.brier(amounts, Scored::forecast),
                JournalScore.brier(amounts, Scored::asLastTime)));
        if (!levels.isEmpty()) {
            line.append(String.format(
                    Locale.ROOT,
                    " levels=%d levelCoverage80=%.4f levelLogScore=%.4f levelPersistenceLogScore=%.4f",
                    levels.size(),
                    JournalScore.coverage(levels),
                    JournalScore.logScore(levels, Scored::forecast, JournalScore.LEVEL_WIDTH_MM),
                    JournalScore.logScore(levels, Scored::asLastTime, JournalScore.LEVEL_WIDTH_MM)));
        }
        return line.toString();
    }
}
