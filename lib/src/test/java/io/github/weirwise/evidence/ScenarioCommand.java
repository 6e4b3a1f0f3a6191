package io.github.weirwise.evidence;

import io.github.weirwise.json.DocumentException;
import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.practice.GoalCheck;
import io.github.weirwise.practice.Hands;
import io.github.weirwise.practice.Outcome;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.SessionOptions;
import io.github.weirwise.report.PhraseBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Checks a scenario's file: reads it, then runs it with the adviser, the plain rule and nobody, over some seeds. */
final class ScenarioCommand implements Evidence.Command {
    private static final int SEEDS = 3;
    private static final PhraseBook BOOK = PhraseBook.ENGLISH_METRIC;

    @Override
    public void run(String[] options) throws IOException {
        String file = System.getProperty("file", "");
        if (file.isBlank()) {
            System.out.println("Give the file: -Dfile=my-scenario.json");
            System.out.println("result: valid=0 runs=0 adviserSolves=0 ruleSolves=0 nothingSolves=0");
            return;
        }
        Scenario scenario;
        try {
            scenario = ScenarioJson.readScenario(Files.readString(Path.of(file)));
        } catch (DocumentException e) {
            System.out.println(e.getMessage());
            System.out.println("result: valid=0 runs=0 adviserSolves=0 ruleSolves=0 nothingSolves=0");
            return;
        }
        System.out.println(scenario.title() + " (" + BOOK.say(scenario.level().words()) + ")");
        List<Integer> solved = new ArrayList<>();
        for (Hands hands : Hands.values()) {
            solved.add(solved(scenario, hands));
        }
        System.out.printf(
                "result: valid=1 runs=%d adviserSolves=%d ruleSolves=%d nothingSolves=%d%n",
                SEEDS, solved.get(0), solved.get(1), solved.get(2));
    }

    private static int solved(Scenario scenario, Hands hands) {
        int solved = 0;
        for (int seed = 1; seed <= SEEDS; seed++) {
            Outcome outcome =
                    Outcome.of(hands.play(PracticeSession.begin(scenario, SessionOptions.DEFAULT.withSeed(seed))));
            solved += outcome.solved() ? 1 : 0;
            System.out.printf(
                    Locale.ROOT,
                    "%s, seed %d: %s, %.0f of %.0f h in the band%n",
                    BOOK.say(hands.words()),
                    seed,
                    outcome.solved() ? "solved" : "not solved",
                    outcome.hoursInBand(),
                    outcome.hours());
            for (GoalCheck each : outcome.goals()) {
                if (!each.met()) {
                    System.out.println("  missed: " + BOOK.say(each.what()));
                }
            }
        }
        return solved;
    }
}
