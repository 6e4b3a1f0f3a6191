package io.github.weirwise.demo.round;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.panel.Drawn;
import io.github.weirwise.demo.panel.Standing;
import io.github.weirwise.demo.panel.WrappedLine;
import io.github.weirwise.diagnosis.Ledgers;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
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
            stairs(graphics);
        }
    }

    private void stairs(Graphics2D g) {
        Font small = UIManager.getFont("Label.font").deriveFont(11f);
        FontMetrics metrics = g.getFontMetrics(small);
        double at = 0;
        double low = Math.min(0, wanted.low());
        double high = Math.max(0, wanted.high());
        List<Double> ends = new ArrayList<>();
        for (Ledgers.Term term : terms) {
            low = Math.min(low, at + Math.min(0, term.range().low()));
            high = Math.max(high, at + Math.max(0, term.range().high()));
            at += term.value();
            ends.add(at);
        }
        double top = metrics.getHeight() + 10.0;
        double foot = getHeight() - 3.0 * metrics.getHeight() - 4;
        double span = Math.max(1e-6, high - low);
        Scale scale = new Scale(foot, (foot - top) / span, low);
        band(g, scale);
        // The word for the band has a place of its own at its end.
        double wide = (getWidth() - 3.0 * EDGE - metrics.stringWidth(dress.text("strip.wanted"))) / terms.size();
        for (int i = 0; i < terms.size(); i++) {
            step(g, scale, i == 0 ? 0 : ends.get(i - 1), terms.get(i), EDGE + i * wide, wide);
            words(g, small, terms.get(i), EDGE + i * wide, wide, foot);
        }
        g.setColor(dress.palette().muted());
        g.setStroke(new BasicStroke(2));
        g.draw(new Line2D.Double(EDGE, scale.y(at), getWidth() - EDGE, scale.y(at)));
        g.setFont(Standing.COMPUTED.font(UIManager.getFont("Label.font")));
        g.drawString(total(), EDGE, metrics.getAscent());
    }

    /** Between values and pixels. */
    private record Scale(double foot, double perUnit, double low) {
        double y(double value) {
            return foot - perUnit * (value - low);
        }
    }

    private void band(Graphics2D g, Scale scale) {
        Palette palette = dress.palette();
        double top = scale.y(wanted.high());
        g.setColor(Palette.fade(palette.good(), 50));
        g.fill(new Rectangle2D.Double(EDGE, top, getWidth() - 2.0 * EDGE, Math.max(2, scale.y(wanted.low()) - top)));
        g.setColor(palette.good());
        g.setFont(UIManager.getFont("Label.font").deriveFont(11f));
        String words = dress.text("strip.wanted");
        g.drawString(
                words,
                getWidth() - EDGE - g.getFontMetrics().stringWidth(words) - 2,
                (float) (top + scale.y(wanted.low()) + 8) / 2);
    }

    private void step(Graphics2D g, Scale scale, double from, Ledgers.Term term, double x, double wide) {
        Palette palette = dress.palette();
        Color colour = term.value() < 0 ? palette.second() : palette.accent();
        double to = from + term.value();
        double top = scale.y(Math.max(from, to));
        Rectangle2D bar = new Rectangle2D.Double(
                x + wide * 0.2, top, wide * 0.6, Math.max(1.5, scale.y(Math.min(from, to)) - top));
        g.setColor(Palette.fade(colour, 110));
        g.fill(bar);
        g.setColor(colour);
        g.setStroke(new BasicStroke(1.2f));
        g.draw(bar);
        g.draw(new Line2D.Double(x + wide * 0.2, scale.y(to), x + wide * 1.2, scale.y(to)));
        g.setColor(palette.ink());
        double middle = x + wide / 2;
        double high = scale.y(from + term.range().high());
        double low = scale.y(from + term.range().low());
        g.draw(new Line2D.Double(middle, high, middle, low));
        g.draw(new Line2D.Double(middle - 4, high, middle + 4, high));
        g.draw(new Line2D.Double(middle - 4, low, middle + 4, low));
    }

    private void words(Graphics2D g, Font small, Ledgers.Term term, double x, double wide, double foot) {
        g.setFont(small);
        g.setColor(dress.palette().ink());
        FontMetrics metrics = g.getFontMetrics();
        double y = foot + metrics.getAscent() + 4;
        String value = number(term.value());
        g.drawString(value, (float) (x + (wide - metrics.stringWidth(value)) / 2), (float) y);
        for (String line : WrappedLine.broken(name(term), metrics, (int) wide)) {
            y += metrics.getHeight();
            g.drawString(line, (float) (x + Math.max(0, wide - metrics.stringWidth(line)) / 2), (float) y);
        }
    }
}
