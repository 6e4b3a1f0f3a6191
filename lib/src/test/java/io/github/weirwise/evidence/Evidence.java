package io.github.weirwise.evidence;

import io.github.weirwise.lab.CalmRun;
import io.github.weirwise.lab.ColumnTableMaker;
import io.github.weirwise.lab.PanelRun;
import io.github.weirwise.lab.TrialRun;
import io.github.weirwise.lab.score.ScoreRun;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/** Starts the command behind a figure by its name; docs/commands.md lists what each prints. */
public final class Evidence {
    /** A command; it prints what it finds and ends with one line {@code result: key=value ...}. */
    interface Command {
        void run(String[] options) throws Exception;
    }

    private Evidence() {}

    /** One line a command, so that two people can add one each at the same time. */
    static Map<String, Command> commands() {
        Map<String, Command> known = new TreeMap<>();
        known.put("checks", options -> Checks.run());
        known.put("trial", options -> TrialRun.run());
        known.put("referee", options -> Referee.run());
        known.put("fuzz", Fuzz::run);
        known.put("journal", JournalKills::run);
        known.put("balance", Balance::run);
        known.put("tank", TankTable::run);
        known.put("tank-week", TankWeek::run);
        known.put("tank-year", TankYear::run);
        known.put("mutation", new Mutation());
        known.put("release", new Release());
        known.put("csv", options -> CsvCommand.run());
        known.put("setup", options -> Setup.run());
        known.put("handover", options -> HandOverCommand.run());
        known.put("column", ColumnCommand::run);
        known.put("fleet", options -> Fleet.run());
        known.put("sensitivity", Sensitivity::run);
        known.put("outside", options -> Outside.run());
        known.put("practice", new PracticeCommand());
        known.put("scenario", new ScenarioCommand());
        known.put("trainees", new TraineesCommand());
        known.put("coverage", options -> Coverage.run());
        known.put("bench", Bench::run);
        known.put("start-up", StartUp::run);
        known.put("request-time", RequestTime::run);
        known.put("performance", Performance::run);
        known.put("advice", options -> AdvicePage.run());
        known.put("score", options -> ScoreRun.run());
        known.put("calm", options -> CalmRun.run());
        known.put("column-table", options -> ColumnTableMaker.run());
        known.put("panel", options -> PanelRun.fromProperties().run());
        known.put("size", options -> Size.run());
        known.put("guard", options -> GuardCommand.run());
        return known;
    }

    /**
     * Runs one command.
     *
     * @param args the name, then the command's own options
     */
    public static void main(String[] args) throws Exception {
        Command command = args.length == 0 ? null : commands().get(args[0]);
        if (command == null) {
            System.err.println(
                    "Give one of these names: " + String.join(", ", commands().keySet()));
            System.exit(2);
            return;
        }
        command.run(Arrays.copyOfRange(args, 1, args.length));
    }
}
