package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.diagnosis.Mixture;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Sum;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a careful person reads before anything is built on it, whatever it is worth by the numbers: what contradicts all else, the
 * cup beside a word for the foam, what may be bad before the weir goes up over it.
 */
final class LooksFirst {
    private static final Duration REMEMBERED = Duration.ofDays(10);
    private static final double CLEARLY_BAD = 0.3;
    private static final double EVEN = 0.5;
    private static final double Z80 = 1.2816;
    /** A meter's mean this much down is more than its scatter. */
    private static final double LESS_LOG = 0.03;
    /** A part this likely clearly bad is looked at before the weir is raised over it. */
    private static final double LIKELY_BAD = 0.4;
    /** A level that stands this much under where it stood is not scatter. */
    private static final double FALLEN_MM = 4;

    private static final double CERTAIN = 0.95;
    /** An amount read this lately stands beside the foam that is seen now. */
    private static final Duration CUP_TELLS = Duration.ofHours(72);

    private final Belief belief;
    private final GuardScene scene;
    private final Set<LookKind> looks;

    LooksFirst(Belief belief, GuardScene scene, Set<LookKind> looks) {
        this.belief = belief;
        this.scene = scene;
        this.looks = looks;
    }

    /** A reading that cannot be, or that stands far from all that is known, is taken again before anything is built on it. */
    Optional<Step> again() {
        return belief.toReadAgain()
                .flatMap(row -> looks.stream()
                        .filter(look -> look.instrument().equals(Optional.of(row)))
                        .map(Step.Look::new)
                        .findFirst());
    }

    /** One word for the foam moves no weir up while the cup can be read. */
    boolean onFoamAlone() {
        return looks.contains(LookKind.CUP_VOLUME)
                && belief.reading(Instrument.CUP_VOLUME)
                        .filter(at -> scene.within(at, CUP_TELLS))
                        .isEmpty();
    }

    /** A pad that is surely clogged holds the water up until it overflows: it is not left so, nor made up for by the weir. */
    Optional<LookKind> surelyClogged() {
        return mayBeLookedAt(Part.FILTER_PAD)
                .filter(look -> belief.chanceOver(Part.FILTER_PAD, EVEN) > CERTAIN)
                .filter(look -> !PartSeen.of(Part.FILTER_PAD, scene).speaksForService());
    }

    private Optional<LookKind> mayBeLookedAt(Part part) {
        return PartSeen.firstLook(part, scene).flatMap(this::unlooked);
    }

    /** What is looked at before the weir is raised; empty when all of it was looked at lately. */
    Optional<LookKind> beforeRaising() {
        return measuredLess().or(this::likelyPart).or(this::fallenLevel).or(this::saltUnread);
    }

    /** What a meter shows going down is looked into before the weir is raised over it. */
    private Optional<LookKind> measuredLess() {
        if (clearlyLess(Sum.AIR, Instrument.AIR_FLOW)) {
            return unlooked(LookKind.AIR_LINE);
        }
        return clearlyLess(Sum.FLOW, Instrument.RETURN_FLOW) ? unlooked(LookKind.RETURN_PUMP) : Optional.empty();
    }

    /** A part that may well be bad is looked at before the weir is raised over it. */
    private Optional<LookKind> likelyPart() {
        return Part.SERVICEABLE.stream()
                .filter(part -> part.worst().levelMm() <= 0)
                .filter(part -> belief.chanceOver(part, CLEARLY_BAD) >= LIKELY_BAD)
                .sorted(Comparator.comparingDouble(part -> -belief.chanceOver(part, CLEARLY_BAD)))
                .flatMap(part -> mayBeLookedAt(part).stream())
                .findFirst();
    }

    /** A level that fell by itself is asked after the flow, before the weir is raised after it. */
    private Optional<LookKind> fallenLevel() {
        if (LevelOff.fallenMm(scene) < FALLEN_MM) {
            return Optional.empty();
        }
        for (LookKind look : List.of(LookKind.HEAD_OVER_CREST, LookKind.RETURN_FLOW, LookKind.RETURN_PUMP)) {
            if (looks.contains(look)) {
                return unlooked(look);
            }
        }
        return Optional.empty();
    }

    /** Foam that gives out after water was filled in asks after the salt, before the weir is raised over it. */
    private Optional<LookKind> saltUnread() {
        boolean filled = lately(belief.happening(Happening.Kind.TOP_OFF))
                || lately(belief.happening(Happening.Kind.WATER_CHANGE));
        return filled ? unlooked(LookKind.SALINITY) : Optional.empty();
    }

    private boolean clearlyLess(Sum sum, Instrument meter) {
        Mixture log = belief.sum(sum, 0);
        return lately(belief.reading(meter)) && log.mean() + Z80 * log.sd() < -LESS_LOG;
    }

    private Optional<LookKind> unlooked(LookKind look) {
        Optional<Instant> last = look.part().isPresent()
                ? belief.look(look.part().get())
                : look.instrument().flatMap(belief::reading);
        return lately(last) || !looks.contains(look) ? Optional.empty() : Optional.of(look);
    }

    private boolean lately(Optional<Instant> at) {
        return at.filter(when -> Duration.between(when, belief.now()).compareTo(REMEMBERED) < 0)
                .isPresent();
    }
}
