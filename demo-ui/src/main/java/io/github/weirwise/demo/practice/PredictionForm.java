package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.Named;
import io.github.weirwise.practice.Prediction;
import io.github.weirwise.practice.Trend;
import io.github.weirwise.report.Unit;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JFormattedTextField;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;

/** What the trainee expects, said before they act: level, foam, how many times, how sure. */
final class PredictionForm extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final Double[] SURE = {0.34, 0.5, 0.65, 0.8, 0.95};

    private final JLabel levelName = new Caption();
    private final JComboBox<Named<Trend>> level = new JComboBox<>();
    private final JLabel foamName = new Caption();
    private final JComboBox<Named<Trend>> foam = new JComboBox<>();
    private final JLabel timesName = new Caption();
    private final JSpinner times = new JSpinner(new SpinnerNumberModel(1.0, 1.0, 50.0, 0.5));
    private final JLabel sureName = new Caption();
    private final JComboBox<Named<Double>> sure = new JComboBox<>();

    PredictionForm(Dress dress) {
        super(new MigLayout("insets 0, gapx 8", "[][grow,fill][][grow,fill]", ""));
        setOpaque(false);
        level.setName("predict.level");
        foam.setName("predict.foam");
        times.setName("predict.times");
        sure.setName("predict.sure");
        levelName.setLabelFor(level);
        foamName.setLabelFor(foam);
        timesName.setLabelFor(times);
        sureName.setLabelFor(sure);
        foam.addActionListener(e -> {
            boolean same =
                    Named.picked(foam).filter(trend -> trend == Trend.SAME).isPresent();
            times.setEnabled(!same);
        });
        add(levelName);
        add(level, "wmin 60");
        add(foamName);
        add(foam, "wmin 60, wrap");
        add(timesName);
        add(times, "wmin 60");
        add(sureName);
        add(sure, "wmin 60");
        dress(dress);
    }

    /** Calls this when something else is picked. */
    void onChange(Runnable changed) {
        level.addActionListener(e -> changed.run());
        foam.addActionListener(e -> changed.run());
    }

    /** What is expected; empty until level and foam are said. */
    Optional<Prediction> prediction() {
        Optional<Trend> water = Named.picked(level);
        Optional<Trend> froth = Named.picked(foam);
        if (water.isEmpty() || froth.isEmpty()) {
            return Optional.empty();
        }
        double factor = froth.get() == Trend.SAME ? 1 : ((Number) times.getValue()).doubleValue();
        return Optional.of(new Prediction(
                water.get(), froth.get(), factor, Named.picked(sure).orElse(SURE[0])));
    }

    void clear() {
        level.setSelectedIndex(0);
        foam.setSelectedIndex(0);
        times.setValue(1.0);
    }

    void dress(Dress other) {
        levelName.setText(other.text("predict.level"));
        foamName.setText(other.text("predict.foam"));
        timesName.setText(other.text("predict.times"));
        sureName.setText(other.text("predict.sure"));
        String say = other.text("predict.sayFirst");
        Named.fill(level, Trend.values(), say, trend -> other.words().say(trend.levelWords()));
        Named.fill(foam, Trend.values(), say, trend -> other.words().say(trend.foamWords()));
        Named.fill(sure, SURE, null, share -> other.words().say(share, Unit.SHARE));
        level.getAccessibleContext().setAccessibleName(other.text("predict.level"));
        foam.getAccessibleContext().setAccessibleName(other.text("predict.foam"));
        times.getAccessibleContext().setAccessibleName(other.text("predict.times"));
        JFormattedTextField field = ((JSpinner.DefaultEditor) times.getEditor()).getTextField();
        field.getAccessibleContext().setAccessibleName(other.text("predict.times"));
        sure.getAccessibleContext().setAccessibleName(other.text("predict.sure"));
    }
}
