package io.github.weirwise.evidence;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The words of the part of docs/reference/performance.md around what {@link Bench} measures. */
final class BenchPage {
    private BenchPage() {}

    static String head() {
        return String.format(Locale.ROOT, """
                One thread, one program after the other. Machine: %s. Times of other languages come from small programs beside the tests (`lib/src/test/c`, `lib/src/test/python`) that solve the same \
                equations with the same starts, stops and tolerances; the command refuses to print a ratio unless their answers agree with ours. A ratio \
                compares the quickest passes of both sides, which other work on the machine can only lengthen; "usually" is the median of ours. A ratio \
                over 1 means that we are quicker.

                """, machine());
    }

    /** The machine on which this program runs, in words. */
    static String machine() {
        return System.getProperty("os.arch") + ", " + Runtime.getRuntime().availableProcessors() + " processors, Java "
                + System.getProperty("java.version");
    }

    static String steadyHead() {
        return """
                ## One steady point

                From the law's inputs to head, holdup, level, gas at the lip and skimmate (`SteadyLaw.at`, the code behind `OperatingPoint`, the tank and \
                the belief). "general": holdup exponents 1.6 to 3, drainage exponents 1.5 to 3, water down through the column, foam's weight on the \
                water. "usual": both exponents 2, where one root has a closed form. C is gcc -O3 without fast-math; NumPy takes all points at once.

                | exponents | ns a point | usually | C, ns | NumPy, ns | over C | over NumPy |
                |---|---|---|---|---|---|---|
                """;
    }

    static String steady(String name, double ours, double usually, double inC, double inNumpy) {
        return String.format(
                Locale.ROOT,
                "| %s | %.0f | %.0f | %s | %s | %s | %s |%n",
                name,
                ours,
                usually,
                number(inC),
                number(inNumpy),
                times(inC, ours),
                times(inNumpy, ours));
    }

    static String column(double ours, double usually, Map<String, OtherLanguage.Time> theirs) {
        StringBuilder text = new StringBuilder(String.format(Locale.ROOT, """

                ## The full foam column

                `FoamColumn.settled` for the three default units at and below their wanted level, relative error of a step 1e-7, and the same equations \
                by each of SciPy's quick methods at that tolerance.

                | solver | microseconds a column | usually | ours is quicker by |
                |---|---|---|---|
                | ours | %.0f | %.0f | |
                """, ours / 1e3, usually / 1e3));
        theirs.forEach((name, time) -> text.append(String.format(
                Locale.ROOT,
                "| SciPy %s | %.0f | %.0f | %.0f |%n",
                name,
                time.quickest() / 1e3,
                time.average() / 1e3,
                time.quickest() / ours)));
        return text.append(theirs.isEmpty() ? "| SciPy is not installed here | | | |\n" : "")
                .toString();
    }

    static String tankYear(JmhRun jmh, Optional<Double> theirs, String compared) {
        String ours = String.format(Locale.ROOT, """

                ## A tank-year

                The small unit's tank with a state every hour, meals twice a day, weekly upkeep: %.1f ms at the quickest, usually %.1f ms. \
                """, jmh.nanoseconds(0) / 1e6, jmh.nanoseconds(50) / 1e6);
        if (theirs.isEmpty()) {
            return ours + "SciPy, which would be held against it, is not installed here.\n";
        }
        return ours
                + String.format(
                        Locale.ROOT, """
                        The tank in SciPy (its Dormand-Prince method, same tolerances) carries the main equations only, without oxygen, daily \
                        swing, ledgers and watch, and takes %.0f ms: %s times as long. %s
                        """, theirs.get() / 1e6, times(theirs.get(), jmh.nanoseconds(0)), compared);
    }

    static String advice(JmhRun short30, JmhRun long300) {
        return String.format(Locale.ROOT, """

                ## Advice

                From a journal to the next step, nothing kept from the call before, after 3,000 calls: %s; %s.

                """, advice("30", short30), advice("300", long300));
    }

    private static String advice(String entries, JmhRun jmh) {
        return String.format(
                Locale.ROOT,
                "%s entries usually %.2f ms, 90 of 100 within %.2f ms, 99 of 100 within %.2f ms",
                entries,
                jmh.nanoseconds(50) / 1e6,
                jmh.nanoseconds(90) / 1e6,
                jmh.nanoseconds(99) / 1e6);
    }

    private static String number(double value) {
        return Double.isInfinite(value) ? "not installed" : String.format(Locale.ROOT, "%.0f", value);
    }

    private static String times(double theirs, double ours) {
        return Double.isInfinite(theirs) ? "-" : String.format(Locale.ROOT, "%.2f", theirs / ours);
    }
}
