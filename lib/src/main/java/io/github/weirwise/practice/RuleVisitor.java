package io.github.weirwise.practice;

import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.Target;
import java.util.Optional;

/** The plain rule: 3 mm up when the cup is low, 3 mm down when it is high, and back the next day. */
final class RuleVisitor implements Hands.Visitor {
    private static final double STEP_MM = 3;
    private static final double SURE = 0.7;

    @Override
    public PracticeSession visit(PracticeSession session) {
        Optional<Observation.CupVolume> cup =
                session.journal().last(Reading.class).flatMap(reading -> reading.find(Observation.CupVolume.class));
        if (cup.isEmpty()) {
            return session;
        }
        double amount =
                cup.get().mlPerDay() / session.scenario().unit().target().skimmateMlPerDay();
        int way = amount < Target.AMOUNT_BAND.low() ? 1 : amount > Target.AMOUNT_BAND.high() ? -1 : 0;
        Act move = new Act.MoveWeir(way == 0 ? 1 : way * STEP_MM);
        double to = session.scenario().unit().weir().clampMm(session.markMm() + way * STEP_MM);
        if (way == 0 || to == session.markMm() || !session.scenario().offers().has(move)) {
            return session;
        }
        Trend trend = way > 0 ? Trend.MORE : Trend.LESS;
        return session.act(move, new Prediction(trend, trend, 1.5, SURE), "as the rule says");
    }
}
