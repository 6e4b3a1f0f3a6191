package io.github.weirwise.practice;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Require;
import io.github.weirwise.report.Unit;
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
        Limit.of(name, 0, LONGEST, Unit.COUNT, "practice.try.sayItShorter").check(text.length());
    }

    static List<String> all(String name, List<String> texts) {
        few(name, texts.size());
        texts.forEach(each -> required(name, each));
        return List.copyOf(texts);
    }

    static void few(String name, int count) {
        Limit.of(name, 0, MOST, Unit.COUNT, "practice.try.leaveOut").check(count);
    }
}
