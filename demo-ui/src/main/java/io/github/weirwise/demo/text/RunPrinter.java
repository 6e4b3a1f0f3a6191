package io.github.weirwise.demo.text;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.look.ExpectWords;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.diagnosis.ObservationWords;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Band;
import io.github.weirwise.report.Count;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Reason;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import java.time.Instant;
import java.util.function.Consumer;

/** Writes a tuning run as plain lines with a narrow left column. */
final class RunPrinter {
    private static final int LABEL_WIDTH = 9;
    private static final int LINE_WIDTH = 100;

    private final Words words;
    private final Consumer<String> out;
    private final Clock clock;

    RunPrinter(Clock clock, Words words, Consumer<String> out) {
        this.clock = clock;
        this.words = words;
        this.out = out;
    }

    void start(TankDesk tank) {
        out.accept(words.of("text.title", tank.unit().name()));
        out.accept(words.of(
                "text.start",
                Quantity.of(tank.settings().weirCrestMm(), Unit.MILLIMETRE),
                Quantity.of(tank.unit().target().skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                Band.of(tank.unit().target().skimmateBandMlPerDay(), Unit.MILLILITRE_PER_DAY)));
        out.accept(words.of("text.hidden"));
    }

    void seen(Instant at, Reading reading) {
        out.accept("");
        out.accept(words.of("text.day", clock.when(at)));
        String label = words.of("text.seen");
        for (Observation each : reading.observations()) {
            line(label, words.say(ObservationWords.of(each)));
            label = "";
        }
    }

    void advice(Instant now, Advice advice) {
        for (Warning caution : advice.cautions()) {
            line(words.of("text.caution"), words.book().say(caution));
        }
        line(words.of("text.step"), words.say(advice.what()));
        reasons(words.of("text.why"), advice.why(), 0);
        line(words.of("text.wait"), words.say(clock.waiting(advice)));
        line(words.of("text.expect"), words.say(ExpectWords.of(advice)));
        String label = words.of("text.ifNot");
        for (Phrase phrase : advice.wouldChangeIt()) {
            line(label, words.say(phrase));
            label = "";
        }
    }

    private void reasons(String label, Reason reason, int depth) {
        line(label, "  ".repeat(depth) + words.say(reason.line()));
        reason.because().forEach(child -> reasons("", child, depth + 1));
    }

    void end(TuningRun.Outcome outcome) {
        out.accept("");
        out.accept(words.of(
                outcome.onTarget() ? "text.reached" : "text.notReached",
                Count.of(outcome.changes(), "report.count.changes")));
        out.accept(words.of(
                "text.truth",
                Quantity.of(outcome.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                Quantity.of(outcome.submergenceMm(), Unit.MILLIMETRE)));
        out.accept(outcome.line());
    }

    private void line(String label, String text) {
        String indent = " ".repeat(text.length() - text.stripLeading().length());
        String left = label;
        StringBuilder line = new StringBuilder(indent);
        for (String word : text.strip().split(" ")) {
            if (line.length() > indent.length() && line.length() + word.length() + LABEL_WIDTH > LINE_WIDTH) {
                put(left, line);
                left = "";
                line = new StringBuilder(indent).append("  ");
            }
            line.append(line.toString().isBlank() ? "" : " ").append(word);
        }
        put(left, line);
    }

    private void put(String label, CharSequence text) {
        out.accept((label + " ".repeat(Math.max(1, LABEL_WIDTH - label.length())) + text).stripTrailing());
    }
}
