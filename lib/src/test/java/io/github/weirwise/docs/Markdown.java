package io.github.weirwise.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A page of the documents: its code blocks, links, headings and table rows. */
record Markdown(Path file, String text) {
    private static final Pattern FENCE = Pattern.compile("(?ms)^```(\\w*)\\n(.*?)^```$");
    private static final Pattern LINK = Pattern.compile("!?\\[[^\\]]*]\\(([^)\\s]+)(?:\\s+\"[^\"]*\")?\\)");
    private static final Pattern HEADING = Pattern.compile("(?m)^#{1,6}\\s+(.+?)\\s*$");

    /** The project's root folder; the library's module lies in it. */
    static final Path ROOT =
            Path.of(System.getProperty("basedir", "")).toAbsolutePath().getParent();

    static Markdown of(Path file) {
        try {
            return new Markdown(file, Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** README.md, DEVELOPERS.md and everything below docs, in a fixed order. */
    static List<Markdown> pages() {
        try (Stream<Path> top = Files.list(ROOT);
                Stream<Path> docs = Files.walk(ROOT.resolve("docs"))) {
            return Stream.concat(top, docs)
                    .filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .map(Markdown::of)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The page's path from the project's root. */
    String name() {
        return ROOT.relativize(file).toString();
    }

    /** The contents of all code blocks that name the language. */
    List<String> blocks(String language) {
        List<String> found = new ArrayList<>();
        Matcher matcher = FENCE.matcher(text);
        while (matcher.find()) {
            if (matcher.group(1).equals(language)) {
                found.add(matcher.group(2));
            }
        }
        return found;
    }

    /** The targets of all links and pictures outside code blocks. */
    List<String> links() {
        List<String> found = new ArrayList<>();
        Matcher matcher = LINK.matcher(prose());
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    /** The page without its code blocks and code words. */
    String prose() {
        return FENCE.matcher(text).replaceAll("").replaceAll("`[^`\\n]*`", "");
    }

    /** The names that a link may point at within the page. */
    Set<String> anchors() {
        Set<String> found = new TreeSet<>();
        Matcher matcher = HEADING.matcher(text);
        while (matcher.find()) {
            String words = matcher.group(1).toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N} _-]", "");
            found.add(words.replace(' ', '-'));
        }
        return found;
    }

    /** The cells of all table rows, without heads and rules. */
    List<List<String>> rows() {
        return text.lines()
                .filter(line -> line.startsWith("|"))
                .map(line -> Stream.of(line.substring(1, line.lastIndexOf('|')).split("(?<!\\\\)\\|", -1))
                        .map(cell -> cell.strip().replace("\\|", "|"))
                        .toList())
                .toList();
    }
}
