package io.github.weirwise.demo.window;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.report.Phrase;
import java.util.ArrayDeque;
import java.util.Deque;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Offers to take up unfinished work again, one piece after another; nothing is lost until it is left. */
final class OfferBar extends JPanel {
    private static final long serialVersionUID = 1L;

    /** One piece of work. */
    record Offer(Phrase words, Runnable take, Runnable leave) {}

    private final transient Deque<Offer> offers = new ArrayDeque<>();
    private final Prose text = new Prose();
    private final JButton take = new JButton();
    private final JButton leave = new JButton();
    private boolean asked;
    private transient Dress dress;

    OfferBar(Dress dress) {
        super(new MigLayout("insets 4 12 4 6, fillx", "[grow,fill][][]"));
        text.setName("offer");
        Buttons.set(take, "offer.take", () -> answer(true));
        Buttons.set(leave, "offer.leave", this::leave);
        add(text, "wmin 0");
        add(take);
        add(leave);
        setVisible(false);
        dress(dress);
    }

    void offer(Offer offer) {
        offers.add(offer);
        show(dress);
    }

    /** Nothing is deleted without a second word. */
    private void leave() {
        if (asked) {
            answer(false);
        } else {
            asked = true;
            dress(dress);
        }
    }

    private void answer(boolean yes) {
        asked = false;
        Offer answered = offers.poll();
        dress(dress);
        if (answered != null) {
            (yes ? answered.take() : answered.leave()).run();
        }
    }

    private void show(Dress other) {
        boolean any = !offers.isEmpty();
        setVisible(any);
        if (any) {
            String words = other.words().say(offers.peek().words());
            text.setText(asked ? other.text("offer.sure") : words);
            getAccessibleContext().setAccessibleDescription(text.getText());
        }
        revalidate();
    }

    void dress(Dress other) {
        dress = other;
        setBackground(other.palette().paper());
        text.setForeground(other.palette().ink());
        setBorder(BorderFactory.createLineBorder(other.palette().accent(), 1, true));
        Buttons.name(other, take);
        Buttons.name(leave, other, asked ? "offer.delete" : "offer.leave");
        show(other);
    }
}
