package io.github.weirwise.evidence;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads {@code guard-grid.txt}: dangerous journals and near misses, a case a line, in a technician's words. The head of that
 * file says how a line is read.
 */
final class GuardGrid {
    private static final String FILE = "/io/github/weirwise/evidence/guard-grid.txt";

    private GuardGrid() {}

    static List<GuardCase> all() {
        List<GuardCase> all = new ArrayList<>();
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(GuardGrid.class.getResourceAsStream(FILE), StandardCharsets.UTF_8))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                if (!line.isBlank() && !line.startsWith("#")) {
                    all.add(parse(line));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return List.copyOf(all);
    }

    private static GuardCase parse(String line) {
        String[] columns = line.split("\\|");
        if (columns.length != 6) {
            throw new IllegalArgumentException("six columns are wanted: " + line);
        }
        for (int i = 0; i < columns.length; i++) {
            columns[i] = columns[i].strip();
        }
        try {
            SkimmerUnit unit = unit(columns[1]);
            Settings start = settings(unit, columns[1]);
            List<JournalEntry> entries = new ArrayList<>(GuardWords.history(unit, columns[2]));
            for (String part : columns[3].split(";")) {
                if (!part.isBlank() && !part.strip().equals("nothing")) {
                    entries.add(GuardWords.entry(part.strip()));
                }
            }
            return new GuardCase(
                    line,
                    columns[0].equals("danger"),
                    unit,
                    start,
                    new Journal(entries),
                    GuardWords.instant(columns[4]),
                    columns[5]);
        } catch (RuntimeException e) {
            throw new IllegalArgumentException(line, e);
        }
    }

    private static SkimmerUnit unit(String words) {
        SkimmerUnit unit = switch (words.split(" ")[0]) {
            case "small" -> FirstRoundUnits.small();
            case "middle" -> FirstRoundUnits.middle();
            case "large" -> FirstRoundUnits.large();
            default -> throw new IllegalArgumentException("no unit " + words);
        };
        double drain = after(words, "drain", 0);
        return drain > 0 ? unit.withCupDrainLitresPerHour(drain) : unit;
    }

    private static Settings settings(SkimmerUnit unit, String words) {
        double usualMm = switch (words.split(" ")[0]) {
            case "small" -> 162;
            case "middle" -> 205;
            default -> 249;
        };
        Settings usual = unit.ratedSettings(after(words, "crest", usualMm));
        return usual.withAirLitresPerHour(after(words, "air", usual.airLitresPerHour()));
    }

    /** The number that follows a word. */
    private static double after(String words, String word, double otherwise) {
        String[] parts = words.split(" ");
        for (int i = 0; i + 1 < parts.length; i++) {
            if (parts[i].equals(word)) {
                return Double.parseDouble(parts[i + 1]);
            }
        }
        return otherwise;
    }
}
