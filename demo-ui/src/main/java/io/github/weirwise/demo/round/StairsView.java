package io.github.weirwise.demo.round;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Drawn;
import io.github.weirwise.demo.panel.Stairs;
import io.github.weirwise.diagnosis.Ledgers;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.UIManager;

/**
 * One of the two sums as stairs: each step is a term with its 80 % range as a whisker and its number below, and the last line
 * is what they come to. The level adds up in millimetres; of the amount each step is a factor of the wanted amount.
 */
final class StairsView extends Drawn {
    private static final long serialVersionUID = 1L;
    private static final int EDGE = 6;

    private final boolean factors;
    private transient Dress dress;
    private transient List<Ledgers.Term> terms = List.of();
    private transient Range wanted = new Range(0, 0);

    /** @param factors whether the terms are logarithms of factors, else they are millimetres */
    StairsView(String name, boolean factors, Dress dress) {
        super(name, new Dimension(200, 150), new Dimension(380, 190));
        this.factors = factors;
        this.dress = dress;
    }

    /** Shows terms; small ones that nobody would see are left out. */
    void show(List<Ledgers.Term> others, Range wantedSum) {
        double least = factors ? 0.03 : 0.25;
        List<Ledgers.Term> kept = others.stream()
                .filter(term -> Math.abs(term.value()) >= least || term.range().width() > 8 * least)
                .toList();
        if (!kept.equals(terms) || !wanted.equals(wantedSum)) {
            change(() -> {
                terms = kept;
                wanted = wantedSum;
            });
        }
    }

    void dress(Dress other) {
        dress = other;
        repaint();
    }

    private String name(Ledgers.Term term) {
        return dress.text((factors ? "sums.amount." : "sums.level.") + term.topic());
    }

    private String number(double value) {
        if (factors) {
            return dress.text("sums.times", dress.words().book().number(Math.exp(value), Unit.PLAIN));
        }
        String number = dress.words().book().number(value, Unit.MILLIMETRE);
        return value > 0 ? "+" + number : number;
    }

    private double sum() {
        return terms.stream().mapToDouble(Ledgers.Term::value).sum();
    }

    private String total() {
        return factors
                ? dress.text("sums.amount.total", number(sum()))
                : dress.text("sums.level.total", dress.words().say(sum(), Unit.MILLIMETRE));
    }

    @Override
    public String describe() {
        return terms.stream()
                        .map(term -> dress.text("ask.named", name(term), number(term.value())))
                        .collect(Collectors.joining("; "))
                + ". " + total();
    }

    @Override
    protected String title() {
        return dress.text(factors ? "sums.amount" : "sums.level");
    }

    @Override
    protected void draw(Graphics2D graphics) {
        if (!terms.isEmpty()) {
            List<Stairs.Step> steps = terms.stream()
                    .map(term -> new Stairs.Step(name(term), number(term.value()), term.value(), term.range()))
                    .toList();
            Rectangle2D box = new Rectangle2D.Double(EDGE, 0, getWidth() - 2.0 * EDGE, getHeight());
            new Stairs(steps, wanted, dress.text("strip.wanted"), total())
                    .draw(
                            graphics,
                            box,
                            dress.palette(),
                            UIManager.getFont("Label.font").deriveFont(11f));
        }
    }
}
