package io.github.weirwise.setup;

import io.github.weirwise.report.Count;
import io.github.weirwise.report.Phrase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether a unit fits a tank: one answer a question, with number, margin, source, sentence and cautions.
 *
 * <p>When the return pump cannot lift the water at all, the questions that need running water are left out rather than
 * answered for a flow of zero; {@link #notAsked} lists them.
 *
 * @param installation what was checked
 * @param running where the return pump works
 * @param weir where the weir starts
 * @param drainBack what comes down at a power cut
 * @param filling the first filling
 * @param answers in the order of {@link Question}
 */
public record FitCheck(
        Installation installation,
        ReturnPoint running,
        WeirStart weir,
        DrainBack drainBack,
        FirstFilling filling,
        List<FitAnswer> answers) {
    /** Copies the answers. */
    public FitCheck {
        answers = List.copyOf(answers);
    }

    /** Checks an installation. */
    public static FitCheck of(Installation installation) {
        ReturnPoint running = ReturnPoint.of(installation);
        WeirStart weir = WeirStart.of(installation, running.flowLitresPerHour());
        DrainBack back = DrainBack.of(installation, running, weir);
        FirstFilling filling = FirstFilling.of(installation, running, weir);
        List<FitAnswer> answers = new ArrayList<>();
        FlowAnswers flow = new FlowAnswers(installation, running, weir);
        if (running.flowLitresPerHour() > 0) {
            answers.addAll(flow.all());
            answers.addAll(new WaterAnswers(installation, running, back, filling).all());
        } else {
            answers.add(flow.workingPoint());
            answers.add(flow.plumbing());
        }
        answers.addAll(new PlaceAnswers(installation).all());
        answers.sort(Comparator.comparing(FitAnswer::question));
        return new FitCheck(installation, running, weir, back, filling, answers);
    }

    /** The answer to a question, unless it could not be asked. */
    public Optional<FitAnswer> answer(Question question) {
        return answers.stream().filter(a -> a.question() == question).findFirst();
    }

    /** Questions that could not be asked because no water runs. */
    public List<Question> notAsked() {
        return Stream.of(Question.values())
                .filter(question -> answer(question).isEmpty())
                .toList();
    }

    /** The worst of the answers. */
    public Fit verdict() {
        return answers.stream()
                .map(FitAnswer::fit)
                .max(Comparator.naturalOrder())
                .orElse(Fit.FAILS);
    }

    /** The verdict in one sentence. */
    public Phrase summary() {
        long fails = answers.stream().filter(a -> a.fit() == Fit.FAILS).count();
        long tight = answers.stream().filter(a -> a.fit() == Fit.TIGHT).count();
        return switch (verdict()) {
            case FITS -> Phrase.of("setup.summary.FITS");
            case TIGHT -> Phrase.of("setup.summary.TIGHT", Count.of((int) tight, "report.count.answers"));
            case FAILS ->
                Phrase.of(
                        "setup.summary.FAILS",
                        Count.of((int) fails, "report.count.answers"),
                        Count.of((int) tight, "report.count.answers"));
        };
    }
}
