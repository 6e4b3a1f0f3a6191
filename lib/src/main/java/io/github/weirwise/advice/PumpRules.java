package io.github.weirwise.advice;

import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Times;
import io.github.weirwise.unit.Settings;
import java.time.Instant;
import java.util.Optional;

/** After a power cut, or whenever pumps stood: start them, and see what the restart does. */
final class PumpRules {
    /** Less than this share of the water that is set is none. */
    private static final double STANDS = 0.05;

    private PumpRules() {}

    /** Start pumps that stand; after a flood only when it has had its rest. */
    static Optional<Step> stopped(GuardScene scene) {
        return last(scene)
                .filter(pumps -> pumps.kind() == Happening.Kind.PUMP_STOPPED)
                .filter(pumps -> !running(scene, pumps.at()))
                .map(Happening::at)
                .or(() -> noWater(scene))
                .map(at -> start(scene, at));
    }

    /** A return flow of nothing, read at the newest visit: that pump stands, whoever stopped it. */
    private static Optional<Instant> noWater(GuardScene scene) {
        Noted.Latest latest = scene.noted().latest();
        return latest.reading()
                .map(Reading::at)
                .filter(at -> scene.within(at, FloodSeen.FRESH))
                .filter(at -> latest.visit().stream()
                        .anyMatch(seen -> seen instanceof Observation.ReturnFlow flow
                                && flow.litresPerHour()
                                        < STANDS * scene.settings().flowLitresPerHour()))
                .filter(at ->
                        last(scene).filter(pumps -> pumps.at().isAfter(at)).isEmpty());
    }

    private static Step start(GuardScene scene, Instant stoppedAt) {
        boolean flooded = FloodSeen.lastIn(scene)
                .filter(flood -> !flood.at().isBefore(Times.earlier(stoppedAt, FloodSeen.FRESH)))
                .isPresent();
        Instant from = flooded ? Times.later(stoppedAt, AirRules.OFF_AFTER_FLOOD) : scene.now();
        Settings now = scene.settings();
        return from.isAfter(scene.now())
                ? new Step.Hold(from, HoldReason.AIR_OFF)
                : new Step.MakeSafe(SafeWay.START_PUMPS, 0, now.weirCrestMm(), now.airLitresPerHour());
    }

    /** A look at the foam right after a restart. */
    static Optional<Step> restarted(GuardScene scene) {
        return last(scene)
                .filter(pumps -> justRestarted(scene))
                .filter(pumps -> scene.noted()
                        .latest()
                        .foamAt()
                        .filter(at -> !at.isBefore(pumps.at()))
                        .isEmpty())
                .flatMap(pumps -> scene.foamLook());
    }

    /** Whether pumps were started again within half a day. */
    static boolean justRestarted(GuardScene scene) {
        return last(scene)
                .filter(pumps -> pumps.kind() == Happening.Kind.PUMP_RESTARTED)
                .filter(pumps -> scene.within(pumps.at(), FloodSeen.FRESH))
                .isPresent();
    }

    private static Optional<Happening> last(GuardScene scene) {
        return scene.noted().latest().pumps();
    }

    static boolean isAboutPumps(Happening happening) {
        return happening.kind() == Happening.Kind.PUMP_STOPPED || happening.kind() == Happening.Kind.PUMP_RESTARTED;
    }

    /** Foam or skimmate seen afterwards, or air turned on, shows that they run again although nobody noted it. */
    private static boolean running(GuardScene scene, Instant since) {
        return scene.noted()
                .latest()
                .runningAt()
                .filter(at -> at.isAfter(since))
                .isPresent();
    }

    static boolean showsRunning(Reading reading) {
        return reading.observations().stream().anyMatch(PumpRules::showsRunning);
    }

    private static boolean showsRunning(Observation observation) {
        return observation instanceof Observation.FoamLook foam && foam.look() != FoamLookWord.NONE
                || observation instanceof Observation.AirFlow air && air.litresPerHour() > 0
                || observation instanceof Observation.HeadOverCrest head && head.mm() > 0;
    }
}
