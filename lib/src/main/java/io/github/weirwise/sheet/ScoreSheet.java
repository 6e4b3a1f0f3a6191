package io.github.weirwise.sheet;

import io.github.weirwise.practice.Outcome;
import io.github.weirwise.practice.ProcessPoint;
import io.github.weirwise.practice.SessionSummary;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Sessions as a table in CSV (RFC 4180), a row a session, units in the headings, one column a figure and no total. A text that
 * a spreadsheet would take for a formula begins with an apostrophe.
 */
public final class ScoreSheet {
    /** Where letters are as wide as ideographs, spreadsheets take those for the same. */
    private static final String FORMULA = "=+-@\t\r\uff1d\uff0b\uff0d\uff20";

    private static final String PARTING = ";,|\t\r\n";
    /** What a spreadsheet may drop from the beginning of a cell. */
    private static final String PASSED_OVER = " \"\u00a0";

    private ScoreSheet() {}

    /** The table, to be written in UTF-8. */
    public static String csv(List<SessionSummary> sessions) {
        Map<String, Function<SessionSummary, Object>> columns = columns();
        StringBuilder table = new StringBuilder(String.join(",", columns.keySet())).append("\r\n");
        for (SessionSummary each : sessions) {
            table.append(columns.values().stream()
                            .map(column -> cell(column.apply(each)))
                            .collect(Collectors.joining(",")))
                    .append("\r\n");
        }
        return table.toString();
    }

    private static Map<String, Function<SessionSummary, Object>> columns() {
        Map<String, Function<SessionSummary, Object>> columns = new LinkedHashMap<>();
        columns.put("trainee", each -> each.options().trainee());
        columns.put("scenario", each -> each.scenario().name());
        columns.put("seed", each -> each.options().seed());
        columns.put(
                "goalsMet",
                each -> outcome(each).goals().stream()
                        .filter(goal -> goal.met())
                        .count());
        columns.put("goals", each -> outcome(each).goals().size());
        columns.put("hours", each -> outcome(each).hours());
        columns.put("hoursInBand", each -> outcome(each).hoursInBand());
        columns.put("floodHours", each -> outcome(each).floodHours());
        columns.put("stressHours", each -> outcome(each).stressHours());
        columns.put("spilledLitres", each -> outcome(each).spilledLitres());
        columns.put("organicsRemovedG", each -> outcome(each).organicsRemovedG());
        columns.put("weirMoves", each -> outcome(each).moves());
        columns.put("services", each -> outcome(each).services());
        columns.put("looks", each -> outcome(each).looks());
        columns.put("hintsAsked", SessionSummary::hintsAsked);
        columns.put("adviceOpened", SessionSummary::adviceOpened);
        columns.put("questionsRight", SessionSummary::questionsRight);
        columns.put("questionsAsked", SessionSummary::questionsAsked);
        columns.put("predictionsRight", each -> each.predictions().hits());
        columns.put("predictionsJudged", each -> each.predictions().judged());
        columns.put("meanSure", each -> each.predictions().meanSure());
        columns.put("lastViewOnTruth", SessionSummary::lastViewOnTruth);
        for (ProcessPoint.Habit habit : ProcessPoint.Habit.values()) {
            columns.put(
                    habit.name(),
                    each -> each.points().stream()
                            .filter(point -> point.habit() == habit)
                            .findFirst()
                            .map(ProcessPoint::verdict));
        }
        return columns;
    }

    private static Outcome outcome(SessionSummary session) {
        return session.lane().outcome();
    }

    /** Texts are quoted, amounts have three decimals, what is not known is empty. */
    private static String cell(Object value) {
        if (value instanceof OptionalDouble amount) {
            return amount.isPresent() ? cell(amount.getAsDouble()) : "";
        }
        if (value instanceof Optional<?> word) {
            return word.map(Object::toString).orElse("");
        }
        if (value instanceof Double amount) {
            return String.format(Locale.ROOT, "%.3f", amount);
        }
        return value instanceof String words ? text(words) : value.toString();
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
            cellBegins = PARTING.indexOf(c) >= 0 || cellBegins && PASSED_OVER.indexOf(c) >= 0;
        }
        return cell.append('"').toString();
    }
}
