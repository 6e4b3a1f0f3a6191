package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.diagnosis.CauseShare;
import io.github.weirwise.diagnosis.Diagnosis;
import io.github.weirwise.diagnosis.Verdict;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Reason;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What may be the matter, in words: a headline, and the likely causes with what speaks for and against each. */
final class LikelyCauses {
    private static final int MOST = 3;
    /** A cause is worth a line from here on. */
    private static final double LEAST = 0.05;
    /** A cause is worth a place in the headline from here on. */
    private static final double POSSIBLE = 0.3;
    /** Causes are close when the lesser one has this share of the likelier one's chance. */
    private static final double CLOSE = 0.6;

    private static final double LIKELY = 0.5;

    private final Phrase verdict;
    private final Verdict foam;
    private final List<CauseShare> all;
    private final List<CauseShare> causes;

    LikelyCauses(Diagnosis diagnosis) {
        this.foam = diagnosis.verdict();
        this.verdict = Phrase.of("advice.verdict." + foam);
        this.all = diagnosis.causes();
        this.causes = all.stream().filter(each -> explains(each.cause())).toList();
    }

    /** A cause that makes foam wetter is no reason for dry foam, nor the other way round. */
    private boolean explains(Cause cause) {
        return switch (foam) {
            case NO_FOAM, TOO_DRY -> cause != Cause.NOTHING_WRONG && !cause.wetter();
            case TOO_WET, FLOODING -> cause != Cause.NOTHING_WRONG && cause.wetter();
            case ON_TARGET, CANNOT_TELL -> true;
        };
    }

    /** The headline of a step; a weir that moves on target does so for a reason that the headline must not deny. */
    Phrase headline(Step step) {
        if (foam == Verdict.ON_TARGET && step instanceof Step.MoveWeir move) {
            return Phrase.of(move.byMm() > 0 ? "advice.why.edgeDry" : "advice.why.edgeWet");
        }
        return headline();
    }

    private Phrase headline() {
        if (foam == Verdict.ON_TARGET) {
            List<Phrase> faults = causes.stream()
                    .filter(LikelyCauses::faultIsLikely)
                    .limit(MOST)
                    .map(each ->
                            Phrase.of("diagnosis.part." + each.cause().part().orElseThrow()))
                    .toList();
            return faults.isEmpty()
                    ? Phrase.of("advice.why.sound", verdict)
                    : Phrase.of("advice.why.upkeep", verdict, faults);
        }
        List<CauseShare> possible = possible();
        if (possible.isEmpty()) {
            return Phrase.of("advice.why.open", verdict);
        }
        CauseShare top = possible.get(0);
        if (possible.size() == 1) {
            return Phrase.of("advice.why.headline", verdict, name(top), chance(top));
        }
        return Phrase.of(
                "advice.why.between",
                verdict,
                possible.stream().map(LikelyCauses::name).toList());
    }

    private static boolean faultIsLikely(CauseShare each) {
        return each.cause().part().isPresent() && each.probability() > LIKELY;
    }

    private List<CauseShare> possible() {
        return causes.stream()
                .filter(each -> each.probability() >= POSSIBLE
                        && each.probability() >= CLOSE * causes.get(0).probability())
                .limit(MOST)
                .toList();
    }

    /** The likely causes, likeliest first, and the one that the step is about; empty when none is worth a line. */
    Optional<Reason> reason(Step step) {
        List<CauseShare> told = new ArrayList<>(causes.stream()
                .filter(each -> each.probability() >= LEAST)
                .limit(MOST)
                .toList());
        all.stream()
                .filter(each -> each.probability() >= LEAST && !told.contains(each))
                .filter(each ->
                        each.cause().part().equals(part(step)) && part(step).isPresent())
                .forEach(told::add);
        List<Reason> lines = told.stream()
                .map(each -> new Reason(
                        Phrase.of("advice.why.cause", name(each), chance(each)),
                        evidence(each.evidence().because())))
                .toList();
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(new Reason(
                        Phrase.of(foam == Verdict.ON_TARGET ? "advice.why.attention" : "advice.why.likely"), lines));
    }

    private static Optional<Part> part(Step step) {
        if (step instanceof Step.Look look) {
            return look.what().part();
        }
        return step instanceof Step.ServicePart service ? Optional.of(service.part()) : Optional.empty();
    }

    /**
     * What speaks for it, how long it has fouled when that is little, then what speaks against it; weak evidence only where there
     * is no strong one.
     */
    private static List<Reason> evidence(List<Reason> all) {
        boolean strong = all.stream().anyMatch(each -> each.line().key().endsWith(".strongly"));
        List<Reason> told = new ArrayList<>();
        for (String side : List.of("diagnosis.for.", "diagnosis.since.", "diagnosis.against.")) {
            all.stream()
                    .filter(each -> each.line().key().startsWith(side))
                    .filter(each -> !strong || each.line().key().endsWith(".strongly"))
                    .forEach(told::add);
        }
        return told;
    }

    private static Phrase name(CauseShare each) {
        return Phrase.of(each.cause().nameKey());
    }

    private static Quantity chance(CauseShare each) {
        return Quantity.of(each.probability(), Unit.CHANCE);
    }
}
