package io.github.weirwise.demo.care;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.FieldReader;
import io.github.weirwise.demo.panel.FieldRow;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.report.Unit;
import io.github.weirwise.setup.PumpCurve;
import io.github.weirwise.setup.PumpPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** The points of a pump's curve; pairs that are left empty are left out. */
final class PumpRows {
    /** Points that a curve may have here. */
    static final int MOST = 8;

    /** One point. */
    private record Pair(JLabel name, FieldRow flow, FieldRow head) {}

    private final Prose about = new Prose();
    private final List<Pair> pairs = new ArrayList<>();

    PumpRows(Dress dress) {
        for (int i = 0; i < MOST; i++) {
            Pair pair = new Pair(
                    new Caption(),
                    new FieldRow("own.pumpFlow", "flowLitresPerHour", Unit.LITRE_PER_HOUR, dress),
                    new FieldRow("own.pumpHead", "headMm", Unit.MILLIMETRE, dress));
            pair.flow().name("pump.flow." + (i + 1));
            pair.head().name("pump.head." + (i + 1));
            pairs.add(pair);
        }
    }

    void addTo(JPanel sheet) {
        sheet.add(about, "span 3, growx, wrap");
        for (Pair pair : pairs) {
            sheet.add(pair.name(), "span 3, wrap");
            pair.flow().addTo(sheet);
            pair.head().addTo(sheet);
        }
    }

    void show(PumpCurve curve) {
        for (int i = 0; i < MOST; i++) {
            if (i < curve.points().size()) {
                PumpPoint point = curve.points().get(i);
                pairs.get(i).flow().show(point.flowLitresPerHour());
                pairs.get(i).head().show(point.headMm());
            } else {
                pairs.get(i).flow().clear();
                pairs.get(i).head().clear();
            }
        }
    }

    /** The curve; empty when it cannot be taken, which is told at the boxes. */
    Optional<PumpCurve> read(FieldReader reader) {
        List<PumpPoint> points = new ArrayList<>();
        for (Pair pair : pairs) {
            OptionalDouble flow = reader.number(pair.flow(), true);
            OptionalDouble head = reader.number(pair.head(), true);
            if (flow.isPresent() != head.isPresent()) {
                reader.missing(flow.isPresent() ? pair.head() : pair.flow());
            } else if (flow.isPresent()) {
                try {
                    points.add(new PumpPoint(flow.getAsDouble(), head.getAsDouble()));
                } catch (OutOfRangeException e) {
                    reader.outOfRange(List.of(pair.flow(), pair.head()), e);
                }
            }
        }
        try {
            return Optional.of(new PumpCurve(points));
        } catch (IllegalArgumentException e) {
            reader.curve(pairs.get(0).head());
            return Optional.empty();
        }
    }

    void dress(Dress other) {
        about.setText(other.text("own.pump"));
        about.setForeground(other.palette().muted());
        for (int i = 0; i < MOST; i++) {
            pairs.get(i).name().setText(other.text("own.pumpPoint", i + 1));
            pairs.get(i).name().setForeground(other.palette().muted());
            String point = other.text("own.pumpPoint", i + 1);
            pairs.get(i).flow().dress(other, point);
            pairs.get(i).head().dress(other, point);
        }
    }
}
