package io.github.weirwise.trial;

import io.github.weirwise.advice.HoldReason;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.advice.Step;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A tidy technician without a model: when the amount is off, look at four parts in a fixed order, service one found bad,
 * and only then step the weir by the waiting rule.
 */
final class Checklist implements Policy {
    private static final List<LookKind> ORDER =
            List.of(LookKind.AIR_LINE, LookKind.NECK_AND_CUP, LookKind.FILTER_PAD, LookKind.INJECTOR_PUMP);

    private final Policy rule = RulePolicies.fixedStep(24);
    private int looked;

    @Override
    public Decision next(SkimmerUnit unit, Settings start, Journal journal, Instant now) {
        Seen seen = new Seen(unit, start, journal, now);
        Optional<Observation.Inspection> bad = bad(journal);
        if (bad.isPresent()) {
            return Decision.of(new Step.ServicePart(bad.get().part()));
        }
        boolean off = seen.amount(12).isPresent()
                && Seen.wantedWay(seen.amount(12).getAsDouble()) != 0
                && seen.hoursSinceChange() >= 24;
        if (!off) {
            return Decision.hold(now, HoldReason.WITHIN_NOISE);
        }
        if (looked < ORDER.size()) {
            return Decision.of(new Step.Look(ORDER.get(looked++)));
        }
        return rule.next(unit, start, journal, now);
    }

    /** A part found bad and not serviced since. */
    private static Optional<Observation.Inspection> bad(Journal journal) {
        for (Reading reading : journal.all(Reading.class)) {
            var found = reading.find(Observation.Inspection.class);
            if (found.isPresent() && found.get().finding() == Finding.BAD) {
                boolean done = journal.all(Service.class).stream()
                        .anyMatch(each ->
                                each.part() == found.get().part() && !each.at().isBefore(reading.at()));
                if (!done) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }
}
