package io.github.weirwise.advice;

import io.github.weirwise.report.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * The way back to air: off for two hours after a flood at most, then half of it with the weir low and somebody watching, and
 * all of it after an hour of calm foam. The hours are common practice, from memory.
 */
final class AirRules {
    static final Duration OFF_AFTER_FLOOD = Duration.ofHours(2);
    private static final Duration CALM = Duration.ofHours(1);

    private AirRules() {}

    static Optional<Step> backToAir(GuardScene scene) {
        AirNoted air = scene.noted().air();
        return air.isAway(scene) ? Optional.of(next(scene, air)) : Optional.empty();
    }

    private static Step next(GuardScene scene, AirNoted air) {
        if (scene.settings().airLitresPerHour() == 0) {
            Instant from = air.against() ? Times.later(air.changedAt().orElseThrow(), OFF_AFTER_FLOOD) : scene.now();
            return from.isAfter(scene.now())
                    ? FloodRules.meanwhile(scene).orElse(new Step.Hold(from, HoldReason.AIR_OFF))
                    : start(scene, FloodRules.half(air.usual()), true);
        }
        Instant changed = air.changedAt().orElseThrow();
        if (!seenSince(scene, changed)) {
            Optional<Step> look = Optional.of(scene)
                    .filter(any -> air.against())
                    .flatMap(FloodRules::meanwhile)
                    .or(() -> FloodRules.lookAfter(scene, changed))
                    .or(scene::foamLook);
            if (look.isPresent()) {
                return look.get();
            }
        }
        Instant full = Times.later(changed, CALM);
        return full.isAfter(scene.now()) ? new Step.Hold(full, HoldReason.AIR_OFF) : start(scene, air.usual(), false);
    }

    /** Whether cup or foam were looked at since; had they been wild, the rule for floods would have spoken. */
    private static boolean seenSince(GuardScene scene, Instant since) {
        return scene.noted().latest().foamAt().filter(at -> at.isAfter(since)).isPresent();
    }

    private static Step start(GuardScene scene, double air, boolean first) {
        double crestMm = scene.settings().weirCrestMm();
        double toCrestMm = first ? lowered(scene) : crestMm;
        return new Step.MakeSafe(SafeWay.START_THE_AIR, toCrestMm - crestMm, toCrestMm, air);
    }

    /** A flood that only the air was stopped against comes back with the air; so the weir goes down first. */
    private static double lowered(GuardScene scene) {
        double crestMm = scene.settings().weirCrestMm();
        return FloodSeen.lastIn(scene)
                .filter(flood -> scene.within(flood.at(), Duration.ofDays(2)))
                .filter(flood -> scene.start().weirCrestMm() <= crestMm)
                .map(flood -> FloodRules.against(scene, flood).toCrestMm())
                .orElse(crestMm);
    }
}
