package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.practice.HiddenFault;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.tank.Stock;
import java.util.ArrayList;
import java.util.List;

/** What only the trainer sees: what is hidden, and how the tank really is. */
final class TruthCard extends SessionCard {
    private static final long serialVersionUID = 1L;

    private final Prose text = new Prose();

    TruthCard(Dress dress) {
        super("trainer.truth", "[grow,fill]", "", dress);
        text.setName("trainer.truth");
        body().add(text, "growx");
        dress(dress);
    }

    @Override
    public void show(Moment moment) {
        PracticeSession session = moment.session();
        TankClock clock = new TankClock(session);
        List<String> lines = new ArrayList<>();
        lines.add(dress.text("trainer.teaches", session.scenario().teaches()));
        List<HiddenFault> faults = session.scenario().faults();
        if (faults.isEmpty()) {
            lines.add(dress.text("trainer.nothing"));
        }
        for (HiddenFault fault : faults) {
            lines.add(
                    fault.fromHours() <= session.scenario().start().arrivesAtHour()
                            ? dress.text("trainer.faultBefore", fault.words())
                            : dress.text("trainer.fault", clock.when(fault.fromHours()), fault.words()));
        }
        lines.add(dress.text(
                "trainer.true",
                Quantity.of(session.truePoint().submergenceMm(), Unit.MILLIMETRE),
                Quantity.of(session.scenario().unit().target().submergenceMm(), Unit.MILLIMETRE),
                Quantity.of(session.truth().of(Stock.SKIMMATE_ML_PER_DAY), Unit.MILLILITRE_PER_DAY),
                Quantity.of(session.scenario().unit().target().skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                Quantity.of(session.markMm(), Unit.MILLIMETRE)));
        text.setText(String.join("\n", lines));
    }
}
