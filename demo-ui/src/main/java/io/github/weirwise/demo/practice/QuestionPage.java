package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.practice.Question;
import io.github.weirwise.practice.SessionStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** An open question; nothing else is asked until it is answered or passed over. */
final class QuestionPage extends SessionCard {
    private static final long serialVersionUID = 1L;
    private static final int ONE_LINE = 62;

    private final transient PracticeDesk desk;
    private final Prose ask = new Prose();
    private final JPanel choices = new JPanel(new MigLayout("insets 0, wrap 1, gapy 2", "[grow,fill]", ""));
    private final JTextField words = new JTextField();
    private final transient List<JRadioButton> buttons = new ArrayList<>();
    private transient Optional<Question> open = Optional.empty();

    QuestionPage(PracticeDesk desk, Dress dress) {
        super("question.title", "[grow,fill]", "", dress);
        this.desk = desk;
        choices.setOpaque(false);
        ask.setName("question");
        words.setName("question.words");
        body().add(ask, "growx, wrap");
        body().add(choices, "growx, wrap");
        body().add(words, "growx");
        beside(button("question.answer", () -> reply(choice(), words.getText().strip())));
        beside(button("question.pass", () -> reply(0, "")));
        onDress(other -> words.getAccessibleContext().setAccessibleName(other.text("question.words")));
        dress(dress);
    }

    private int choice() {
        for (int i = 0; i < buttons.size(); i++) {
            if (buttons.get(i).isSelected()) {
                return i + 1;
            }
        }
        return 0;
    }

    private void reply(int choice, String text) {
        open.ifPresent(question -> desk.perform(new SessionStep.Answer(question.name(), choice, text)));
    }

    @Override
    public void show(Moment moment) {
        Optional<Question> next = moment.session().questions().stream().findFirst();
        if (!next.equals(open)) {
            open = next;
            put();
        }
    }

    /** A choice that is too long for one line in two. */
    private static String lines(String choice) {
        if (choice.length() <= ONE_LINE) {
            return choice;
        }
        int cut = Math.max(choice.lastIndexOf(' ', choice.length() / 2), choice.indexOf(' '));
        String safe = choice.substring(0, cut) + "\n" + choice.substring(cut + 1);
        return "<html>" + safe.replace("&", "&amp;").replace("<", "&lt;").replace("\n", "<br>");
    }

    private void put() {
        choices.removeAll();
        buttons.clear();
        words.setText("");
        open.ifPresent(question -> {
            ask.setText(question.ask());
            ButtonGroup group = new ButtonGroup();
            for (String each : question.choices()) {
                JRadioButton button = new JRadioButton(lines(each));
                button.getAccessibleContext().setAccessibleName(each);
                button.setName("question.choice." + (buttons.size() + 1));
                button.setOpaque(false);
                group.add(button);
                buttons.add(button);
                choices.add(button);
            }
        });
        choices.setVisible(!buttons.isEmpty());
        revalidate();
    }
}
