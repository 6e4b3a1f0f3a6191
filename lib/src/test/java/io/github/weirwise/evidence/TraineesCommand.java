package io.github.weirwise.evidence;

import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.practice.Debrief;
import io.github.weirwise.practice.Outcome;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.ProcessPoint;
import io.github.weirwise.practice.ProcessPoint.Habit;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.report.PhraseBook;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Simulated trainees with one misconception each, before and after the debrief: what the debrief raises over half of the scenarios
 * against what costs them, and what becomes of them in the other half once that one habit is mended.
 */
final class TraineesCommand implements Evidence.Command {
    /** Draws of the errors of reading; figures are means over them. */
    private static final int SEEDS = 5;

    private static final int LONGEST_HOURS = 400;

    @Override
    public void run(String[] options) throws IOException {
        StringBuilder table = new StringBuilder("""
                | trainee who holds that | before | after one debrief | days lost before | days lost after | raised by the debrief | what cost most |
                |---|---|---|---|---|---|---|
                """);
        int right = 0;
        double before = 0;
        double after = 0;
        for (Trainee each : Trainee.ALL) {
            Lesson lesson = Lesson.of(each);
            right += lesson.raised().equals(lesson.costly()) ? 1 : 0;
            before += lesson.before().lost();
            after += lesson.after().lost();
            table.append(lesson.row());
        }
        System.out.print(table);
        new DocumentPart(Path.of("docs/reference/practice.md"), "trainees").write(table.toString());
        System.out.printf(
                Locale.ROOT,
                "result: trainees=%d raisedWhatCosts=%d daysLostBefore=%.1f daysLostAfter=%.1f%n",
                Trainee.ALL.size(),
                right,
                before,
                after);
    }

    /** Scenarios of a week or two, alternately for learning and for the test. */
    static List<Scenario> scenarios(boolean test) {
        List<Scenario> all = ScenarioJson.BUILT_IN.stream()
                .map(ScenarioJson::builtIn)
                .filter(each -> each.goals().lastsHours() < LONGEST_HOURS)
                .toList();
        return all.stream()
                .filter(each -> all.indexOf(each) % 2 == (test ? 1 : 0))
                .toList();
    }

    private static List<PracticeSession> played(Trainee trainee, List<Scenario> scenarios) {
        return scenarios.stream()
                .flatMap(each -> IntStream.rangeClosed(1, SEEDS).mapToObj(seed -> trainee.play(each, seed)))
                .toList();
    }

    /** What came of some scenarios. */
    record Score(double solved, double lost) {
        static Score of(Trainee trainee, List<Scenario> scenarios) {
            double solved = 0;
            double lost = 0;
            for (PracticeSession each : played(trainee, scenarios)) {
                Outcome outcome = Outcome.of(each);
                solved += outcome.solved() ? 1.0 / SEEDS : 0;
                lost += outcome.costDays() / SEEDS;
            }
            return new Score(solved, lost);
        }
    }

    /** One trainee before and after. */
    record Lesson(Trainee trainee, Score before, Score after, Optional<Habit> raised, Optional<Habit> costly, int of) {
        static Lesson of(Trainee trainee) {
            List<Scenario> learning = scenarios(false);
            Map<Habit, Double> raised = new EnumMap<>(Habit.class);
            for (PracticeSession session : played(trainee, learning)) {
                Debrief.of(session).points().stream()
                        .filter(point -> point.verdict() == ProcessPoint.Verdict.MISSED)
                        .filter(point -> Trainee.TEACHABLE.contains(point.habit()))
                        .forEach(point -> raised.merge(point.habit(), point.costDays(), Double::sum));
            }
            Optional<Habit> first = most(raised);
            Map<Habit, Double> saved = new EnumMap<>(Habit.class);
            double now = Score.of(trainee, learning).lost();
            for (Habit habit : Trainee.TEACHABLE) {
                double saves = now - Score.of(trainee.mended(habit), learning).lost();
                if (saves > 0) {
                    saved.put(habit, saves);
                }
            }
            List<Scenario> test = scenarios(true);
            return new Lesson(
                    trainee,
                    Score.of(trainee, test),
                    Score.of(first.map(trainee::mended).orElse(trainee), test),
                    first,
                    most(saved),
                    test.size());
        }

        private static Optional<Habit> most(Map<Habit, Double> days) {
            return days.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
        }

        String row() {
            return String.format(
                    Locale.ROOT,
                    "| %s | solves %.1f of %d | solves %.1f of %d | %.1f | %.1f | %s | %s |%n",
                    trainee.name(),
                    before.solved(),
                    of,
                    after.solved(),
                    of,
                    before.lost(),
                    after.lost(),
                    words(raised),
                    words(costly));
        }

        private static String words(Optional<Habit> habit) {
            return habit.map(each -> PhraseBook.ENGLISH_METRIC.say(each.words()))
                    .orElse("nothing");
        }
    }
}
