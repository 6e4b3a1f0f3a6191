package io.github.weirwise.advice;

import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Times;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import java.time.Duration;
import java.time.Instant;
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

    /** Lower the weir; where that does not help, or cannot be done, turn the air down; at last stop it. */
    static Optional<Step> makeSafe(GuardScene scene) {
        return FloodSeen.lastIn(scene)
                .filter(flood -> scene.within(flood.at(), FloodSeen.FRESH))
                .filter(flood -> flood.answeredAt().isEmpty())
                .map(flood -> mendedSince(scene, flood)
                        ? scene.foamLook().orElse(against(scene, flood))
                        : against(scene, flood));
    }

    /** What held the water up was put right since, and the level went far down with it: the foam follows by itself. */
    private static boolean mendedSince(GuardScene scene, FloodSeen flood) {
        Optional<LevelsNoted.Read> level = scene.noted().levels().read();
        return Part.SERVICEABLE.stream()
                .filter(part -> part.worst().movesLevel())
                .flatMap(part -> PartSeen.of(part, scene).servicedAt().stream())
                .anyMatch(done -> !done.isBefore(flood.at())
                        && level.filter(read -> !read.at().isBefore(done) && farUnder(scene, read.mm()))
                                .isPresent());
    }

    private static boolean farUnder(GuardScene scene, double levelMm) {
        return levelMm <= scene.unit().target().submergenceMm() - FAR_UNDER_MM;
    }

    /** A lowering that has not helped is not repeated over water that is held up, nor made far under the wanted level. */
    private static boolean noUseToLower(GuardScene scene, FloodSeen flood) {
        boolean loweredInVain =
                flood.beforeAt().filter(at -> scene.within(at, FOLLOWS)).isPresent() && stoodUp(scene);
        boolean under =
                flood.levelMm().isPresent() && farUnder(scene, flood.levelMm().getAsDouble());
        return loweredInVain || under;
    }

    /** The step against a flood with the settings as they are. */
    static Step.MakeSafe against(GuardScene scene, FloodSeen flood) {
        Settings now = scene.settings();
        double toCrestMm = crestAfter(scene, flood);
        double byMm = toCrestMm - now.weirCrestMm();
        double air = now.airLitresPerHour();
        if (byMm <= -LEAST_LOWERING_MM && !noUseToLower(scene, flood)) {
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
                - Lowering.wantedMm(scene.unit(), flood, CupFill.drainMlPerDay(scene.unit()));
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
        Optional<Instant> answered = FloodSeen.lastIn(scene).flatMap(FloodSeen::answeredAt);
        return answered.filter(at -> scene.within(at, FloodSeen.FRESH))
                .flatMap(at -> meanwhile(scene))
                .or(() -> answered.flatMap(at -> lookAfter(scene, at)));
    }

    /** What can be done while the foam calms down: what was found bad is put right, what holds the water up is looked for. */
    static Optional<Step> meanwhile(GuardScene scene) {
        List<Part> bad = PartSeen.bad(scene);
        return bad.isEmpty()
                ? backedUp(scene).map(Step.Look::new)
                : Optional.of(new Step.ServicePart(bad.get(0), bad.subList(1, bad.size())));
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
        boolean rinsed =
                pad.servicedAt().filter(at -> scene.within(at, FloodSeen.FRESH)).isPresent();
        return stoodUp(scene)
                        && scene.looks().contains(LookKind.FILTER_PAD)
                        && !rinsed
                        && !pad.lookedOfLate(scene.now())
                ? Optional.of(LookKind.FILTER_PAD)
                : Optional.empty();
    }

    private static boolean stoodUp(GuardScene scene) {
        return LevelOff.in(scene).filter(off -> off.meanMm() > 0).isPresent()
                || scene.noted().levels().risenMm() > RISEN_MM;
    }

    /** A cup that drains and is full all the same: hose and vent are looked at before anything is waited for. */
    static Optional<Step> drainBacksUp(GuardScene scene) {
        PartSeen vent = PartSeen.of(Part.CUP_VENT, scene);
        return scene.noted()
                .latest()
                .reading()
                .filter(reading ->
                        CupFill.drainMlPerDay(scene.unit()) > 0 && scene.within(reading.at(), FloodSeen.FRESH))
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
