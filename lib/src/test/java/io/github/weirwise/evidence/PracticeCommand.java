package io.github.weirwise.evidence;

import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.practice.Hands;
import io.github.weirwise.practice.Look;
import io.github.weirwise.practice.Outcome;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.SessionOptions;
import io.github.weirwise.practice.WholeSession;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/** Runs every built-in scenario with the adviser, the careful keeper and nobody, replays each, and times the steps. */
final class PracticeCommand implements Evidence.Command {
    private static final int TIMED = 40;
    private static final double WEEK_MINUTES = 7 * 1440;

    private int adviser;
    private int rule;
    private int nothing;
    private int replays;

    @Override
    public void run(String[] options) throws IOException {
        int seed = Integer.getInteger("seed", 1);
        System.out.printf(
                "%-22s %-7s %-8s %7s %8s %6s %6s %6s%n",
                "scenario", "level", "who", "solved", "inBandH", "floodH", "moves", "serv.");
        for (String name : ScenarioJson.BUILT_IN) {
            Scenario scenario = ScenarioJson.builtIn(name);
            PracticeSession start = PracticeSession.begin(scenario, SessionOptions.DEFAULT.withSeed(seed));
            adviser += played(start, "adviser", Hands.ADVISER);
            rule += played(start, "keeper", WholeSession.KEEPER);
            nothing += played(start, "nobody", Hands.NOTHING);
        }
        times();
        PracticeExamples.write(Path.of("docs/examples"));
        int scenarios = ScenarioJson.BUILT_IN.size();
        System.out.printf(
                "result: scenarios=%d adviserSolves=%d keeperSolves=%d nothingSolves=%d replaysEqual=%d%n",
                scenarios, adviser, rule, nothing, replays);
        if (replays < 3 * scenarios) {
            throw new IllegalStateException("a session does not replay to the same state");
        }
    }

    private int played(PracticeSession start, String who, Hands hands) {
        PracticeSession end = WholeSession.by(hands, start);
        Outcome outcome = Outcome.of(end);
        Scenario scenario = start.scenario();
        System.out.printf(
                Locale.ROOT,
                "%-22s %-7s %-8s %7s %8.0f %6.0f %6d %6d%n",
                scenario.name(),
                scenario.level(),
                who,
                outcome.solved() ? "yes" : "no",
                outcome.hoursInBand(),
                outcome.floodHours(),
                outcome.moves(),
                outcome.services());
        PracticeSession again =
                PracticeSession.replay(ScenarioJson.readSession(ScenarioJson.writeSession(end.toRecord())));
        boolean equal = again.truth().equals(end.truth())
                && again.journal().equals(end.journal())
                && again.track().equals(end.track());
        replays += equal ? 1 : 0;
        return outcome.solved() ? 1 : 0;
    }

    /** A look and a week, the middle of many, after warming up. */
    private static void times() {
        PracticeSession start =
                PracticeSession.begin(ScenarioJson.builtIn(ScenarioJson.BUILT_IN.get(1)), SessionOptions.DEFAULT);
        PracticeSession free = start;
        while (!free.questions().isEmpty()) {
            free = free.perform(new io.github.weirwise.practice.SessionStep.Answer(
                    free.questions().get(0).name(), 0, ""));
        }
        PracticeSession ready = free;
        double look = middle(() -> ready.look(Look.ROUND));
        double week = middle(() -> ready.waitFor(WEEK_MINUTES));
        System.out.printf(Locale.ROOT, "a look %.2f ms (bar 5), a week of virtual time %.1f ms (bar 50)%n", look, week);
    }

    private static double middle(Runnable work) {
        double[] millis = new double[TIMED];
        for (int i = 0; i < TIMED; i++) {
            long from = System.nanoTime();
            work.run();
            millis[i] = (System.nanoTime() - from) / 1e6;
        }
        double[] warm = Arrays.copyOfRange(millis, TIMED / 2, TIMED);
        Arrays.sort(warm);
        return warm[warm.length / 2];
    }
}
