package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.ListPage;
import io.github.weirwise.demo.panel.Row;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.PredictionResult;
import io.github.weirwise.practice.SessionClock;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.util.ArrayList;
import java.util.List;

/** What came, beside what was said would come; newest first, and only once somebody has read what came. */
final class ComparePage extends ListPage implements PracticePage {
    private static final long serialVersionUID = 1L;

    ComparePage(Dress dress) {
        super("compare", dress);
        dress(dress);
    }

    @Override
    public void show(Moment moment) {
        PracticeSession session = moment.session();
        List<Row> rows = new ArrayList<>();
        for (PredictionResult each : PredictionResult.of(session)) {
            rows.add(0, row(session, each));
        }
        show(dress().text(rows.isEmpty() ? "compare.none" : "compare.about"), rows);
    }

    private Row row(PracticeSession session, PredictionResult each) {
        TankClock clock = new TankClock(session);
        String title = dress().text(
                        "journal.line", clock.when(each.atHours()), each.act().words());
        String said = said(each);
        boolean read =
                session.lastReading().filter(reading -> after(each, reading)).isPresent();
        if (!read || !each.judged()) {
            String key = session.settlesAt().isPresent() ? "compare.wait" : "compare.look";
            return new Row(dress().text("compare.open"), Row.Mark.MIND, title, said + "\n" + dress().text(key));
        }
        String came = dress().text(
                        "debrief.came",
                        each.level().levelWords(),
                        each.foam().foamWords(),
                        Quantity.of(each.factor(), Unit.PLAIN));
        return new Row(
                dress().text(each.hit() ? "debrief.saidRight" : "debrief.saidWrong"),
                each.hit() ? Row.Mark.DONE : Row.Mark.BAD,
                title,
                said + "\n" + came + "\n" + dress().words().say(each.why()));
    }

    private String said(PredictionResult each) {
        return dress().text(
                        "step.expected",
                        each.prediction().level().levelWords(),
                        each.prediction().foam().foamWords(),
                        Quantity.of(each.prediction().times(), Unit.PLAIN),
                        Quantity.of(each.prediction().sure(), Unit.SHARE));
    }

    private static boolean after(PredictionResult each, Reading reading) {
        return SessionClock.hours(reading.at()) > each.atHours();
    }

    @Override
    public void dress(Dress other) {
        dress(other.text("compare.title"), other);
    }
}
