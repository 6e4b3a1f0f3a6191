package io.github.weirwise.json;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Step;
import io.github.weirwise.care.CareItem;
import io.github.weirwise.care.CareState;
import io.github.weirwise.care.CareTask;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Warning;
import io.github.weirwise.score.Bell;
import io.github.weirwise.score.JournalScore;
import io.github.weirwise.score.Scored;
import io.github.weirwise.setup.BreakInStage;
import io.github.weirwise.setup.Fit;
import io.github.weirwise.setup.FitAnswer;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.setup.Question;
import io.github.weirwise.setup.StartUpPlan;
import io.github.weirwise.setup.StartUpStep;
import io.github.weirwise.table.ImportedTable;
import io.github.weirwise.table.TableFault;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.watch.Attention;
import io.github.weirwise.watch.SensorKind;
import io.github.weirwise.watch.WatchState;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What each operation tells, a record each: values of the lower floors with the words that belong to them. */
final class Told {
    private Told() {}

    /** A fit check. */
    record FitTold(
            Fit verdict, Phrase summary, List<FitAnswer> answers, List<Question> notAsked, Settings startingSettings) {
        static FitTold of(FitCheck check) {
            return new FitTold(
                    check.verdict(),
                    check.summary(),
                    check.answers(),
                    check.notAsked(),
                    check.weir().settings());
        }
    }

    /** A start-up plan. */
    record StartTold(Fit fit, List<Warning> warnings, List<StartUpStep> steps, List<BreakInStage> breakIn) {
        static StartTold of(StartUpPlan plan) {
            return new StartTold(plan.check().verdict(), plan.warnings(), plan.steps(), plan.breakIn());
        }
    }

    /** What is due. */
    record UpkeepTold(List<UpkeepLine> items) {}

    /** One task of upkeep. */
    record UpkeepLine(
            CareTask task,
            Phrase what,
            CareState state,
            Instant due,
            Optional<Instant> lastDone,
            double everyDays,
            Phrase reason,
            List<Warning> cautions) {
        static UpkeepLine of(CareItem item) {
            return new UpkeepLine(
                    item.task(),
                    item.task().what(),
                    item.state(),
                    item.due(),
                    item.lastDone(),
                    item.interval().days(),
                    item.interval().reason(),
                    item.task().cautions());
        }
    }

    /** A calendar as a file's text (RFC 5545). */
    record CalendarTold(int events, String calendar) {}

    /** What was taken over from a table. */
    record TableTold(
            Journal journal,
            int rows,
            int faultCount,
            List<FaultLine> faults,
            List<String> ignoredHeadings,
            boolean asksForDateOrder) {
        static TableTold of(ImportedTable table) {
            return new TableTold(
                    table.journal(),
                    table.rows(),
                    table.faultCount(),
                    table.faults().stream().map(FaultLine::of).toList(),
                    table.ignoredHeadings(),
                    table.asksForDateOrder());
        }
    }

    /** One fault of a table. */
    record FaultLine(int row, int column, Phrase what) {
        static FaultLine of(TableFault fault) {
            return new FaultLine(fault.row(), fault.column(), fault.words());
        }
    }

    /** What a watch wants written into the journal, whom it calls, and what to give back to it next time. */
    record WatchTold(List<JournalEntry> readings, List<CallLine> calls, WatchState state) {}

    /** One call for a person. */
    record CallLine(
            Instant at, Attention.Matter matter, Optional<SensorKind> sensor, Phrase text, Optional<Step> step) {
        static CallLine of(Attention call) {
            return new CallLine(
                    call.at(),
                    call.matter(),
                    call.sensor(),
                    call.text(),
                    call.advice().map(Advice::step));
        }
    }

    /**
     * Forecasts of a journal's own readings against what came.
     *
     * @param amounts of the amount; scores are of its logarithm over the wanted one
     * @param levels of the level
     * @param fullCups cups left out because they had run full
     * @param forecasts each of the amount
     */
    record ScoreTold(ScoreLine amounts, ScoreLine levels, int fullCups, List<ForecastLine> forecasts) {
        static ScoreTold of(JournalScore score) {
            double wanted = score.unit().target().skimmateMlPerDay();
            return new ScoreTold(
                    ScoreLine.of(score.amounts(), JournalScore.AMOUNT_WIDTH),
                    ScoreLine.of(score.levels(), JournalScore.LEVEL_WIDTH_MM),
                    score.fullCups(),
                    score.amounts().stream()
                            .map(each -> ForecastLine.of(each, wanted))
                            .toList());
        }
    }

    /**
     * How well forecasts held.
     *
     * @param count how many
     * @param coverage80 share of what came that lay in the stated 80 % range
     * @param logScore mean logarithm of the density given to what came; more is better
     * @param asLastTimeLogScore that of the forecast "as last time"
     * @param averageLogScore that of the forecast "mean of the last five"
     */
    record ScoreLine(
            int count,
            OptionalDouble coverage80,
            OptionalDouble logScore,
            OptionalDouble asLastTimeLogScore,
            OptionalDouble averageLogScore) {
        static ScoreLine of(List<Scored> all, double width) {
            return new ScoreLine(
                    all.size(),
                    known(JournalScore.coverage(all)),
                    known(JournalScore.logScore(all, Scored::forecast, width)),
                    known(JournalScore.logScore(all, Scored::asLastTime, width)),
                    known(JournalScore.logScore(all, Scored::average, width)));
        }

        private static OptionalDouble known(double value) {
            return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
        }
    }

    /** One forecast, and what came. */
    record ForecastLine(Instant at, Range mlPerDay, double cameMlPerDay, boolean held) {
        static ForecastLine of(Scored scored, double wantedMlPerDay) {
            Bell bell = scored.forecast();
            return new ForecastLine(
                    scored.at(),
                    new Range(wantedMlPerDay * Math.exp(bell.low()), wantedMlPerDay * Math.exp(bell.high())),
                    wantedMlPerDay * Math.exp(scored.came()),
                    bell.holds(scored.came()));
        }
    }
}
