package io.github.weirwise.advice;

import io.github.weirwise.unit.Weir;
import java.time.Duration;
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
        return isOutside(weir, crestMm) && !scene.noted().latest().crestMeasured()
                ? Optional.of(new Step.Look(LookKind.CREST_AGAINST_MARK))
                : Optional.empty();
    }

    /** Whether this weir cannot stand at a crest. */
    static boolean isOutside(Weir weir, double crestMm) {
        return crestMm < weir.lowestCrestMm() - READING_ERROR_MM || crestMm > weir.highestCrestMm() + READING_ERROR_MM;
    }

    /** After a death the water is tested before anything is tuned; who cannot measure it has the caution alone. */
    static Optional<Step> death(GuardScene scene) {
        return scene.noted()
                .latest()
                .deathAt()
                .filter(at -> scene.looks().contains(LookKind.SALINITY))
                .filter(at -> scene.within(at, AFTER_DEATH))
                .filter(at -> scene.noted()
                        .latest()
                        .saltAt()
                        .filter(tested -> !tested.isBefore(at))
                        .isEmpty())
                .map(at -> new Step.Look(LookKind.SALINITY));
    }

    /** Whether an animal died of late and the water was not changed since. */
    static boolean deathOfLate(GuardScene scene) {
        return scene.noted()
                .latest()
                .deathAt()
                .filter(at -> scene.within(at, AFTER_DEATH))
                .isPresent();
    }
}
