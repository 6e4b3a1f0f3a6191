package io.github.weirwise.demo.round;

import io.github.weirwise.demo.chart.ChartCard;
import io.github.weirwise.demo.chart.ScoreDrawing;
import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.Score;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.report.Count;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.util.List;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** How good the forecasts have been here: in plain words, drawn, and as a table. */
public final class ScorePage extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final transient Adviser adviser;
    private final transient Background background;
    private final Prose words = new Prose();
    private final Words card;
    private final ChartCard chart;
    private transient Score score = new Score(List.of());
    private transient Journal scored = Journal.EMPTY;
    private transient Dress dress;

    /** A page for a desk's journal. */
    public ScorePage(Desk desk, Adviser adviser, Background background, Dress dress) {
        super(new MigLayout("insets 0, fill, wrap 1, gapy 8", "[grow,fill]", "[][grow,fill]"));
        this.desk = desk;
        this.adviser = adviser;
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
        return new ScoreDrawing(score, desk.unit().target().skimmateBandMlPerDay(), desk.clock());
    }

    /** Works it out anew when there is more in the journal. */
    public void refresh() {
        Journal now = desk.journal();
        if (!now.equals(scored)) {
            scored = now;
            background.run(() -> Score.of(adviser, desk.unit(), desk.told(), now), found -> {
                if (now.equals(scored)) {
                    score = found;
                    fill();
                }
            });
        }
    }

    private void fill() {
        words.setText(
                score.cups().isEmpty()
                        ? dress.text("score.none")
                        : dress.text(
                                "score.words",
                                Count.of(score.cups().size(), "demo.count.forecasts"),
                                score.held(),
                                Quantity.of(score.offBy(), Unit.PLAIN),
                                Quantity.of(score.lastOffBy(), Unit.PLAIN)));
        card.getAccessibleContext().setAccessibleDescription(words.getText());
        chart.show(drawing());
        revalidate();
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
