package io.github.weirwise.advice;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Weir;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Rules about a weir that cannot stand where it was noted, and about the water after a death. */
final class OtherRules {
    private static final double READING_ERROR_MM = 2;
    private static final Duration AFTER_DEATH = Duration.ofDays(3);

    private OtherRules() {}

    /** A crest beyond the weir's travel: the note or the sheet is wrong, so it is measured, once. */
    static Optional<Step> crestOutside(GuardScene scene) {
        Weir weir = scene.unit().weir();
        double crestMm = scene.settings().weirCrestMm();
        return isOutside(weir, crestMm) && !measuredSinceSet(scene)
                ? Optional.of(new Step.Look(LookKind.CREST_AGAINST_MARK))
                : Optional.empty();
    }

    /** Whether this weir cannot stand at a crest. */
    static boolean isOutside(Weir weir, double crestMm) {
        return crestMm < weir.lowestCrestMm() - READING_ERROR_MM || crestMm > weir.highestCrestMm() + READING_ERROR_MM;
    }

    private static boolean measuredSinceSet(GuardScene scene) {
        boolean measured = false;
        for (JournalEntry entry : scene.journal().entries()) {
            if (entry instanceof WeirMove) {
                measured = false;
            } else if (entry instanceof Reading reading) {
                measured |= reading.find(Observation.CrestAgainstMark.class).isPresent();
            }
        }
        return measured;
    }

    /** After a death the water is tested before anything is tuned; who cannot measure it has the caution alone. */
    static Optional<Step> death(GuardScene scene) {
        return lastDeath(scene)
                .filter(at -> scene.looks().contains(LookKind.SALINITY))
                .filter(at -> scene.within(at, AFTER_DEATH))
                .filter(at -> scene.journal().all(Reading.class).stream()
                        .noneMatch(reading -> !reading.at().isBefore(at)
                                && reading.find(Observation.Salinity.class).isPresent()))
                .map(at -> new Step.Look(LookKind.SALINITY));
    }

    /** Whether an animal died of late and the water was not changed since. */
    static boolean deathOfLate(GuardScene scene) {
        return lastDeath(scene).filter(at -> scene.within(at, AFTER_DEATH)).isPresent();
    }

    private static Optional<Instant> lastDeath(GuardScene scene) {
        Instant death = null;
        for (Happening each : scene.journal().all(Happening.class)) {
            death = switch (each.kind()) {
                case ANIMAL_DIED -> each.at();
                case WATER_CHANGE -> null;
                default -> death;
            };
        }
        return Optional.ofNullable(death);
    }
}
