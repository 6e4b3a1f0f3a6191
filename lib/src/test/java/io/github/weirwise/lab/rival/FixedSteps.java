package io.github.weirwise.lab.rival;

import java.util.List;

/** Four millimetres whenever the last amount since the last move was out of band; nothing else. */
public record FixedSteps() implements Policy {
    @Override
    public Decision next(Visit visit) {
        Log log = new Log(visit);
        List<Double> last = log.amounts(1);
        if (log.moved() || last.isEmpty() || last.get(0) >= 0.4 && last.get(0) <= 2.4) {
            return Decision.hold(visit.now());
        }
        return Decision.move(visit.sheet(), log.crestMm(), last.get(0) < 0.4 ? 4 : -4, visit.now());
    }
}
