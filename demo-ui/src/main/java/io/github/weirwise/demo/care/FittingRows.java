package io.github.weirwise.demo.care;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.FieldReader;
import io.github.weirwise.demo.panel.FieldRow;
import io.github.weirwise.report.Unit;
import io.github.weirwise.setup.Fitting;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** How many of each fitting a pipe has; an empty box is none. */
final class FittingRows {
    private static final int MOST = 50;

    private final JLabel heading = new Caption();
    private final Map<Fitting, FieldRow> rows = new EnumMap<>(Fitting.class);

    /** @param pipe names the boxes of one pipe */
    FittingRows(String pipe, Dress dress) {
        for (Fitting fitting : Fitting.values()) {
            FieldRow row = new FieldRow("fitting." + fitting, "fittings", Unit.COUNT, dress);
            row.name(pipe + "." + fitting);
            rows.put(fitting, row);
        }
    }

    void addTo(JPanel sheet) {
        sheet.add(heading, "span 3, wrap");
        rows.values().forEach(row -> row.addTo(sheet));
    }

    void show(List<Fitting> fittings) {
        rows.forEach((fitting, row) -> {
            int count = Collections.frequency(fittings, fitting);
            if (count == 0) {
                row.clear();
            } else {
                row.show(count);
            }
        });
    }

    /** The fittings; what cannot be taken is handed to {@code wrong}, and counts as none. */
    List<Fitting> read(FieldReader reader) {
        List<Fitting> found = new ArrayList<>();
        rows.forEach((fitting, row) -> {
            double count = reader.number(row, true).orElse(0);
            if (count < 0 || count > MOST || count != Math.rint(count)) {
                reader.wholeNumber(row, MOST);
            } else {
                found.addAll(Collections.nCopies((int) count, fitting));
            }
        });
        return found;
    }

    void dress(Dress other, String section) {
        heading.setText(other.text("own.fittings"));
        heading.setForeground(other.palette().muted());
        rows.values().forEach(row -> row.dress(other, section));
    }
}
