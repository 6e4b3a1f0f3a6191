package io.github.weirwise.advice;

import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the journal tells of a part since its last service: how it was found, what a meter showed, when it was last seen to.
 *
 * @param found the newest look at it
 * @param foundAt when that was
 * @param measuredOff whether the newest measurement that shows it is far off
 * @param servicedAt its last service
 */
record PartSeen(Optional<Finding> found, Optional<Instant> foundAt, boolean measuredOff, Optional<Instant> servicedAt) {
    /** Air or flow this far under what was set is no scatter: meters read to a tenth (common practice). */
    private static final double FAR_BELOW = 0.8;

    private static final double CREST_OFF_MM = 3;
    private static final double SALINITY_OFF = 2;
    /** Water this far over the crest on the far side: the pad backs it up. */
    private static final double BEYOND_OVER_CREST_MM = 3;

    /** What is found within this time after a service is what the service put right, noted late. */
    private static final Duration SAME_VISIT = Duration.ofHours(1);

    private static final Duration LATELY = Duration.ofDays(3);
    private static final double WEEK_DAYS = 7;
    private static final long SECONDS_A_DAY = 86400;

    /** Before the first entry. */
    static final PartSeen NEVER = new PartSeen(Optional.empty(), Optional.empty(), false, Optional.empty());

    static PartSeen of(Part part, GuardScene scene) {
        return scene.noted().part(part);
    }

    /** The parts that an entry tells of. */
    static Set<Part> toldBy(JournalEntry entry) {
        Set<Part> parts = EnumSet.noneOf(Part.class);
        if (entry instanceof Service service) {
            parts.add(service.part());
        } else if (entry instanceof Reading reading) {
            for (Observation each : reading.observations()) {
                parts.addAll(
                        each instanceof Observation.Inspection look
                                ? Set.of(look.part())
                                : Instrument.of(each).measures());
            }
        }
        return parts;
    }

    /** What is known after an entry, of a part, with the settings as the entry left them. */
    PartSeen after(JournalEntry entry, Part part, Settings settings, Settings start) {
        if (entry instanceof Service service && service.part() == part) {
            return new PartSeen(Optional.empty(), Optional.empty(), false, Optional.of(service.at()));
        }
        PartSeen next = this;
        if (entry instanceof Reading reading) {
            for (Observation each : reading.observations()) {
                next = next.after(each, reading.at(), part, settings, start);
            }
        }
        return next;
    }

    private PartSeen after(Observation seen, Instant at, Part part, Settings settings, Settings start) {
        if (seen instanceof Observation.Inspection look && look.part() == part) {
            boolean beforeIt = servicedAt
                    .filter(done -> Duration.between(done, at).compareTo(SAME_VISIT) < 0)
                    .isPresent();
            if (beforeIt && look.finding() != Finding.GOOD) {
                return this;
            }
            return new PartSeen(Optional.of(look.finding()), Optional.of(at), measuredOff, servicedAt);
        }
        return Instrument.of(seen).measures().contains(part)
                ? new PartSeen(found, foundAt, farOff(seen, settings, start), servicedAt)
                : this;
    }

    /** Parts that were found bad and not seen to since, in the order of their table. */
    static List<Part> bad(GuardScene scene) {
        List<Part> bad = new ArrayList<>();
        for (Part part : Part.SERVICEABLE) {
            if (of(part, scene).found.filter(Finding.BAD::equals).isPresent()) {
                bad.add(part);
            }
        }
        return bad;
    }

    /** Whether there is a sight to act on: found not good, or measured far off. */
    boolean speaksForService() {
        return measuredOff || found.filter(finding -> finding != Finding.GOOD).isPresent();
    }

    /** Whether its upkeep is due, counted from a service that was noted: then it is serviced without a look. */
    boolean upkeepDue(Part part, Instant now) {
        return due(part, servicedAt, now);
    }

    /**
     * Whether it comes round every week and nothing is known of it: then it counts as due once, where something is amiss (common
     * practice: who takes over a unit begins with neck and pad).
     */
    boolean upkeepUnknown(Part part) {
        return servicedAt.isEmpty() && found.isEmpty() && part.upkeepDays() > 0 && part.upkeepDays() <= WEEK_DAYS;
    }

    /** Whether a look is due: its upkeep, or where no service was ever noted, that much time since the journal began. */
    static boolean lookDue(Part part, GuardScene scene) {
        return due(part, of(part, scene).servicedAt.or(scene.noted()::begun), scene.now());
    }

    private static boolean due(Part part, Optional<Instant> from, Instant now) {
        Duration interval = Duration.ofSeconds(Math.round(part.upkeepDays() * SECONDS_A_DAY));
        return part.upkeepDays() > 0
                && from.map(at -> Duration.between(at, now).compareTo(interval) >= 0)
                        .orElse(false);
    }

    /** Whether somebody looked at it so lately that another look would tell no more. */
    boolean lookedOfLate(Instant now) {
        return foundAt.filter(at -> Duration.between(at, now).compareTo(LATELY) <= 0)
                .isPresent();
    }

    private static boolean farOff(Observation seen, Settings set, Settings start) {
        if (seen instanceof Observation.AirFlow air) {
            return air.litresPerHour() < FAR_BELOW * set.airLitresPerHour();
        }
        if (seen instanceof Observation.ReturnFlow flow) {
            return flow.litresPerHour() < FAR_BELOW * set.flowLitresPerHour();
        }
        if (seen instanceof Observation.CrestAgainstMark crest) {
            return Math.abs(crest.mm()) >= CREST_OFF_MM;
        }
        if (seen instanceof Observation.LevelBeyondWeir beyond) {
            return beyond.mm() >= BEYOND_OVER_CREST_MM;
        }
        return seen instanceof Observation.Salinity salt
                && Math.abs(salt.practicalSalinity() - start.practicalSalinity()) >= SALINITY_OFF;
    }

    /** The cheapest look that shows a part, among those that can be taken. */
    static Optional<LookKind> firstLook(Part part, GuardScene scene) {
        for (LookKind kind : LookKind.values()) {
            if (scene.looks().contains(kind) && kind.part().filter(part::equals).isPresent()) {
                return Optional.of(kind);
            }
        }
        return scene.looks().stream()
                .filter(kind -> kind.instrument()
                        .filter(row -> row.measures().contains(part))
                        .isPresent())
                .findFirst();
    }
}
