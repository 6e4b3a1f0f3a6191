package io.github.weirwise.trial;

import io.github.weirwise.advice.AdviserOptions;
import io.github.weirwise.diagnosis.BeliefOptions;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;

/** The adviser on tanks that are bent away from the usual setting, and the adviser with a part of it taken out. */
public final class ShiftReport {
    private static final int THREADS = 2;

    /** One row: what is bent in the tanks, what is taken out of the adviser. */
    private record Variant(String words, Hardship hardship, Entrant entrant) {}

    private final Map<String, Score> scores = new LinkedHashMap<>();
    private final Map<String, Variant> variants = new LinkedHashMap<>();
    private final int tanks;
    private final double seconds;

    private ShiftReport(String phase, long seed, int tanks) {
        this.tanks = tanks;
        bent("done3", "usual setting", Hardship.USUAL);
        bent("responseLess50", "every unit answers half as steeply", new Hardship(0.5, 1, 1, 0, 0, false));
        bent("responseMore50", "every unit answers half as steeply again", new Hardship(1.5, 1, 1, 0, 0, false));
        bent("lagHalf", "foam settles in half the time", new Hardship(1, 0.5, 1, 0, 0, false));
        bent("lagDouble", "foam settles in twice the time", new Hardship(1, 2, 1, 0, 0, false));
        bent("noiseDouble", "reading errors and unrest twice as large", new Hardship(1, 1, 2, 0, 0, false));
        bent("misreports10", "one visit in ten has a gross misreading", new Hardship(1, 1, 1, 0.1, 0, false));
        bent("unnamedCause", "every tank has a cause that nobody has named", new Hardship(1, 1, 1, 0, 1, false));
        bent("evenMix", "all causes come equally often", new Hardship(1, 1, 1, 0, 0, true));
        AdviserOptions whole = AdviserOptions.DEFAULT;
        AdviserOptions blind = new AdviserOptions(whole.belief(), whole.clocks(), Set.of());
        without("noLooks", "the adviser may ask for no extra reading", Field.adviser("noLooks", blind));
        without(
                "noLearning",
                "the adviser gets nothing but the last day's entries, so it cannot learn the unit",
                new Entrant("noLearning", tank -> new ForgetfulPolicy(whole)));
        BeliefOptions few = new BeliefOptions(200, 1);
        without(
                "fewPossibilities",
                "a belief of 200 possibilities instead of 600",
                Field.adviser("fewPossibilities", new AdviserOptions(few, whole.clocks(), whole.looks())));
        without(
                "noSecondThoughts",
                "the first belief decides, also on what touches the unit",
                Field.adviser("noSecondThoughts", whole.withSecondThoughts(0)));
        without(
                "noLookAhead",
                "a look is judged by what can be done right after it, not by the look that would follow",
                Field.adviser("noLookAhead", whole.withLooksAhead(1)));
        long start = System.nanoTime();
        variants.forEach((key, variant) -> scores.put(
                key,
                new Trial(phase, seed, tanks, variant.hardship())
                        .play(List.of(variant.entrant()), THREADS)
                        .get(0)));
        seconds = (System.nanoTime() - start) / 1e9;
    }

    /** Plays every variant on the same number of tanks. */
    public static ShiftReport of(String phase, long seed, int tanks) {
        return new ShiftReport(phase, seed, tanks);
    }

    private void bent(String key, String words, Hardship hardship) {
        variants.put(key, new Variant(words, hardship, Field.adviser(key, AdviserOptions.DEFAULT)));
    }

    private void without(String key, String words, Entrant entrant) {
        variants.put(key, new Variant(words, Hardship.USUAL, entrant));
    }

    /** The table in Markdown. */
    public String table() {
        StringJoiner lines = new StringJoiner("\n");
        lines.add("| variant | done3 | inBand3 | harmful/move | ECE | in the 80 % range |");
        lines.add("|---|---|---|---|---|---|");
        scores.forEach((key, score) -> lines.add(String.format(
                Locale.ROOT,
                "| %s (`%s`) | %.3f | %.3f | %.4f | %.3f | %.3f |",
                variants.get(key).words(),
                key,
                score.done3(),
                score.inBand3(),
                score.harmful(),
                score.expectedError(),
                score.coverage80())));
        return lines.toString();
    }

    /** The line for programs: done3 of every variant. */
    public String resultLine() {
        StringJoiner line = new StringJoiner(" ", "result: ", "");
        line.add("tanks=" + tanks);
        scores.forEach((key, score) -> line.add(String.format(Locale.ROOT, "%s=%.4f", key, score.done3())));
        line.add(String.format(Locale.ROOT, "seconds=%.1f", seconds));
        return line.toString();
    }
}
