package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.practice.Message;
import io.github.weirwise.practice.Question;
import io.github.weirwise.practice.SessionStep;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** What the trainee is told, newest first; an open question stands in its place until it is answered or passed over. */
final class ToldCard extends Card implements PracticePage {
    private static final long serialVersionUID = 1L;
    private static final int ONE_LINE = 62;

    private final transient PracticeDesk desk;
    private final Prose told = new Prose();
    private final JScrollPane scroll;
    private final Prose ask = new Prose();
    private final JPanel choices = new JPanel(new MigLayout("insets 0, wrap 1, gapy 2", "[grow,fill]", ""));
    private final JTextField words = new JTextField();
    private final JButton answer = new JButton();
    private final JButton pass = new JButton();
    private final transient List<JRadioButton> buttons = new ArrayList<>();
    private transient Optional<Question> open = Optional.empty();
    private transient Dress dress;

    ToldCard(PracticeDesk desk, Dress dress) {
        super(dress.palette(), "[grow,fill]", "");
        this.desk = desk;
        this.dress = dress;
        choices.setOpaque(false);
        told.setName("told");
        ask.setName("question");
        words.setName("question.words");
        answer.setName("question.answer");
        pass.setName("question.pass");
        answer.addActionListener(e -> reply(choice(), words.getText().strip()));
        pass.addActionListener(e -> reply(0, ""));
        scroll =
                new JScrollPane(told, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        body().add(scroll, "growx, h 60:90:110, wrap");
        body().add(ask, "growx, wrap");
        body().add(choices, "growx, wrap");
        body().add(words, "growx");
        beside(answer);
        beside(pass);
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
        List<Message> messages = new ArrayList<>(moment.session().messages());
        Collections.reverse(messages);
        List<String> lines = new ArrayList<>(moment.session().hints().stream()
                .map(hint -> dress.text("told.hint", hint))
                .toList());
        Collections.reverse(lines);
        for (SessionStep step : moment.session().steps()) {
            if (step instanceof SessionStep.Answer given) {
                explained(moment, given).ifPresent(line -> lines.add(0, line));
            }
        }
        TankClock clock = new TankClock(moment.session());
        messages.forEach(each -> lines.add(dress.text("told.line", clock.when(each.atHours()), each.says())));
        String text = lines.stream().map(line -> "\u2022 " + line).collect(Collectors.joining("\n"));
        if (!text.equals(told.getText())) {
            told.setText(text);
            told.setCaretPosition(0);
        }
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

    /** Whether an answer was right, and why; what the scenario does not explain is not judged. */
    private Optional<String> explained(Moment moment, SessionStep.Answer given) {
        return moment.session().scenario().coaching().questions().stream()
                .filter(question -> question.name().equals(given.question()))
                .filter(question -> !question.why().isBlank())
                .findFirst()
                .map(question -> {
                    String key = question.right() == 0 || given.choice() == 0
                            ? "told.answer"
                            : given.choice() == question.right() ? "told.right" : "told.notQuite";
                    return dress.text(key, question.ask(), question.why());
                });
    }

    private void put() {
        boolean any = open.isPresent();
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
        scroll.setVisible(!any);
        ask.setVisible(any);
        choices.setVisible(any && !buttons.isEmpty());
        words.setVisible(any);
        answer.setVisible(any);
        pass.setVisible(any);
        head(dress.text(any ? "question.title" : "told.title"));
        revalidate();
    }

    @Override
    public void dress(Dress other) {
        dress = other;
        paper(other.palette());
        Buttons.name(answer, other, "question.answer");
        Buttons.name(pass, other, "question.pass");
        words.getAccessibleContext().setAccessibleName(other.text("question.words"));
        put();
    }
}
