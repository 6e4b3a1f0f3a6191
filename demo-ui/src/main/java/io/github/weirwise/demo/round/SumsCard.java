package io.github.weirwise.demo.round;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.demo.panel.ReasonTree;
import io.github.weirwise.demo.panel.Sheet;
import io.github.weirwise.diagnosis.Ledgers;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Target;
import java.awt.Font;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.UIManager;

/** Why: how level and amount add up, how steep this unit is, and the reasons of the step. */
public final class SumsCard extends Card {
    private static final long serialVersionUID = 1L;
    private static final double HALF_BAND_MM = 4;
    private static final double LESS_AIR = Math.log(0.9);

    private final transient Desk desk;
    private final JLabel levelName = new Caption();
    private final JLabel amountName = new Caption();
    private final StairsView level;
    private final StairsView amount;
    private final Prose steepness = new Prose();
    private final ReasonTree reasons = new ReasonTree();
    private final Prose changes = new Prose();
    private transient Optional<Advice> newest = Optional.empty();
    private transient Optional<Advice> shown = Optional.empty();
    private transient Dress dress;

    /** The sums of a desk's newest advice. */
    public SumsCard(Desk desk, Dress dress) {
        super(dress.palette(), "[grow,fill]", "[][grow 40,fill][][grow 40,fill][][grow 60,fill][]");
        this.desk = desk;
        this.dress = dress;
        level = new StairsView("sums.level", false, dress);
        amount = new StairsView("sums.amount", true, dress);
        steepness.setName("sums.steepness");
        JScrollPane scroll = Sheet.around(reasons);
        body().add(levelName, "wrap");
        body().add(level, "grow, hmin 150, wrap");
        body().add(amountName, "wrap");
        body().add(amount, "grow, hmin 150, wrap");
        body().add(steepness, "growx, wmin 0, wrap");
        body().add(scroll, "grow, hmin 70, wrap");
        body().add(changes, "growx, wmin 0");
        desk.onChange(this::remember);
        dress(dress);
    }

    private void remember() {
        newest = desk.advice().or(() -> newest);
    }

    /** Shows the newest advice there was; it stays until there is another. */
    public void refresh() {
        remember();
        if (!newest.equals(shown)) {
            shown = newest;
            fill();
        }
    }

    private void fill() {
        if (shown.isEmpty()) {
            steepness.setText(dress.text("sums.none"));
            return;
        }
        Advice advice = shown.get();
        Ledgers ledgers = advice.diagnosis().ledgers();
        Target target = desk.unit().target();
        level.show(ledgers.level(), Range.around(target.submergenceMm(), HALF_BAND_MM));
        amount.show(
                ledgers.amount(), new Range(Math.log(Target.AMOUNT_BAND.low()), Math.log(Target.AMOUNT_BAND.high())));
        double step = dress.words().smallStepMm();
        steepness.setText(dress.text(
                "sums.steepness",
                times(ledgers.slopePerMm(), step),
                range(ledgers.slopePerMm(), step),
                times(ledgers.airExponent(), LESS_AIR),
                range(ledgers.airExponent(), LESS_AIR),
                Quantity.of(step, Unit.MILLIMETRE)));
        reasons.show(advice.why(), dress);
        changes.setText(advice.wouldChangeIt().stream()
                .map(each -> "\u2022 " + dress.words().say(each))
                .collect(Collectors.joining("\n")));
        revalidate();
    }

    private static Quantity times(Range logs, double per) {
        return Quantity.of(Math.exp(per * (logs.low() + logs.high()) / 2), Unit.PLAIN);
    }

    private static QuantityRange range(Range logs, double per) {
        double one = Math.exp(per * logs.low());
        double other = Math.exp(per * logs.high());
        return QuantityRange.of(new Range(Math.min(one, other), Math.max(one, other)), Unit.PLAIN);
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        head(other.text("sums.title"));
        paper(other.palette());
        Font plain = UIManager.getFont("Label.font");
        levelName.setText(other.text("sums.level"));
        amountName.setText(other.text("sums.amount"));
        steepness.setFont(plain.deriveFont(Font.BOLD));
        level.dress(other);
        amount.dress(other);
        reasons.getAccessibleContext().setAccessibleName(other.text("step.reasons"));
        fill();
    }
}
