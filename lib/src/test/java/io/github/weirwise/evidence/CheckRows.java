package io.github.weirwise.evidence;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Reads the published check values from the data files that {@code checks/files.txt} lists. */
final class CheckRows {
    private static final String FOLDER = "/io/github/weirwise/checks/";

    private CheckRows() {}

    static List<CheckRow> all() {
        List<CheckRow> rows = new ArrayList<>();
        for (String file : lines("files.txt")) {
            rows.addAll(of(file));
        }
        return rows;
    }

    static List<String> files() {
        return lines("files.txt");
    }

    static List<CheckRow> of(String file) {
        List<String> lines = lines(file);
        return lines.subList(1, lines.size()).stream()
                .map(CheckRows::cells)
                .map(CheckRow::of)
                .toList();
    }

    private static List<String> lines(String file) {
        try (InputStream in = CheckRows.class.getResourceAsStream(FOLDER + file)) {
            if (in == null) {
                throw new IllegalStateException("no data file " + FOLDER + file);
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            return reader.lines().filter(line -> !line.isBlank()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Cells of one line, RFC 4180: a cell in quotes may hold commas, two quotes stand for one. */
    static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append('"');
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
