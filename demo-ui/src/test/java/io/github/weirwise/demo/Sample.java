package io.github.weirwise.demo;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Expectation;
import io.github.weirwise.advice.Step;
import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.InventedTank;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Theme;
import io.github.weirwise.demo.window.Asking;
import io.github.weirwise.demo.window.MainPanel;
import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.diagnosis.CauseShare;
import io.github.weirwise.diagnosis.Diagnosis;
import io.github.weirwise.diagnosis.Ledgers;
import io.github.weirwise.diagnosis.Verdict;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Reason;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.FoamState;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Things that many tests need: a desk, its window, an adviser with a known answer. */
public final class Sample {
    /** Advice to raise the weir by 4 mm, with texts that any language has. */
    public static final Adviser RAISE_FOUR = (unit, told, journal, now) -> raise(now, 209);

    private Sample() {}

    public static TankDesk desk() {
        TankDesk desk = new TankDesk(InventedTank.of(3));
        desk.liveThroughFirstDay();
        return desk;
    }

    /** The window at work on the invented tank. */
    public static MainPanel window(Dress dress) {
        Theme.install(dress.palette());
        MainPanel panel = new MainPanel(Sample::desk, RAISE_FOUR, Background.AT_ONCE, Asking.NOBODY, dress);
        panel.choose("use.tune");
        return panel;
    }

    private static Advice raise(Instant now, double toCrestMm) {
        Phrase line = Phrase.of("unit.foamState.TOO_DRY");
        Reason why = Reason.of(line, Reason.of(Phrase.of("unit.noFlow"), Reason.of(line)), Reason.of(line));
        Diagnosis diagnosis = new Diagnosis(
                Verdict.TOO_DRY,
                Map.of(FoamState.TOO_DRY, 1.0),
                List.of(new CauseShare(Cause.WEIR_TOO_LOW, 1, new Range(0, 1), Reason.of(line))),
                new Range(4, 8),
                new Range(20, 30),
                new Ledgers(
                        List.of(new Ledgers.Term(Ledgers.Topic.SETTING, 6, new Range(4, 8))),
                        List.of(new Ledgers.Term(Ledgers.Topic.LEVEL, -2, new Range(-3, -1))),
                        new Range(0.1, 0.2),
                        new Range(2, 4)),
                10,
                8,
                List.of());
        return new Advice(
                new Step.MoveWeir(4, toCrestMm, false),
                Phrase.of("unit.foamState.TOO_DRY"),
                diagnosis,
                new Expectation(new Range(8, 12), new Range(40, 90), new Range(2000, 5000), 0.4),
                Optional.of(now.plus(Duration.ofMinutes(20))),
                now.plus(Duration.ofHours(24)),
                why,
                List.of(line),
                List.of(Warning.caution("unit.noFlow")));
    }
}
