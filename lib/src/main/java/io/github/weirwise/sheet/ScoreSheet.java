package io.github.weirwise.sheet;

import io.github.weirwise.practice.Outcome;
import io.github.weirwise.practice.ProcessPoint;
import io.github.weirwise.practice.SessionSummary;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Sessions as a table in CSV (RFC 4180), a row a session, units in the headings, one column a figure and no total. A text that
 * a spreadsheet would take for a formula begins with an apostrophe.
 */
public final class ScoreSheet {
    private static final List<String> FIGURES = List.of(
            "trainee",
            "scenario",
            "seed",
            "goalsMet",
            "goals",
            "hours",
            "hoursInBand",
            "floodHours",
            "stressHours",
            "spilledLitres",
            "organicsRemovedG",
            "weirMoves",
            "services",
            "looks",
            "hintsAsked",
            "adviceOpened",
            "questionsRight",
            "questionsAsked",
            "predictionsRight",
            "predictionsJudged",
            "meanSure",
            "lastViewOnTruth");

    private static final String FORMULA = "=+-@\t\r";
    private static final String PARTING = ";,|\t\r\n";

    private ScoreSheet() {}

    /** The table, to be written in UTF-8. */
    public static String csv(List<SessionSummary> sessions) {
        StringBuilder table = new StringBuilder();
        List<String> heads = new ArrayList<>(FIGURES);
        for (ProcessPoint.Habit habit : ProcessPoint.Habit.values()) {
            heads.add(habit.name());
        }
        line(table, heads);
        sessions.forEach(each -> line(table, row(each)));
        return table.toString();
    }

    private static List<String> row(SessionSummary session) {
        Outcome outcome = session.lane().outcome();
        long met = outcome.goals().stream().filter(each -> each.met()).count();
        List<String> cells = new ArrayList<>(List.of(
                text(session.options().trainee()),
                text(session.scenario().name()),
                Integer.toString(session.options().seed()),
                Long.toString(met),
                Integer.toString(outcome.goals().size()),
                number(outcome.hours()),
                number(outcome.hoursInBand()),
                number(outcome.floodHours()),
                number(outcome.stressHours()),
                number(outcome.spilledLitres()),
                number(outcome.organicsRemovedG()),
                Integer.toString(outcome.moves()),
                Integer.toString(outcome.services()),
                Integer.toString(outcome.looks()),
                Integer.toString(session.hintsAsked()),
                Integer.toString(session.adviceOpened()),
                Integer.toString(session.questionsRight()),
                Integer.toString(session.questionsAsked()),
                Integer.toString(session.predictions().hits()),
                Integer.toString(session.predictions().judged()),
                number(session.predictions().meanSure()),
                number(session.lastViewOnTruth())));
        for (ProcessPoint.Habit habit : ProcessPoint.Habit.values()) {
            cells.add(session.points().stream()
                    .filter(point -> point.habit() == habit)
                    .map(point -> point.verdict().name())
                    .findFirst()
                    .orElse(""));
        }
        return cells;
    }

    private static void line(StringBuilder table, List<String> cells) {
        table.append(String.join(",", cells)).append("\r\n");
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? number(value.getAsDouble()) : "";
    }

    /**
     * A quoted cell. Where the list separator is another one, a spreadsheet parts it at its own, so a formula is told also
     * behind what could part cells there.
     */
    private static String text(String words) {
        StringBuilder cell = new StringBuilder("\"");
        boolean cellBegins = true;
        for (char c : words.replace('\0', ' ').toCharArray()) {
            if (cellBegins && FORMULA.indexOf(c) >= 0) {
                cell.append('\'');
            }
            cell.append(c == '"' ? "\"\"" : c);
            cellBegins = PARTING.indexOf(c) >= 0 || cellBegins && c == ' ';
        }
        return cell.append('"').toString();
    }
}
