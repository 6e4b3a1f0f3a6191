package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.unit.Part;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** Whether a part was looked at, or measured by what it does, since it was last serviced. */
final class Looked {
    private final Situation situation;

    Looked(Situation situation) {
        this.situation = situation;
    }

    boolean at(Part part) {
        Set<LookKind> shows = showing(part);
        boolean looked = false;
        for (JournalEntry entry : situation.journal().entries()) {
            if (entry instanceof Service service && service.part() == part) {
                looked = false;
            } else if (entry instanceof Reading reading) {
                looked |= reading.observations().stream()
                        .map(LookOf::kind)
                        .flatMap(Optional::stream)
                        .anyMatch(shows::contains);
            }
        }
        return looked;
    }

    /** What the newest look at a part found since its last service; empty when nobody looked. */
    Optional<Finding> found(Part part) {
        Finding found = null;
        for (JournalEntry entry : situation.journal().entries()) {
            if (entry instanceof Service service && service.part() == part) {
                found = null;
            } else if (entry instanceof Reading reading) {
                for (Observation observation : reading.observations()) {
                    if (observation instanceof Observation.Inspection look && look.part() == part) {
                        found = look.finding();
                    }
                }
            }
        }
        return Optional.ofNullable(found);
    }

    /** The first part that was found bad and not serviced since, if any. */
    Optional<Part> foundBad() {
        return Arrays.stream(Part.values())
                .filter(part -> found(part).filter(Finding.BAD::equals).isPresent())
                .filter(Looked::serviceable)
                .findFirst();
    }

    private static boolean serviceable(Part part) {
        return Arrays.stream(Cause.values())
                .anyMatch(cause -> cause.servicePart().filter(part::equals).isPresent());
    }

    /** The look that shows a part most plainly, if there is one. */
    static Optional<LookKind> firstLook(Part part) {
        return showing(part).stream()
                .max((a, b) -> Boolean.compare(a.part().isPresent(), b.part().isPresent()));
    }

    private static Set<LookKind> showing(Part part) {
        Set<LookKind> kinds = EnumSet.noneOf(LookKind.class);
        for (LookKind kind : LookKind.values()) {
            if (kind.part().filter(part::equals).isPresent()) {
                kinds.add(kind);
            }
        }
        switch (part) {
            case RETURN_PUMP -> kinds.addAll(Set.of(LookKind.RETURN_FLOW, LookKind.HEAD_OVER_CREST));
            case WEIR_PLATE -> kinds.add(LookKind.CREST_AGAINST_MARK);
            case FILTER_PAD -> kinds.add(LookKind.LEVEL_BEYOND_WEIR);
            case SALT_MIX -> kinds.add(LookKind.SALINITY);
            default -> {}
        }
        return kinds;
    }
}
