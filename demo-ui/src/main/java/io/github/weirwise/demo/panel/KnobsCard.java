package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import java.util.List;

/** A card of knobs in one column, or in two to save height and with its name only heard. */
class KnobsCard extends Card {
    private static final long serialVersionUID = 1L;

    private final String titleKey;
    private final int columns;
    private final transient List<Knob> knobs;

    KnobsCard(String titleKey, List<Knob> knobs, int columns, Dress dress) {
        super(dress.palette(), "[grow,fill]8[]".repeat(columns).replace("][g", "]20[g"), "");
        this.titleKey = titleKey;
        this.columns = columns;
        this.knobs = List.copyOf(knobs);
        int place = 0;
        for (Knob knob : knobs) {
            place++;
            knob.addTo(body(), place % columns == 0 || place == knobs.size());
        }
        name(dress);
    }

    private void name(Dress dress) {
        if (columns > 1) {
            nameSilently(dress.text(titleKey));
        } else {
            head(dress.text(titleKey));
        }
        paper(dress.palette());
    }

    /** Other words or colours. */
    public void dress(Dress dress) {
        name(dress);
        knobs.forEach(knob -> knob.dress(dress));
    }
}
