package io.github.weirwise.evidence;

import io.github.weirwise.Weirwise;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.diagnosis.BeliefOptions;
import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.diagnosis.CauseScene;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Command {@code pairs}: which two faulty parts the daily readings cannot tell apart, and which named reading can. Each
 * fault is shown by the belief's own law without scatter, so what is inseparable here is so for anybody.
 */
final class Pairs {
    /** Two causes are told apart when the readings change their odds by this factor or more, whichever is the real one. */
    private static final double TELLS = 3;

    private static final double FLOOR = 0.002;
    private static final int POSSIBILITIES = 1000;
    private static final int SEEDS = 8;
    private static final PhraseBook BOOK = PhraseBook.ENGLISH_METRIC;

    private final List<Cause> causes =
            Arrays.stream(Cause.values()).filter(Cause::serviceable).toList();
    private final Map<Cause, CauseScene> scenes = new EnumMap<>(Cause.class);
    private final Map<Cause, Shares> routine = new EnumMap<>(Cause.class);
    private final Map<Cause, Map<LookKind, Shares>> looked = new EnumMap<>(Cause.class);

    /** A pair that the daily readings leave open, and the readings that tell it apart. */
    record Pair(Cause one, Cause other, List<LookKind> told) {}

    /** Mean share of each cause. */
    private record Shares(Map<Cause, Double> all) {
        double of(Cause cause) {
            return all.getOrDefault(cause, 0.0);
        }
    }

    private Pairs() {
        for (Cause cause : causes) {
            CauseScene scene = new CauseScene(cause);
            scenes.put(cause, scene);
            routine.put(cause, shares(scene, scene.routine()));
            looked.put(cause, new EnumMap<>(LookKind.class));
        }
    }

    static void run() throws IOException {
        Pairs pairs = new Pairs();
        List<Pair> open = pairs.open();
        String table = pairs.table(open);
        new DocumentPart(Path.of("docs", "reference", "advice.md"), "pairs").write(table);
        System.out.print(table);
        System.out.println("result: pairs=" + open.size() + " causes=" + pairs.causes.size() + " neverTold="
                + open.stream().filter(each -> each.told().isEmpty()).count());
    }

    /** Every pair that is open after the daily readings of either. */
    private List<Pair> open() {
        List<Pair> open = new ArrayList<>();
        for (int i = 0; i < causes.size(); i++) {
            for (int k = i + 1; k < causes.size(); k++) {
                Cause one = causes.get(i);
                Cause other = causes.get(k);
                double prior = Math.log(one.priorWeight() / other.priorWeight());
                boolean tells = logOdds(routine.get(one), one, other) - prior >= Math.log(TELLS)
                        || prior - logOdds(routine.get(other), one, other) >= Math.log(TELLS);
                if (!tells) {
                    open.add(new Pair(one, other, telling(one, other)));
                }
            }
        }
        return open;
    }

    private List<LookKind> telling(Cause one, Cause other) {
        return Arrays.stream(LookKind.values())
                .filter(kind -> observation(scenes.get(one), kind) != null)
                .filter(kind -> gain(one, other, kind) > 0 && gain(other, one, kind) > 0)
                .filter(kind -> gain(one, other, kind) + gain(other, one, kind) >= 2 * Math.log(TELLS))
                .toList();
    }

    /** By how much a reading shifts the odds towards the real one. */
    private double gain(Cause real, Cause other, LookKind kind) {
        return logOdds(after(real, kind), real, other) - logOdds(routine.get(real), real, other);
    }

    private Shares after(Cause real, LookKind kind) {
        CauseScene scene = scenes.get(real);
        return looked.get(real)
                .computeIfAbsent(
                        kind,
                        each -> shares(scene, scene.routine().with(Reading.of(scene.now(), observation(scene, each)))));
    }

    private static double logOdds(Shares shares, Cause one, Cause other) {
        return Math.log((shares.of(one) + FLOOR) / (shares.of(other) + FLOOR));
    }

    /** The shares of the causes, averaged over seeds: a single belief's small shares are few draws. */
    private static Shares shares(CauseScene scene, Journal journal) {
        Map<Cause, Double> mean = new EnumMap<>(Cause.class);
        for (int seed = 1; seed <= SEEDS; seed++) {
            BeliefOptions options = new BeliefOptions(POSSIBILITIES, seed);
            Belief.of(scene.unit(), scene.start(), journal, scene.now(), options)
                    .diagnosis()
                    .causes()
                    .forEach(each -> mean.merge(each.cause(), each.probability() / SEEDS, Double::sum));
        }
        return new Shares(mean);
    }

    /** What a reading shows in a scene, or null for the daily ones. */
    private static Observation observation(CauseScene scene, LookKind kind) {
        return switch (kind) {
            case FUNNEL_LEVEL, CUP_VOLUME, DARKNESS, FOAM_LOOK -> null;
            case HEAD_OVER_CREST -> scene.head();
            case CREST_AGAINST_MARK -> scene.mark();
            case OUTSIDE_LEVEL -> scene.outside();
            case AIR_FLOW -> scene.air();
            case FOAM_COLLAPSE -> scene.collapse();
            case LEVEL_BEYOND_WEIR -> scene.beyond();
            case RETURN_FLOW -> scene.flow();
            case SALINITY -> scene.salinity();
            default -> scene.lookAt(kind.part().orElseThrow());
        };
    }

    private String table(List<Pair> open) {
        StringBuilder table = new StringBuilder();
        table.append("Of ")
                .append(causes.size())
                .append(" faults that a service puts right, these pairs stay open when only");
        table.append(
                " level, cup, darkness and foam are read\n(neither one's readings change the odds between them by a ");
        table.append("factor of ")
                .append((int) TELLS)
                .append("); a reading on the right changes them by\nthat much, on the average of both being real.\n\n");
        table.append(
                "| one | the other | told apart by | the advice on the first one's journal |\n|---|---|---|---|\n");
        for (Pair pair : open) {
            String told = pair.told().stream()
                    .map(kind -> words("advice.look." + kind))
                    .collect(Collectors.joining("; "));
            table.append("| ").append(words(pair.one().nameKey()));
            table.append(" | ").append(words(pair.other().nameKey()));
            table.append(" | ").append(told.isEmpty() ? "none of the readings alone" : told);
            table.append(" | ").append(said(pair.one())).append(" |\n");
        }
        return table.toString();
    }

    private String said(Cause cause) {
        CauseScene scene = scenes.get(cause);
        return BOOK.say(Weirwise.advise(scene.unit(), scene.start(), scene.routine(), scene.now())
                .why()
                .line());
    }

    private static String words(String key) {
        return BOOK.say(Phrase.of(key));
    }
}
