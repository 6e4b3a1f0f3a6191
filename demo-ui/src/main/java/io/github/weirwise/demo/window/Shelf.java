package io.github.weirwise.demo.window;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The journals of one's own units, the newest first, and what was typed for each and not noted yet. Kept as plain text: a line
 * with a path for each journal, and under it, indented, a line for each box.
 */
final class Shelf {
    private static final String BOX = "\t";

    /** Stands for the unit whose journal is not begun yet. */
    static final Path NEW = Path.of("new." + Dialogs.ENDING).toAbsolutePath();

    /** Stands for the tank that is described in the form of one's own tank. */
    static final Path TANK = Path.of("tank." + Dialogs.ENDING).toAbsolutePath();

    private static final Map<Path, String> LINES = Map.of(NEW, "new unit", TANK, "own tank");

    private final List<Path> journals = new ArrayList<>();
    private final Map<Path, Map<String, String>> drafts = new HashMap<>();

    /** Takes over what was kept; lines that mean nothing are left out. */
    void read(String text) {
        List<Path> found = new ArrayList<>();
        for (String line : text.split("\n")) {
            String[] box = line.startsWith(BOX) ? line.substring(1).split("=", 2) : new String[0];
            if (box.length == 2 && !found.isEmpty()) {
                drafts.computeIfAbsent(found.get(found.size() - 1), path -> new HashMap<>())
                        .put(box[0], box[1].strip());
            } else {
                path(line).ifPresent(found::add);
            }
        }
        found.stream()
                .filter(path -> !journals.contains(path) && !LINES.containsKey(path))
                .forEach(journals::add);
    }

    private static Optional<Path> path(String line) {
        try {
            return LINES.entrySet().stream()
                    .filter(each -> each.getValue().equals(line.strip()))
                    .map(Map.Entry::getKey)
                    .findFirst()
                    .or(() -> Optional.of(line.strip())
                            .filter(text -> text.endsWith(Dialogs.ENDING))
                            .map(Path::of));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** All of it as text that {@link #read} understands. */
    String text() {
        StringBuilder text = new StringBuilder();
        List<Path> all = new ArrayList<>(journals);
        all.addAll(List.of(NEW, TANK));
        for (Path journal : all) {
            text.append(LINES.getOrDefault(journal, journal.toString())).append('\n');
            draft(journal)
                    .forEach((box, typed) -> text.append(BOX)
                            .append(box)
                            .append('=')
                            .append(typed.replace('\n', ' '))
                            .append('\n'));
        }
        return text.toString();
    }

    List<Path> journals() {
        return List.copyOf(journals);
    }

    /** Puts a journal in front. */
    void add(Path journal) {
        Path whole = Objects.requireNonNull(journal, "journal").toAbsolutePath();
        journals.remove(whole);
        journals.add(0, whole);
    }

    /** A journal's file has another name now. */
    void renamed(Path from, Path to) {
        journals.replaceAll(path -> path.equals(from) ? to.toAbsolutePath() : path);
        draft(to, drafts.getOrDefault(from, Map.of()));
    }

    /** Takes a journal off the list. */
    void drop(Path journal) {
        journals.remove(journal);
        drafts.remove(journal);
    }

    /** What was typed for a journal and not noted, by the names of the boxes. */
    Map<String, String> draft(Path journal) {
        return drafts.getOrDefault(journal.toAbsolutePath(), Map.of());
    }

    /** Keeps what is typed for a journal. */
    void draft(Path journal, Map<String, String> typed) {
        drafts.put(journal.toAbsolutePath(), Map.copyOf(typed));
    }
}
