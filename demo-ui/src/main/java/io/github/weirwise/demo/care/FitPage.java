package io.github.weirwise.demo.care;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.ListPage;
import io.github.weirwise.demo.panel.Row;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.report.Warning;
import io.github.weirwise.setup.FitAnswer;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.setup.Installation;
import io.github.weirwise.setup.LanternQuaySites;
import io.github.weirwise.sheet.SetupText;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComboBox;

/** Does the unit fit the tank: one line a question, for one of the invented installations. */
final class FitPage extends ListPage {
    private static final long serialVersionUID = 1L;

    private final JComboBox<String> sites = new JComboBox<>();
    private final JButton save = new JButton();
    private final transient List<Installation> offered = new ArrayList<>(LanternQuaySites.all());
    private final transient Runnable changed;
    private transient FitCheck check;

    /** @param first the check of the first installation */
    FitPage(FitCheck first, Saving saving, Runnable changed, Dress dress) {
        super("fit", dress);
        check = first;
        this.changed = changed;
        sites.setName("fit.site");
        offered.stream().map(Installation::name).forEach(sites::addItem);
        sites.addActionListener(e -> turn());
        save.setName("fit.save");
        save.addActionListener(e ->
                saving.save("fit-check.txt", () -> new SetupText(dress().words().book()).of(check)));
        put(sites);
        put(save);
        name(dress);
    }

    private void turn() {
        check = FitCheck.of(offered.get(Math.max(0, sites.getSelectedIndex())));
        refresh();
        changed.run();
    }

    /** Holds one's own installation against the limits; it stays in the list with the invented ones. */
    void check(Installation own) {
        int invented = LanternQuaySites.all().size();
        if (offered.size() > invented) {
            offered.set(invented, own);
            sites.removeItemAt(invented);
        } else {
            offered.add(own);
        }
        sites.addItem(dress().text("fit.own", own.name()));
        sites.setSelectedIndex(invented);
    }

    FitCheck check() {
        return check;
    }

    void refresh() {
        Words words = dress().words();
        show(words.say(check.summary()), check.answers().stream().map(this::row).toList());
    }

    private Row row(FitAnswer answer) {
        Words words = dress().words();
        List<String> parts = new ArrayList<>();
        parts.add(words.say(answer.sentence()));
        parts.add(words.of("fit.figures", answer.number(), answer.limit(), answer.margin()));
        answer.remedy().ifPresent(remedy -> parts.add(words.of("fit.change", remedy)));
        for (Warning caution : answer.cautions()) {
            parts.add("\u2022 " + words.book().say(caution));
        }
        parts.add(words.of("fit.source", answer.source()));
        Row.Mark mark = switch (answer.fit()) {
            case FITS -> Row.Mark.GOOD;
            case TIGHT -> Row.Mark.MIND;
            case FAILS -> Row.Mark.BAD;
        };
        String state = words.of("fit." + answer.fit());
        return new Row(state, mark, words.say(answer.question().asked()), String.join("\n", parts));
    }

    private void name(Dress other) {
        dress(other.text("fit.title"), other);
        sites.getAccessibleContext().setAccessibleName(other.text("fit.site"));
        Buttons.name(save, other, "fit.save");
    }

    void dress(Dress other) {
        name(other);
        refresh();
    }
}
