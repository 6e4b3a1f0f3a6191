package io.github.weirwise.json;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** What can be asked of the service. */
enum Operation {
    ADVISE,
    OPERATING_POINT,
    FIT,
    START_UP,
    UPKEEP_DUE,
    CALENDAR,
    IMPORT,
    WATCH,
    EXTEND,
    SCORE;

    /** All of them, for a person. */
    static String words() {
        return Arrays.stream(values()).map(Operation::word).collect(Collectors.joining(", "));
    }

    /** As it stands in a request: {@code operatingPoint}. */
    String word() {
        StringBuilder word = new StringBuilder();
        for (String part : name().toLowerCase(Locale.ROOT).split("_")) {
            word.append(word.isEmpty() ? part : Character.toUpperCase(part.charAt(0)) + part.substring(1));
        }
        return word.toString();
    }
}
