package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import java.util.ArrayList;
import java.util.List;

/** A card of knobs in one column, or in two to save height and with its name only heard; a knob is added at a time. */
class KnobsCard extends Card {
    private static final long serialVersionUID = 1L;

    private final String titleKey;
    private final int columns;
    private final transient List<Knob> knobs = new ArrayList<>();

    KnobsCard(String titleKey, int columns, Dress dress) {
        super(dress.palette(), "[grow,fill]8[]".repeat(columns).replace("][g", "]20[g"), "");
        this.titleKey = titleKey;
        this.columns = columns;
        name(dress);
    }

    /** One more knob, below or beside those that are there. */
    final Knob put(Knob knob) {
        knobs.add(knob);
        knob.addTo(body(), knobs.size() % columns == 0);
        return knob;
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
