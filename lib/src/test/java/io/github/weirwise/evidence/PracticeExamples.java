package io.github.weirwise.evidence;

import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.practice.Act;
import io.github.weirwise.practice.Debrief;
import io.github.weirwise.practice.FaultSheet;
import io.github.weirwise.practice.Hands;
import io.github.weirwise.practice.Look;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.Prediction;
import io.github.weirwise.practice.SessionOptions;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.practice.SessionSummary;
import io.github.weirwise.practice.Trend;
import io.github.weirwise.practice.WholeSession;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.sheet.DebriefSheet;
import io.github.weirwise.sheet.GroupSheet;
import io.github.weirwise.sheet.ScoreSheet;
import io.github.weirwise.unit.Part;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** An invented trainee, one who looks first, and the adviser in one scenario; debrief, group page and score sheet of them. */
final class PracticeExamples {
    private static final String SCENARIO = "slow-drying";

    private PracticeExamples() {}

    static void write(Path folder) throws IOException {
        PracticeSession hasty = hasty();
        List<SessionSummary> group = List.of(
                SessionSummary.of(hasty),
                SessionSummary.of(patient()),
                SessionSummary.of(WholeSession.by(Hands.ADVISER, begin("Adviser"))));
        Files.writeString(
                folder.resolve("debrief.html"), new DebriefSheet(PhraseBook.ENGLISH_METRIC).of(Debrief.of(hasty)));
        Files.writeString(folder.resolve("group.html"), new GroupSheet(PhraseBook.ENGLISH_METRIC).of(group, ""));
        Files.writeString(folder.resolve("scores.csv"), ScoreSheet.csv(group));
    }

    private static PracticeSession begin(String trainee) {
        return PracticeSession.begin(ScenarioJson.builtIn(SCENARIO), SessionOptions.DEFAULT.withTrainee(trainee));
    }

    /** Raises first, raises again too soon, then finds the air line and has to lower the weir again. */
    static PracticeSession hasty() {
        PracticeSession session = pass(begin("Trainee A").look(Look.ROUND));
        session = session.ownView(
                new FaultSheet(Map.of(Cause.WEIR_TOO_LOW, 0.6, Cause.AIR_LINE_RESTRICTED, 0.4)), "raise the weir");
        session = pass(session.act(new Act.MoveWeir(4), new Prediction(Trend.MORE, Trend.MORE, 3, 0.9)));
        session = pass(session.waitFor(300));
        session = pass(session.look(Look.FOAM_LOOK));
        session = pass(session.act(
                new Act.MoveWeir(4), new Prediction(Trend.MORE, Trend.MORE, 3, 0.8), "nothing has come yet"));
        session = pass(pass(session.runOn()).look(Look.ROUND));
        session = pass(session.look(Look.AIR_LINE));
        session = session.ownView(
                new FaultSheet(Map.of(Cause.AIR_LINE_RESTRICTED, 0.9, Cause.NECK_DIRTY, 0.1)), "clean the air line");
        session = pass(session.act(
                new Act.ServicePart(Part.AIR_LINE),
                new Prediction(Trend.SAME, Trend.MORE, 2, 0.7),
                "it was the salt all the time"));
        session = pass(pass(session.waitFor(1440)).look(Look.ROUND));
        session = pass(
                session.act(new Act.MoveWeir(-8), new Prediction(Trend.LESS, Trend.LESS, 3, 0.8), "it will flood"));
        return end(session);
    }

    /** Looks at the air before touching the weir. */
    private static PracticeSession patient() {
        PracticeSession session = pass(begin("Trainee B").look(Look.ROUND));
        session = pass(session.look(Look.AIR_FLOW));
        session = pass(session.look(Look.AIR_LINE));
        session = session.ownView(
                new FaultSheet(Map.of(Cause.AIR_LINE_RESTRICTED, 0.8, Cause.INJECTOR_PUMP_WORN, 0.2)),
                "clean the line");
        session = pass(session.act(new Act.ServicePart(Part.AIR_LINE), new Prediction(Trend.MORE, Trend.MORE, 8, 0.8)));
        session = pass(pass(session.waitFor(1440)).look(Look.ROUND));
        return end(session);
    }

    private static PracticeSession end(PracticeSession session) {
        PracticeSession now = session;
        while (!now.over()) {
            now = pass(now.runOn());
        }
        return now;
    }

    /** Takes the first choice of every open question. */
    private static PracticeSession pass(PracticeSession session) {
        PracticeSession now = session;
        while (!now.questions().isEmpty()) {
            int choice = now.questions().get(0).choices().isEmpty() ? 0 : 1;
            now = now.perform(new SessionStep.Answer(now.questions().get(0).name(), choice, ""));
        }
        return now;
    }
}
