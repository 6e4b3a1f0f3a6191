package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.demo.panel.Sheet;
import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.practice.FaultSheet;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Unit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JFormattedTextField;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;

/** The trainee's own view: 100 % shared out among the causes, and what they would do. */
final class ViewPage extends SessionCard {
    private static final long serialVersionUID = 1L;
    private static final int STEP_PERCENT = 5;

    private final Sheet causes = new Sheet();
    private final transient Map<Cause, JSpinner> shares = new EnumMap<>(Cause.class);
    private final transient Map<Cause, Prose> names = new EnumMap<>(Cause.class);
    private final Prose seen = new Prose();
    private final Prose sum = new Prose();
    private final JLabel doLabel = new Caption();
    private final JTextField wouldDo = new JTextField();
    private final JButton give;
    private transient List<Cause> suspects = List.of();

    ViewPage(PracticeDesk desk, Dress dress) {
        super("view.title", "[][grow,fill]", "[][][grow,fill][]", dress);
        give = button(
                "view.give",
                () -> desk.perform(
                        new SessionStep.OwnView(sheet(), wouldDo.getText().strip())));
        wouldDo.setName("view.do");
        seen.setName("view.seen");
        sum.setName("view.sum");
        doLabel.setLabelFor(wouldDo);
        beside(give);
        JScrollPane scroll = Sheet.around(causes);
        body().add(seen, "span 2, growx, wrap");
        body().add(sum, "span 2, growx, wrap");
        body().add(scroll, "span 2, grow, push, wrap");
        body().add(doLabel);
        body().add(wouldDo, "growx");
        dress(dress);
    }

    private FaultSheet sheet() {
        return new FaultSheet(shares.entrySet().stream()
                .filter(each -> percent(each.getValue()) > 0)
                .collect(Collectors.toMap(Map.Entry::getKey, each -> percent(each.getValue()) / 100.0)));
    }

    private static int percent(JSpinner spinner) {
        return ((Number) spinner.getValue()).intValue();
    }

    private void add() {
        int total = shares.values().stream().mapToInt(ViewPage::percent).sum();
        give.setEnabled(total == 100);
        sum.setText(dress.text(
                total == 100 ? "view.full" : "view.sum", dress.words().say(total / 100.0, Unit.SHARE)));
    }

    @Override
    public void show(Moment moment) {
        List<Cause> asked = moment.session().scenario().coaching().suspects();
        List<Cause> wanted = asked.isEmpty() ? List.of(Cause.values()) : asked;
        if (!wanted.equals(suspects)) {
            suspects = wanted;
            fill();
        }
        seen.setText(LookPage.newest(moment.session(), dress));
        add();
    }

    private void fill() {
        causes.removeAll();
        shares.clear();
        names.clear();
        for (Cause cause : suspects) {
            JSpinner share = new JSpinner(new SpinnerNumberModel(0, 0, 100, STEP_PERCENT));
            share.setName("view." + cause);
            share.addChangeListener(e -> add());
            Prose name = new Prose();
            shares.put(cause, share);
            names.put(cause, name);
            causes.add(share, "w 70!");
            causes.add(name, "growx, wrap");
        }
        name();
        causes.revalidate();
    }

    private void name() {
        names.forEach((cause, label) -> {
            String words = dress.words().say(Phrase.of(cause.nameKey()));
            label.setText(words);
            JSpinner share = shares.get(cause);
            String told = dress.text("view.share", words);
            share.getAccessibleContext().setAccessibleName(told);
            JFormattedTextField field = ((JSpinner.DefaultEditor) share.getEditor()).getTextField();
            field.getAccessibleContext().setAccessibleName(told);
        });
    }

    @Override
    public void dress(Dress other) {
        super.dress(other);
        doLabel.setText(other.text("view.do"));
        name();
        add();
    }
}
