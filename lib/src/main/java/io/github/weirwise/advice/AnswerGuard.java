package io.github.weirwise.advice;

import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Times;
import io.github.weirwise.unit.Part;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The guard above the choice: looks at a finished step and what is expected of it, and puts a safer one in its place where the
 * answer would contradict itself or the journal. A pure function; never throws.
 */
final class AnswerGuard {
    private static final Set<HoldReason> QUIET = Set.of(
            HoldReason.ON_TARGET,
            HoldReason.WITHIN_NOISE,
            HoldReason.SEEN_ONCE,
            HoldReason.BEST_THERE_IS,
            HoldReason.LITTLE_TO_SKIM);

    private static final Duration DAY = Duration.ofDays(1);
    private static final Duration HOUR = Duration.ofHours(1);

    private final GuardScene scene;
    private final CupFill fill;

    AnswerGuard(GuardScene scene) {
        this.scene = scene;
        this.fill = new CupFill(scene.unit());
    }

    /** The step itself, or the one that takes its place. */
    Step checked(Step step, Expectation expectation) {
        List<Part> bad = PartSeen.bad(scene);
        if (step instanceof Step.ServicePart service) {
            return service(service, bad);
        }
        if (step instanceof Step.MoveWeir && !bad.isEmpty()) {
            // Never a weir move that hides a fault that was seen.
            return service(new Step.ServicePart(bad.get(0)), bad);
        }
        if (step instanceof Step.Hold hold) {
            return hold(hold, expectation);
        }
        if (step instanceof Step.Look look && !LevelOff.tellsOfLevel(look.what())) {
            return LevelOff.in(scene)
                    .flatMap(off -> off.look(scene))
                    .<Step>map(Step.Look::new)
                    .orElse(step);
        }
        return step;
    }

    /** Several parts seen bad are one visit's work; a part that nobody looked at is looked at first. */
    private Step service(Step.ServicePart step, List<Part> bad) {
        Part part = step.part();
        PartSeen seen = PartSeen.of(part, scene);
        if (!seen.speaksForService() && !seen.upkeepDue(part, scene.now()) && !seen.upkeepUnknown(part)) {
            Optional<LookKind> look = PartSeen.firstLook(part, scene);
            if (look.isPresent() && !seen.lookedOfLate(scene.now())) {
                return new Step.Look(look.get());
            }
        }
        Set<Part> also = EnumSet.noneOf(Part.class);
        also.addAll(step.also());
        also.addAll(bad);
        also.remove(part);
        return new Step.ServicePart(part, List.copyOf(also));
    }

    private Step hold(Step.Hold hold, Expectation expectation) {
        if (fill.surelyWithin(expectation, CupFill.NIGHT) && !justSeen()) {
            return scene.foamLook().orElse(hold);
        }
        if (QUIET.contains(hold.reason())) {
            Optional<LevelOff> off = LevelOff.in(scene);
            if (off.isPresent()) {
                Optional<LookKind> look = off.get().look(scene);
                return look.isPresent()
                        ? new Step.Look(look.get())
                        : beforeItIsFull(new Step.Hold(hold.until(), HoldReason.WITHIN_NOISE), expectation);
            }
        }
        return beforeItIsFull(hold, expectation);
    }

    /** Nobody is sent away for longer than the cup surely lasts, for a day at least; nor for longer than it lasts at what was just read. */
    private Step beforeItIsFull(Step.Hold hold, Expectation expectation) {
        Duration wait = Duration.between(scene.now(), hold.until());
        Optional<Duration> expected = fill.fullIn(expectation)
                .map(lasts -> lasts.compareTo(DAY) < 0 ? DAY : lasts.truncatedTo(ChronoUnit.HOURS));
        return Stream.concat(expected.stream(), asJustRead().stream())
                .min(Comparator.naturalOrder())
                .filter(lasts -> lasts.compareTo(wait) < 0)
                .<Step>map(lasts -> new Step.Hold(Times.later(scene.now(), lasts), hold.reason()))
                .orElse(hold);
    }

    /** How long the empty cup lasts, with an hour in hand and an hour at least, at the amount that was read at this visit. */
    private Optional<Duration> asJustRead() {
        return scene.noted()
                .latest()
                .reading()
                .filter(reading -> scene.within(reading.at(), FloodRules.LOOK_AGAIN))
                .flatMap(reading -> reading.find(Observation.CupVolume.class))
                .filter(cup -> cup.possibleIn(scene.unit()))
                .flatMap(cup -> fill.fullAt(cup.mlPerDay()))
                .map(lasts -> lasts.truncatedTo(ChronoUnit.HOURS).minus(HOUR))
                .map(lasts -> lasts.compareTo(HOUR) < 0 ? HOUR : lasts);
    }

    /** Whether cup or foam were looked at so lately that another look would tell no more. */
    private boolean justSeen() {
        return scene.noted()
                .latest()
                .foamAt()
                .filter(at -> scene.within(at, FloodRules.LOOK_AGAIN))
                .isPresent();
    }

    /** How long until the expected amount could fill the cup, when that comes before the next visit. */
    Optional<Duration> fullBefore(Duration nextVisit, Expectation expectation) {
        return fill.fullIn(expectation).filter(in -> in.compareTo(nextVisit) < 0);
    }
}
