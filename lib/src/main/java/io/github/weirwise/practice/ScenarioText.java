package io.github.weirwise.practice;

import io.github.weirwise.report.Require;
import java.util.List;

/** Guards for the texts of a scenario. */
final class ScenarioText {
    private static final int LONGEST = 2000;
    private static final int MOST = 40;

    private ScenarioText() {}

    static void required(String name, String text) {
        Require.text(name, text);
        optional(name, text);
    }

    static void optional(String name, String text) {
        Require.inRange(name, text.length(), 0, LONGEST, "characters", "say it shorter");
    }

    static List<String> all(String name, List<String> texts) {
        few(name, texts.size());
        texts.forEach(each -> required(name, each));
        return List.copyOf(texts);
    }

    static void few(String name, int count) {
        Require.inRange(name, count, 0, MOST, "elements", "leave out what matters least");
    }
}
