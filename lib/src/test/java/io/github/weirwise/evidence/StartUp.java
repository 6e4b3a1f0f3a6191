package io.github.weirwise.evidence;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.StringJoiner;

/**
 * Command {@code start-up}: what it costs to ask the library for the first time, each in programs of their own that have just
 * started; writes its part of docs/reference/performance.md. The Java machine's own start is not counted.
 */
final class StartUp {
    private static final String KEY = "start-up";

    private StartUp() {}

    static DocumentPart part() {
        return new DocumentPart(Path.of("docs", "reference", "performance.md"), KEY);
    }

    static void run(String[] options) throws IOException, InterruptedException {
        int starts = Integer.getInteger("starts", 21);
        StringBuilder text = new StringBuilder(String.format(Locale.ROOT, """
                Machine: %s. Medians of %d programs each that had just started, ms; the start of the Java machine itself is not counted. "Loading" is the first time \
                less the second: reading and checking classes, tables and texts. The rest is work by code that is not yet compiled.

                | asked for the first time | first time | second time | loading |
                |---|---|---|---|
                """, BenchPage.machine(), starts));
        StringJoiner result = new StringJoiner(" ", "result: ", "");
        for (Asked asked : Asked.values()) {
            double[] first = new double[starts];
            double[] second = new double[starts];
            for (int i = 0; i < starts; i++) {
                String[] said = ask(asked.question).split(" ");
                first[i] = Double.parseDouble(said[0]);
                second[i] = Double.parseDouble(said[1]);
            }
            double once = median(first);
            double again = median(second);
            text.append(String.format(
                    Locale.ROOT, "| %s | %.1f | %.1f | %.1f |%n", asked.words, once, again, once - again));
            result.add(String.format(Locale.ROOT, "%s=%.1f", asked.key, once));
        }
        System.out.print(text);
        part().write(text.toString());
        System.out.println(result);
    }

    private enum Asked {
        DOOR(StartUpProbe.Question.DOOR, "doorMs", "the front door: `Weirwise.operatingPoint`"),
        JSON(StartUpProbe.Question.JSON, "jsonDoorMs", "the same written as a document: `WeirwiseJson`"),
        BINDING(
                StartUpProbe.Question.BINDING,
                "bindingMs",
                "a request of one reading, read and written by our own binding"),
        MAPPER(StartUpProbe.Question.MAPPER, "mapperMs", "one like it by Jackson's mapper, records and sealed types"),
        SMALL(StartUpProbe.Question.SMALL_ADVICE, "smallAdviceMs", "advice on one reading, smallest belief"),
        FULL(StartUpProbe.Question.FULL_ADVICE, "firstAdviceMs", "advice on 30 entries, usual belief");

        private final StartUpProbe.Question question;
        private final String key;
        private final String words;

        Asked(StartUpProbe.Question question, String key, String words) {
            this.question = question;
            this.key = key;
            this.words = words;
        }
    }

    private static String ask(StartUpProbe.Question question) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        StartUpProbe.class.getName(),
                        question.name())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String said = new String(process.getInputStream().readAllBytes()).trim();
        if (process.waitFor() != 0) {
            throw new IllegalStateException("asking for " + question + " failed");
        }
        return said;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
