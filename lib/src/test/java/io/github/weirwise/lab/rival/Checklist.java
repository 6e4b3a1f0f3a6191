package io.github.weirwise.lab.rival;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.advice.Step;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.unit.Part;
import java.time.Duration;
import java.util.List;

/**
 * When the last amount was out of band: looks at neck, pad, air line and return pump in this order, once a week each, services
 * what is not found good, and only then moves as {@link FixedSteps}.
 */
public record Checklist() implements Policy {
    private static final List<LookKind> ORDER =
            List.of(LookKind.NECK_AND_CUP, LookKind.FILTER_PAD, LookKind.AIR_LINE, LookKind.RETURN_PUMP);

    @Override
    public Decision next(Visit visit) {
        Log log = new Log(visit);
        List<Double> last = log.amounts(1);
        if (log.moved() || last.isEmpty() || last.get(0) >= 0.4 && last.get(0) <= 2.4) {
            return Decision.hold(visit.now());
        }
        for (LookKind look : ORDER) {
            Part part = look.part().orElseThrow();
            Finding finding = null;
            boolean serviced = false;
            for (var entry : visit.journal().entries()) {
                if (entry.at().isBefore(visit.now().minus(Duration.ofDays(7)))) {
                    continue;
                }
                if (entry instanceof Reading reading) {
                    for (Observation seen : reading.observations()) {
                        if (seen instanceof Observation.Inspection each && each.part() == part) {
                            finding = each.finding();
                        }
                    }
                }
                serviced |= entry instanceof Service service && service.part() == part;
            }
            if (finding == null) {
                return Decision.of(new Step.Look(look));
            }
            if (finding != Finding.GOOD && !serviced) {
                return Decision.of(new Step.ServicePart(part));
            }
        }
        return new FixedSteps().next(visit);
    }
}
