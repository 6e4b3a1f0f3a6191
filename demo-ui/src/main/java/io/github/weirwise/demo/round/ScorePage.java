package io.github.weirwise.demo.round;

import io.github.weirwise.demo.chart.ChartCard;
import io.github.weirwise.demo.chart.ScoreDrawing;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.report.Count;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.score.JournalScore;
import io.github.weirwise.score.Scored;
import java.util.List;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** How good the forecasts have been here: in plain words, drawn, and as a table. */
public final class ScorePage extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int MOST = 20;

    private final transient Desk desk;
    private final transient Background background;
    private final Prose words = new Prose();
    private final Words card;
    private final ChartCard chart;
    private transient List<Scored> cups = List.of();
    private transient Journal scored = Journal.EMPTY;
    private transient Dress dress;

    /** A page for a desk's journal. */
    public ScorePage(Desk desk, Background background, Dress dress) {
        super(new MigLayout("insets 0, fill, wrap 1, gapy 8", "[grow,fill]", "[][grow,fill]"));
        this.desk = desk;
        this.background = background;
        this.dress = dress;
        setOpaque(false);
        words.setName("score.words");
        card = new Words(words, dress);
        chart = new ChartCard("score", drawing(), dress);
        add(card, "wmin 0");
        add(chart, "grow, push");
        dress(dress);
    }

    private static final class Words extends Card {
        private static final long serialVersionUID = 1L;

        Words(Prose words, Dress dress) {
            super(dress.palette(), "[grow,fill]", "");
            body().add(words, "growx, wmin 0");
        }

        void dress(Dress dress) {
            head(dress.text("score.title"));
            paper(dress.palette());
        }
    }

    private ScoreDrawing drawing() {
        return new ScoreDrawing(cups, desk.unit().target(), desk.clock());
    }

    /** Works it out anew when there is more in the journal. */
    public void refresh() {
        Journal now = desk.journal();
        if (!now.equals(scored)) {
            scored = now;
            background.run(() -> JournalScore.of(desk.unit(), desk.told(), now).amounts(), found -> {
                if (now.equals(scored)) {
                    cups = found.subList(Math.max(0, found.size() - MOST), found.size());
                    fill();
                }
            });
        }
    }

    private void fill() {
        ScoreDrawing drawing = drawing();
        words.setText(
                cups.isEmpty()
                        ? dress.text("score.none")
                        : dress.text(
                                "score.words",
                                Count.of(cups.size(), "demo.count.forecasts"),
                                drawing.held(),
                                factor(drawing.offBy(cup -> cup.forecast().mean())),
                                factor(drawing.offBy(cup -> cup.asLastTime().mean()))));
        card.getAccessibleContext().setAccessibleDescription(words.getText());
        chart.show(drawing);
        chart.setVisible(!cups.isEmpty());
        revalidate();
    }

    private static Quantity factor(double times) {
        return Quantity.of(times, Unit.PLAIN);
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        words.setForeground(other.palette().ink());
        card.dress(other);
        chart.dress(other);
        fill();
    }
}
