package io.github.weirwise.advice;

import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Times;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What a flood that was seen asks for: make safe, then see whether it helped. */
final class FloodRules {
    /** After this a person can see whether a lowering helped; foam in the neck settles in minutes. */
    static final Duration LOOK_AGAIN = Duration.ofMinutes(20);
    /** A flood that was noted so long ago is history. */
    static final Duration LONG_AGO = Duration.ofDays(7);

    /** Air under this share of the rated is not turned down further but stopped. */
    private static final double LEAST_AIR_SHARE = 0.3;

    private static final double LEAST_LOWERING_MM = 1;
    /** A level this far over where it stood at the same settings is held up. */
    private static final double RISEN_MM = 10;
    /** A level this far under the wanted one need not be lowered further. */
    private static final double FAR_UNDER_MM = 5;
    /** Foam has followed a lowering after this. */
    private static final Duration FOLLOWS = Duration.ofHours(3);

    private FloodRules() {}

    /** Lower the weir; with the weir at its lowest turn the air down; at last stop it. What is held up is not lowered twice unseen. */
    static Optional<Step> makeSafe(GuardScene scene) {
        boolean lowered = scene.noted()
                .changedAt()
                .filter(at -> scene.within(at, FOLLOWS))
                .isPresent();
        Optional<LookKind> first = lowered ? backedUp(scene) : Optional.empty();
        if (first.isPresent()) {
            return Optional.of(new Step.Look(first.get()));
        }
        Optional<Step> mended = afterRepair(scene);
        if (mended.isPresent()) {
            return mended;
        }
        return FloodSeen.lastIn(scene)
                .filter(flood -> scene.within(flood.at(), FloodSeen.FRESH))
                .filter(flood -> flood.answeredAt().isEmpty())
                .map(flood -> against(scene, flood));
    }

    /** What held the water up was just put right: with the level already far under the wanted one the foam follows by itself. */
    private static Optional<Step> afterRepair(GuardScene scene) {
        Optional<Instant> done = Part.SERVICEABLE.stream()
                .filter(part -> part.worst().movesLevel())
                .flatMap(part -> PartSeen.of(part, scene).servicedAt().stream())
                .filter(at -> scene.within(at, FOLLOWS))
                .max(Comparator.naturalOrder());
        boolean flooding = FloodSeen.lastIn(scene)
                .filter(flood -> flood.answeredAt().isEmpty() && scene.within(flood.at(), FloodSeen.FRESH))
                .isPresent();
        if (done.isEmpty() || !flooding) {
            return Optional.empty();
        }
        Optional<LevelsNoted.Read> level =
                scene.noted().levels().read().filter(read -> !read.at().isBefore(done.get()));
        if (level.isEmpty()) {
            return scene.looks().contains(LookKind.FUNNEL_LEVEL)
                    ? Optional.of(new Step.Look(LookKind.FUNNEL_LEVEL))
                    : Optional.empty();
        }
        return level.get().mm() <= scene.unit().target().submergenceMm() - FAR_UNDER_MM
                ? Optional.of(new Step.Hold(Times.later(scene.now(), LOOK_AGAIN), HoldReason.STILL_SETTLING))
                : Optional.empty();
    }

    /** The step against a flood with the settings as they are. */
    static Step.MakeSafe against(GuardScene scene, FloodSeen flood) {
        Settings now = scene.settings();
        double toCrestMm = crestAfter(scene, flood);
        double byMm = toCrestMm - now.weirCrestMm();
        double air = now.airLitresPerHour();
        if (byMm <= -LEAST_LOWERING_MM) {
            return new Step.MakeSafe(SafeWay.LOWER_WEIR, byMm, toCrestMm, air);
        }
        if (air > LEAST_AIR_SHARE * scene.unit().ratedAirLitresPerHour()) {
            return new Step.MakeSafe(SafeWay.LESS_AIR, 0, now.weirCrestMm(), half(air));
        }
        return new Step.MakeSafe(SafeWay.STOP_THE_AIR, 0, now.weirCrestMm(), 0);
    }

    /** Where the weir would stand after the lowering; where it stands when it cannot be lowered. */
    private static double crestAfter(GuardScene scene, FloodSeen flood) {
        double crestMm = scene.settings().weirCrestMm();
        double wanted = Math.min(crestMm, scene.unit().weir().highestCrestMm())
                - Lowering.wantedMm(scene.unit(), flood, CupDrain.mlPerDay(scene.unit()));
        // Where this unit ran well just now it will run well again: no need to go below that.
        double known = scene.noted()
                .weir()
                .fine()
                .map(WeirNoted.At::crestMm)
                .filter(fine -> fine <= crestMm - LEAST_LOWERING_MM)
                .orElse(wanted);
        return Math.min(crestMm, Math.max(scene.unit().weir().lowestCrestMm(), Math.max(wanted, known)));
    }

    static double half(double air) {
        return Math.max(1, Math.round(air / 2));
    }

    /** After an answer: what holds the water up is looked for and put right; then twenty minutes of patience and a look at the foam. */
    static Optional<Step> afterAnswer(GuardScene scene) {
        Optional<Instant> answered =
                FloodSeen.lastIn(scene).flatMap(FloodSeen::answeredAt).filter(at -> scene.within(at, FloodSeen.FRESH));
        List<Part> bad = PartSeen.bad(scene);
        if (answered.isPresent() && !bad.isEmpty()) {
            return Optional.of(new Step.ServicePart(bad.get(0), bad.subList(1, bad.size())));
        }
        Optional<LookKind> backedUp = answered.flatMap(at -> backedUp(scene));
        return backedUp.isPresent()
                ? Optional.of(new Step.Look(backedUp.get()))
                : FloodSeen.lastIn(scene).flatMap(FloodSeen::answeredAt).flatMap(at -> lookAfter(scene, at));
    }

    /** Waiting until a look tells something, then the look; empty when the instant is a day ago. */
    static Optional<Step> lookAfter(GuardScene scene, Instant at) {
        Instant due = Times.later(at, LOOK_AGAIN);
        if (due.isAfter(scene.now())) {
            return Optional.of(new Step.Hold(due, HoldReason.STILL_SETTLING));
        }
        return scene.within(at, FloodSeen.FRESH) ? scene.foamLook() : Optional.empty();
    }

    /** Water that stands too high persistently, or all at once and far, is held up somewhere: no lowering cures a clogged pad. */
    private static Optional<LookKind> backedUp(GuardScene scene) {
        PartSeen pad = PartSeen.of(Part.FILTER_PAD, scene);
        boolean high = LevelOff.in(scene).filter(off -> off.meanMm() > 0).isPresent()
                || scene.noted().levels().risenMm() > RISEN_MM;
        return high && scene.looks().contains(LookKind.FILTER_PAD) && !pad.lookedOfLate(scene.now())
                ? Optional.of(LookKind.FILTER_PAD)
                : Optional.empty();
    }

    /** A cup that drains and is full all the same: hose and vent are looked at before anything is waited for. */
    static Optional<Step> drainBacksUp(GuardScene scene) {
        PartSeen vent = PartSeen.of(Part.CUP_VENT, scene);
        return scene.noted()
                .latest()
                .reading()
                .filter(reading -> CupDrain.mlPerDay(scene.unit()) > 0 && scene.within(reading.at(), FloodSeen.FRESH))
                .flatMap(reading -> reading.find(Observation.CupVolume.class))
                .filter(cup -> cup.full() && scene.looks().contains(LookKind.CUP_VENT))
                .filter(cup -> !vent.lookedOfLate(scene.now()))
                .map(cup -> new Step.Look(LookKind.CUP_VENT));
    }

    /** An old flood that nobody looked after. */
    static Optional<Step> longAgo(GuardScene scene) {
        return FloodSeen.lastIn(scene)
                .filter(flood -> scene.within(flood.at(), LONG_AGO))
                .flatMap(flood -> scene.foamLook());
    }
}
