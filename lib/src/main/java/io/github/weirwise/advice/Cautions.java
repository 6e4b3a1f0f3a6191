package io.github.weirwise.advice;

import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Bounds;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Weir;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What to beware of with a step, gravest first. A danger is named only where this very step can hurt somebody: hands in water,
 * water near mains power, animals without air.
 */
final class Cautions {
    private final GuardScene scene;

    /** Farther than this from the tank's own salinity or temperature, animals are at stake (common practice, from memory). */
    private static final double SALINITY_OFF = 3;

    private static final double CELSIUS_OFF = 3;

    Cautions(GuardScene scene) {
        this.scene = scene;
    }

    /**
     * The cautions of a step.
     *
     * @param full how long until the cup could be full, when that comes before the next visit
     */
    List<Warning> of(Step step, Optional<Duration> full) {
        List<Warning> cautions = new ArrayList<>();
        if (airIsOff(step)) {
            cautions.add(Warning.danger("advice.caution.airOff"));
        }
        if (handsInWater(step)) {
            cautions.add(Warning.danger("advice.caution.unplug"));
            cautions.add(Warning.caution("advice.caution.restart"));
            cautions.add(Warning.note("advice.caution.circuit"));
        }
        if (step instanceof Step.MakeSafe safe) {
            cautions.addAll(whenMadeSafe(safe));
        }
        if (step instanceof Step.ServicePart service) {
            service.parts().forEach(part -> cautions.addAll(forPart(part)));
        }
        full.ifPresent(in -> cautions.add(Warning.caution("advice.caution.overfill", hours(in))));
        if (step instanceof Step.MoveWeir move && move.byMm() > 0 && full.isEmpty()) {
            cautions.add(Warning.caution("advice.caution.flood"));
        }
        cautions.addAll(whatWasNoted());
        cautions.add(Warning.note("advice.caution.noDevice"));
        return Warning.ranked(cautions);
    }

    private boolean airIsOff(Step step) {
        boolean off = scene.settings().airLitresPerHour() == 0;
        if (step instanceof Step.MakeSafe safe) {
            return off || safe.airLitresPerHour() == 0 || safe.how() == SafeWay.START_PUMPS;
        }
        return off || step instanceof Step.Hold hold && hold.reason() == HoldReason.AIR_OFF;
    }

    /** Whether the step puts hands in the water. */
    static boolean handsInWater(Step step) {
        if (step instanceof Step.Look look) {
            return look.what().handsInWater();
        }
        if (step instanceof Step.ServicePart service) {
            return service.parts().stream().anyMatch(part -> part != Part.ADDITIVES && part != Part.SALT_MIX);
        }
        return step instanceof Step.MoveWeir || step instanceof Step.MakeSafe safe && safe.byMm() < 0;
    }

    private static List<Warning> whenMadeSafe(Step.MakeSafe safe) {
        return switch (safe.how()) {
            case LOWER_WEIR, LESS_AIR, STOP_THE_AIR ->
                List.of(Warning.danger("advice.caution.wetFloor"), Warning.caution("advice.caution.container"));
            case START_THE_AIR -> List.of(Warning.caution("advice.caution.container"));
            case START_PUMPS ->
                List.of(Warning.danger("advice.caution.wetFloor"), Warning.caution("advice.caution.restart"));
        };
    }

    private List<Warning> whatWasNoted() {
        List<Warning> cautions = new ArrayList<>();
        Weir weir = scene.unit().weir();
        double crestMm = scene.settings().weirCrestMm();
        if (OtherRules.isOutside(weir, crestMm)) {
            cautions.add(Warning.caution(
                    "advice.caution.crestOutside",
                    Bounds.of(crestMm, Unit.MILLIMETRE),
                    new Bounds(weir.lowestCrestMm(), weir.highestCrestMm(), Unit.MILLIMETRE)));
        }
        if (PumpRules.justRestarted(scene)) {
            cautions.add(Warning.caution("advice.caution.restart"));
        }
        LevelOff.in(scene).ifPresent(off -> cautions.add(off.caution()));
        boolean flooded = FloodSeen.lastIn(scene)
                .filter(flood -> scene.within(flood.at(), FloodRules.LONG_AGO))
                .isPresent();
        if (flooded) {
            cautions.add(Warning.caution("advice.caution.container"));
        }
        if (OtherRules.deathOfLate(scene)) {
            cautions.add(Warning.caution("advice.caution.death"));
        }
        scene.noted().latest().visit().forEach(seen -> water(seen).ifPresent(cautions::add));
        return cautions;
    }

    /** Water that was read far from what the animals are used to comes before any foam. */
    private Optional<Warning> water(Observation seen) {
        if (seen instanceof Observation.Salinity salt
                && Math.abs(salt.practicalSalinity() - scene.start().practicalSalinity()) >= SALINITY_OFF) {
            return Optional.of(Warning.caution(
                    "advice.caution.salinityOff",
                    Quantity.of(salt.practicalSalinity(), Unit.SALINITY),
                    Quantity.of(scene.start().practicalSalinity(), Unit.SALINITY)));
        }
        if (seen instanceof Observation.WaterTemperature warm
                && Math.abs(warm.celsius() - scene.start().waterCelsius()) >= CELSIUS_OFF) {
            return Optional.of(Warning.caution(
                    "advice.caution.temperatureOff",
                    Quantity.of(warm.celsius(), Unit.CELSIUS),
                    Quantity.of(scene.start().waterCelsius(), Unit.CELSIUS)));
        }
        return Optional.empty();
    }

    private static Quantity hours(Duration time) {
        return Quantity.of(Math.max(1, time.toMinutes()) / 60.0, Unit.HOUR);
    }

    private static List<Warning> forPart(Part part) {
        return switch (part) {
            case NECK_AND_CUP -> List.of(Warning.caution("advice.caution.noDetergent"));
            case INJECTOR_NOZZLE ->
                List.of(Warning.caution("advice.caution.aeration"), Warning.caution("advice.caution.acid"));
            case AIR_LINE -> List.of(Warning.caution("advice.caution.siphon"));
            case SALT_MIX -> List.of(Warning.caution("advice.caution.saltSlowly"));
            case FILTER_PAD -> List.of(Warning.caution("advice.caution.notAllAtOnce"));
            case INJECTOR_PUMP, RETURN_PUMP -> List.of(Warning.caution("advice.caution.aeration"));
            case CUP_VENT, SEATING, WEIR_PLATE, WATER_SURFACE, RETURN_WATER, ADDITIVES, SUMP_LEVEL -> List.of();
        };
    }
}
