package io.github.weirwise.evidence;

import io.github.weirwise.json.DocumentException;
import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.practice.GoalCheck;
import io.github.weirwise.practice.Hands;
import io.github.weirwise.practice.LogLine;
import io.github.weirwise.practice.Outcome;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.SessionClock;
import io.github.weirwise.practice.SessionOptions;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.practice.TrackPoint;
import io.github.weirwise.practice.WholeSession;
import io.github.weirwise.report.PhraseBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Checks a scenario's file: reads it, then runs it with the adviser, the careful keeper and nobody, over some seeds. */
final class ScenarioCommand implements Evidence.Command {
    private static final int SEEDS = 3;
    private static final PhraseBook BOOK = PhraseBook.ENGLISH_METRIC;

    @Override
    public void run(String[] options) throws IOException {
        String file = System.getProperty("file", "");
        if (file.isBlank()) {
            System.out.println("Give the file: -Dfile=my-scenario.json");
            System.out.println("result: valid=0 runs=0 adviserSolves=0 keeperSolves=0 nothingSolves=0");
            return;
        }
        Scenario scenario;
        try {
            scenario = ScenarioJson.readScenario(Files.readString(Path.of(file)));
        } catch (DocumentException e) {
            System.out.println(e.getMessage());
            System.out.println("result: valid=0 runs=0 adviserSolves=0 keeperSolves=0 nothingSolves=0");
            return;
        }
        System.out.println(scenario.title() + " (" + BOOK.say(scenario.level().words()) + ")");
        List<Integer> solved = new ArrayList<>();
        solved.add(solved(scenario, "the adviser", Hands.ADVISER));
        solved.add(solved(scenario, "a careful keeper", WholeSession.KEEPER));
        solved.add(solved(scenario, "doing nothing", Hands.NOTHING));
        System.out.printf(
                "result: valid=1 runs=%d adviserSolves=%d keeperSolves=%d nothingSolves=%d%n",
                SEEDS, solved.get(0), solved.get(1), solved.get(2));
    }

    private static int solved(Scenario scenario, String name, Hands hands) {
        int solved = 0;
        for (int seed = 1; seed <= SEEDS; seed++) {
            PracticeSession end =
                    WholeSession.by(hands, PracticeSession.begin(scenario, SessionOptions.DEFAULT.withSeed(seed)));
            Outcome outcome = Outcome.of(end);
            solved += outcome.solved() ? 1 : 0;
            if (seed == 1) {
                course(end);
            }
            System.out.printf(
                    Locale.ROOT,
                    "%s, seed %d: %s, %.0f of %.0f h in the band%n",
                    name,
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

    /** True course of the amount by the day, history included, and what was done. */
    private static void course(PracticeSession end) {
        StringBuilder days = new StringBuilder("  mL/day, one figure a day:");
        double next = Double.NEGATIVE_INFINITY;
        double arrives = end.scenario().start().arrivesAtHour();
        for (TrackPoint each : end.track()) {
            if (each.hours() >= next) {
                days.append(each.hours() >= arrives && next < arrives ? " |" : "")
                        .append(String.format(Locale.ROOT, " %.0f", each.skimmateMlPerDay()));
                next = each.hours() + 24;
            }
        }
        System.out.println(days);
        for (LogLine line : end.log()) {
            if (line.step() instanceof SessionStep.Do done) {
                System.out.println("  " + BOOK.say(SessionClock.words(line.fromHours())) + ": "
                        + BOOK.say(done.act().words()));
            }
        }
    }
}
