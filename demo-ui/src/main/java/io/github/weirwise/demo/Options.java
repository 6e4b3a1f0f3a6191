package io.github.weirwise.demo;

import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.UnitSystem;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.IllformedLocaleException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What the demo was asked for.
 *
 * @param kind which run
 * @param picture where a picture goes when one is wanted
 * @param scale device pixels per pixel of that picture, 0.5 to 4
 * @param still whether bubbles stand still from the start
 * @param dark whether the dark colours are used
 * @param language language of all texts; English where it has none
 * @param keep folder in which the window keeps unfinished work, when it is not the usual one
 */
public record Options(
        Kind kind,
        Optional<Path> picture,
        double scale,
        boolean still,
        boolean dark,
        Optional<Path> keep,
        Locale language) {
    /** The runs there are. */
    public enum Kind {
        /** The window where there is a display, else the text. */
        BEST,
        TEXT,
        WINDOW,
        PICTURE,
        HELP
    }

    private static final double LEAST_SCALE = 0.5;
    private static final double GREATEST_SCALE = 4;

    /** An option that cannot be understood; the message is a text key with its values. */
    public static final class BadOption extends Exception {
        private static final long serialVersionUID = 1L;

        private final String key;
        private final String value;

        BadOption(String key, String value) {
            super(key + " " + value);
            this.key = key;
            this.value = value;
        }

        /** Key of the text to show. */
        public String key() {
            return key;
        }

        /** What was typed. */
        public String value() {
            return value;
        }
    }

    /**
     * The options behind the words of a command line.
     *
     * @throws BadOption if a word is not an option or lacks its value
     */
    public static Options parse(List<String> words) throws BadOption {
        Deque<String> left = new ArrayDeque<>(words);
        Options options = new Options(Kind.BEST, Optional.empty(), 1, false, false, Optional.empty(), Locale.ENGLISH);
        while (!left.isEmpty()) {
            options = options.with(left.removeFirst(), left);
        }
        return options;
    }

    private Options with(String word, Deque<String> left) throws BadOption {
        return switch (word) {
            case "--text" -> withKind(Kind.TEXT);
            case "--window" -> withKind(Kind.WINDOW);
            case "--help" -> withKind(Kind.HELP);
            case "--picture" ->
                new Options(Kind.PICTURE, Optional.of(path(value(word, left))), scale, still, dark, keep, language);
            case "--scale" -> new Options(kind, picture, scaleOf(value(word, left)), still, dark, keep, language);
            case "--still" -> new Options(kind, picture, scale, true, dark, keep, language);
            case "--dark" -> new Options(kind, picture, scale, still, true, keep, language);
            case "--keep" ->
                new Options(kind, picture, scale, still, dark, Optional.of(path(value(word, left))), language);
            case "--language" -> new Options(kind, picture, scale, still, dark, keep, language(value(word, left)));
            default -> throw new BadOption("options.unknown", word);
        };
    }

    private Options withKind(Kind other) {
        return new Options(other, picture, scale, still, dark, keep, language);
    }

    private static String value(String word, Deque<String> left) throws BadOption {
        if (left.isEmpty() || left.peekFirst().startsWith("--")) {
            throw new BadOption("options.noValue", word);
        }
        return left.removeFirst();
    }

    private static Path path(String text) throws BadOption {
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new BadOption("options.noPath", text);
        }
    }

    private static Locale language(String tag) throws BadOption {
        try {
            return new Locale.Builder().setLanguageTag(tag).build();
        } catch (IllformedLocaleException e) {
            throw new BadOption("options.noLanguage", tag);
        }
    }

    /** The words that everything is told in. */
    public Words words() {
        return new Words(new PhraseBook(language, UnitSystem.METRIC));
    }

    private static double scaleOf(String text) throws BadOption {
        try {
            double scale = Double.parseDouble(text);
            if (scale >= LEAST_SCALE && scale <= GREATEST_SCALE) {
                return scale;
            }
        } catch (NumberFormatException e) {
            // Said below in the same words as a number out of range.
        }
        throw new BadOption("options.badScale", text);
    }
}
