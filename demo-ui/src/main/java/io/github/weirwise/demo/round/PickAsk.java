package io.github.weirwise.demo.round;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.EntryWords;
import io.github.weirwise.demo.panel.Choice;
import io.github.weirwise.demo.panel.PaintedOnce;
import io.github.weirwise.demo.panel.SwatchIcon;
import io.github.weirwise.demo.picture.NeckIcon;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.unit.Part;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComponent;

/**
 * A look that is one of a few words, most of them with a picture.
 *
 * @param <T> the words
 */
abstract class PickAsk<T extends Enum<T>> implements Ask {
    private static final float SMALL = 11f;

    private final Choice<T> choice;
    private final List<T> words;
    private final Function<T, Observation> make;

    private PickAsk(String name, T[] words, Function<T, Observation> make) {
        this.words = List.of(words);
        this.make = make;
        choice = new Choice<>("ask." + name, this.words);
    }

    @Override
    public JComponent part() {
        return choice.row();
    }

    @Override
    public JComponent first() {
        return choice.first();
    }

    @Override
    public Optional<Observation> seen(Faults faults) {
        return choice.picked().map(make);
    }

    @Override
    public void clear() {
        choice.clear();
    }

    @Override
    public String draft() {
        return choice.picked().map(Enum::name).orElse("");
    }

    @Override
    public void draft(String text) {
        words.stream().filter(word -> word.name().equals(text)).findFirst().ifPresent(choice::pick);
    }

    @Override
    public void onChange(Runnable listener) {
        choice.onChange(listener);
    }

    /** The colour of the skimmate, by swatches with words on them. */
    static final class OfColour extends PickAsk<DarknessWord> {
        OfColour(Dress dress) {
            super("DARKNESS", DarknessWord.values(), Observation.Darkness::new);
            dress(dress);
        }

        @Override
        public void dress(Dress dress) {
            super.choice.show(
                    word -> new PaintedOnce(new SwatchIcon(word, dress.palette())),
                    word -> dress.text("darkness.short." + word),
                    word -> dress.text("ask.named", dress.text("ask.DARKNESS"), EntryWords.darkness(word)),
                    SMALL);
        }
    }

    /** The foam in the neck, by pictures with words under them. */
    static final class OfFoam extends PickAsk<FoamLookWord> {
        OfFoam(Dress dress) {
            super("FOAM_LOOK", FoamLookWord.values(), Observation.FoamLook::new);
            dress(dress);
        }

        @Override
        public void dress(Dress dress) {
            super.choice.show(
                    word -> new PaintedOnce(new NeckIcon(word, dress.palette())),
                    word -> dress.text("foam.short." + word),
                    word -> dress.text("ask.named", dress.text("ask.FOAM_LOOK"), EntryWords.foam(word)),
                    SMALL);
        }
    }

    /** How a part was found. */
    static final class OfPart extends PickAsk<Finding> {
        private final Part looked;

        OfPart(LookKind look, Part part, Dress dress) {
            super(look.name(), Finding.values(), finding -> new Observation.Inspection(part, finding));
            looked = part;
            dress(dress);
        }

        @Override
        public void dress(Dress dress) {
            super.choice.show(
                    finding -> null,
                    finding -> dress.text("finding.short." + finding),
                    finding -> dress.text("ask.named", EntryWords.part(looked), EntryWords.finding(finding)),
                    SMALL + 2);
        }
    }
}
