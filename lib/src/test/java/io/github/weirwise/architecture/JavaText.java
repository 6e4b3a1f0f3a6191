package io.github.weirwise.architecture;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A Java source file as text: its string literals, its words, and the arguments of its calls. */
record JavaText(String source) {
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");
    private static final Pattern WORD = Pattern.compile("[A-Za-z_][A-Za-z0-9_]*");

    /** Without comments, so that an example in a comment counts for nothing. */
    JavaText {
        source = source.replaceAll("(?s)/\\*.*?\\*/", " ").replaceAll("(?m)^\\s*//.*$", " ");
    }

    /** What stands between double quotes. */
    Set<String> literals() {
        Set<String> found = new TreeSet<>();
        Matcher matcher = LITERAL.matcher(source);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    /** Names of any kind, constants of enums among them. */
    Set<String> words() {
        Set<String> found = new TreeSet<>();
        Matcher matcher = WORD.matcher(source);
        while (matcher.find()) {
            found.add(matcher.group());
        }
        return found;
    }

    /** The argument lists of all calls whose text before the bracket matches the pattern, each argument trimmed. */
    List<List<String>> callsOf(String pattern) {
        List<List<String>> calls = new ArrayList<>();
        Matcher matcher = Pattern.compile("\\b" + pattern + "\\s*\\(").matcher(source);
        while (matcher.find()) {
            calls.add(arguments(matcher.end()));
        }
        return calls;
    }

    private List<String> arguments(int start) {
        List<String> arguments = new ArrayList<>();
        StringBuilder current = new StringBuilder();
        int depth = 0;
        for (int i = start; i < source.length(); i++) {
            char c = source.charAt(i);
            if (c == '"') {
                int end = endOfLiteral(i);
                current.append(source, i, end);
                i = end - 1;
                continue;
            }
            if (depth == 0 && (c == ',' || c == ')')) {
                arguments.add(current.toString().strip());
                current.setLength(0);
                if (c == ')') {
                    return arguments;
                }
                continue;
            }
            depth += "([{".indexOf(c) >= 0 ? 1 : ")]}".indexOf(c) >= 0 ? -1 : 0;
            current.append(c);
        }
        throw new IllegalStateException("a call without an end: " + source.substring(start, start + 40));
    }

    private int endOfLiteral(int start) {
        Matcher matcher = LITERAL.matcher(source);
        if (!matcher.find(start) || matcher.start() != start) {
            throw new IllegalStateException("no literal at " + source.substring(start, start + 20));
        }
        return matcher.end();
    }
}
