package io.github.weirwise.trial;

import io.github.weirwise.advice.HoldReason;
import io.github.weirwise.advice.Step;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.Comparator;

/** Knows causes and truth, but not the noise to come: the ceiling. */
final class Oracle implements Policy {
    /** A noise-free amount within these logarithms of the target is left alone. */
    private static final double LEAVE_ALONE = 0.45;

    private final HiddenTank tank;

    Oracle(HiddenTank tank) {
        this.tank = tank;
    }

    @Override
    public Decision next(SkimmerUnit unit, Settings start, Journal journal, Instant now) {
        int hour = tank.hour();
        var worst = tank.ailments().stream()
                .filter(each -> each.wantsService(hour))
                .max(Comparator.comparingDouble(each -> each.size(hour)));
        if (worst.isPresent()) {
            return Decision.of(new Step.ServicePart(worst.get().kind().part().orElseThrow()));
        }
        if (tank.ailments().stream().anyMatch(each -> each.passing(hour))
                || tank.plan().onlyPasses()) {
            return Decision.hold(now, HoldReason.PASSES_BY_ITSELF);
        }
        if (tank.ailments().stream().anyMatch(each -> each.kind().serviceable() && each.size(hour) > 0.02)) {
            // Salt that has just been mixed in still has to spread; a small fault only shifts the best setting.
            if (tank.ailments().stream().anyMatch(each -> each.kind() == HiddenCause.SALT && !each.wantsService(hour))
                    && Seen.wantedWay(tank.amountNow()) != 0
                    && new Seen(unit, start, journal, now).hoursSinceChange() < 47) {
                return Decision.hold(now, HoldReason.STILL_SETTLING);
            }
        }
        return set(now, hour);
    }

    private Decision set(Instant now, int hour) {
        TruePoint point = tank.steadyNow();
        boolean fits = tank.truth().inBand(hour, tank.landedCrestMm());
        if (fits && Math.abs(point.logAmount()) < LEAVE_ALONE) {
            return Decision.hold(now, HoldReason.ON_TARGET);
        }
        double best = tank.plan().unit().sheet().weir().clampMm(tank.truth().bestMark(hour));
        if (Math.abs(best - tank.landedCrestMm()) < 1) {
            return Decision.hold(now, HoldReason.BEST_THERE_IS);
        }
        return Decision.move(tank.crestMm(), best);
    }
}
