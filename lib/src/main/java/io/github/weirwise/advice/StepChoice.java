package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Possibility;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Times;
import io.github.weirwise.unit.Part;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** Weighs holding, moves, services and further readings against each other. */
final class StepChoice {
    /** A unit this likely on target is not looked at for faults that do not show. */
    private static final double LEFT_ALONE = 0.75;

    /** A unit this likely on target is not moved by more than a probe. */
    private static final double LIKELY_ON_TARGET = 0.5;

    /** On a unit on target a fault this likely is worth a look. */
    private static final double LATENT_FAULT_CHANCE = 0.1;

    private static final double LOOK_EFFORT = 0.02;
    private static final double LOOK_MINUTE = 0.0006;
    /** What a look costs once a person's patience is spent. */
    private static final double SPENT = 0.5;

    private static final Duration SAME_LOOK_AGAIN = Duration.ofDays(3);
    /** A move is a probe when it is this small and a fault cannot be ruled out. */
    private static final double PROBE_MM = 2;

    private static final double PROBE_FAULT_CHANCE = 0.2;

    private final Situation situation;
    private final StepValues values;
    private final Patience patience;

    StepChoice(Situation situation, StepValues values) {
        this.situation = situation;
        this.values = values;
        this.patience = new Patience(situation);
    }

    Step step() {
        int best = values.best();
        Step first = values.steps().get(best);
        boolean onTarget = inBandShare() >= LEFT_ALONE;
        if (first instanceof Step.Hold && onTarget && faultChance() < LATENT_FAULT_CHANCE) {
            return finished(first);
        }
        Optional<Part> bad = new Looked(situation).foundBad();
        if (bad.isPresent()
                && bad.equals(situation.diagnosis().likeliest().cause().servicePart())) {
            // Seen to be bad and the likeliest cause: nobody needs a further look.
            return new Step.ServicePart(bad.get());
        }
        LookKind look = null;
        double lookWorth = values.mean(best);
        Set<LookKind> askable = askable();
        LookValue lookValue = new LookValue(situation, values, askable, patience.looksLeft(), patience.changesLeft());
        for (LookKind kind : askable) {
            double worth = lookValue.after(kind) - effort(kind);
            if (worth > lookWorth) {
                lookWorth = worth;
                look = kind;
            }
        }
        if (look != null) {
            return new Step.Look(look);
        }
        if (first instanceof Step.MoveWeir && bad.isPresent()) {
            // Common practice: what is seen to be bad is put right before the weir is touched.
            return new Step.ServicePart(bad.get());
        }
        if (first instanceof Step.ServicePart service && !new Looked(situation).at(service.part())) {
            return unseen(service, onTarget);
        }
        if (first instanceof Step.MoveWeir move && inBandShare() >= LIKELY_ON_TARGET) {
            return new Persistence(situation).longSeen()
                    ? nudge(move)
                    : finished(new Step.Hold(tomorrow(), HoldReason.ON_TARGET));
        }
        return finished(first);
    }

    /** A unit on target is touched by the smallest step only, and the step is announced as a probe. */
    private Step nudge(Step.MoveWeir move) {
        double byMm = Math.copySign(Math.min(PROBE_MM, Math.abs(move.byMm())), move.byMm());
        return new Step.MoveWeir(byMm, situation.crestMm() + byMm, true);
    }

    /** A part that nobody has looked at is looked at before it is taken apart, and left alone on a unit on target. */
    private Step unseen(Step.ServicePart service, boolean onTarget) {
        Optional<LookKind> look = Looked.firstLook(service.part())
                .filter(situation.options().looks()::contains)
                .filter(kind -> !askedOfLate(kind) && patience.looksLeft() > 0);
        if (look.isPresent()) {
            return new Step.Look(look.get());
        }
        return onTarget ? finished(new Step.Hold(tomorrow(), HoldReason.ON_TARGET)) : service;
    }

    private Instant tomorrow() {
        return Times.later(situation.now(), situation.options().clocks().judge());
    }

    private Set<LookKind> askable() {
        Set<LookKind> kinds = EnumSet.noneOf(LookKind.class);
        for (LookKind kind : situation.options().looks()) {
            if (!kind.routine() && !askedOfLate(kind)) {
                kinds.add(kind);
            }
        }
        return kinds;
    }

    private boolean askedOfLate(LookKind kind) {
        Instant since = Times.earlier(situation.now(), SAME_LOOK_AGAIN);
        return situation.journal().all(Reading.class).stream()
                .filter(reading -> reading.at().isAfter(since))
                .flatMap(reading -> reading.observations().stream())
                .anyMatch(observation ->
                        LookOf.kind(observation).filter(kind::equals).isPresent());
    }

    private double effort(LookKind kind) {
        return LOOK_EFFORT + LOOK_MINUTE * kind.minutes() + (patience.looksLeft() > 0 ? 0 : SPENT);
    }

    private Step finished(Step step) {
        if (step instanceof Step.MoveWeir move) {
            boolean probe = Math.abs(move.byMm()) <= PROBE_MM && faultChance() >= PROBE_FAULT_CHANCE;
            return new Step.MoveWeir(move.byMm(), move.toCrestMm(), probe);
        }
        if (step instanceof Step.Hold hold) {
            return new Step.Hold(hold.until(), holdReason());
        }
        return step;
    }

    private double faultChance() {
        return share(each -> !each.faultyParts(StepValues.FAULT).isEmpty());
    }

    private double share(java.util.function.Predicate<Possibility> condition) {
        return situation.sample().stream().filter(condition).count()
                / (double) situation.sample().size();
    }

    private double inBandShare() {
        Band band = Band.of(situation.unit());
        return situation.outlooks().stream().filter(band::holds).count()
                / (double) situation.outlooks().size();
    }

    private HoldReason holdReason() {
        if (share(each -> each.passing(StepValues.FAULT)) > 0.5) {
            return HoldReason.PASSES_BY_ITSELF;
        }
        if (inBandShare() > 0.5) {
            return HoldReason.ON_TARGET;
        }
        if (situation.diagnosis().likeliest().cause() == io.github.weirwise.diagnosis.Cause.LOW_LOAD) {
            return HoldReason.LITTLE_TO_SKIM;
        }
        return HoldReason.WITHIN_NOISE;
    }
}
