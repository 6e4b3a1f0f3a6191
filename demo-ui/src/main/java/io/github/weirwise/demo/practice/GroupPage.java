package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.ListPage;
import io.github.weirwise.demo.panel.Row;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.SessionRecord;
import io.github.weirwise.practice.SessionSummary;
import io.github.weirwise.sheet.GroupSheet;
import io.github.weirwise.sheet.ScoreSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JTextArea;

/** The group's sessions side by side: those played here and those from files, as a page and as a sheet of scores. */
final class GroupPage extends ListPage implements PracticePage {
    private static final long serialVersionUID = 1L;

    private final transient PracticeDesk desk;
    private final transient Saving saving;
    private final transient JTextArea notes;
    private final transient List<SessionRecord> opened = new ArrayList<>();
    private final JButton page;
    private final JButton scores;

    GroupPage(
            PracticeDesk desk,
            Consumer<Consumer<SessionRecord>> openFile,
            Saving saving,
            JTextArea notes,
            Dress dress) {
        super("group", dress);
        this.desk = desk;
        this.saving = saving;
        this.notes = notes;
        page = button("group.page", this::makePage);
        scores = button("group.scores", () -> saving.save("scores.csv", () -> ScoreSheet.csv(summaries())));
        put(page);
        put(scores);
        put(button(
                "group.open",
                () -> openFile.accept(record -> {
                    opened.add(record);
                    refresh();
                })));
        dress(dress);
    }

    private void makePage() {
        saving.save(
                "group.html",
                () -> new GroupSheet(dress().words().book())
                        .of(summaries(), notes.getText().strip()));
    }

    private List<SessionRecord> records() {
        List<SessionRecord> all = new ArrayList<>(opened);
        all.addAll(desk.kept());
        return all;
    }

    private List<SessionSummary> summaries() {
        return records().stream()
                .map(PracticeSession::replay)
                .map(SessionSummary::of)
                .toList();
    }

    private void refresh() {
        List<Row> rows = new ArrayList<>();
        List<SessionRecord> all = records();
        for (SessionRecord each : all) {
            boolean now = each.equals(desk.moment()
                    .map(Moment::session)
                    .map(PracticeSession::toRecord)
                    .orElse(null));
            String who = each.options().trainee();
            rows.add(new Row(
                    dress().text(now ? "group.atWork" : "group.ended"),
                    now ? Row.Mark.MIND : Row.Mark.DONE,
                    dress().text(
                                    "group.line",
                                    who.isBlank() ? dress().text("group.nobody") : who,
                                    each.scenario().title()),
                    ""));
        }
        page.setEnabled(!all.isEmpty());
        scores.setEnabled(!all.isEmpty());
        show(dress().text(all.isEmpty() ? "group.none" : "group.about"), rows);
    }

    @Override
    public void show(Moment moment) {
        refresh();
    }

    @Override
    public void dress(Dress other) {
        dress(other.text("group.title"), other);
        refresh();
    }
}
