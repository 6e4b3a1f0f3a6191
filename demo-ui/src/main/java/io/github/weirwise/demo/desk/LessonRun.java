package io.github.weirwise.demo.desk;

import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Phrase;
import java.util.Optional;

/** A lesson on its way: follows what is done at the desk and says what comes next. */
public final class LessonRun {
    private final TryDesk desk;
    private Optional<Lesson> lesson = Optional.empty();
    private Lesson.Began began;
    private int step;
    private boolean moved;
    private boolean starting;

    /** Follows a desk; no lesson is on. */
    public LessonRun(TryDesk desk) {
        this.desk = desk;
        desk.onChange(this::look);
    }

    /** Begins a lesson with the unit settled on target, or ends the one that is on. */
    public void begin(Optional<Lesson> next) {
        lesson = next;
        if (next.isPresent()) {
            starting = true;
            desk.choose(desk.unit());
            starting = false;
            step = 0;
            begun();
        }
    }

    public Optional<Lesson> lesson() {
        return lesson;
    }

    /** Whether its last step is done. */
    public boolean done() {
        return lesson.filter(each -> step >= each.steps()).isPresent();
    }

    private void begun() {
        began = new Lesson.Began(desk.settings().weirCrestMm(), desk.now());
    }

    private void look() {
        if (starting || lesson.isEmpty() || done()) {
            return;
        }
        Lesson.Done done = lesson.get().at(step, desk, began);
        // Who drags the weir past where a step ends has not moved it again: no time went by.
        moved = done == Lesson.Done.MOVED && desk.now().isAfter(began.at());
        if (done == Lesson.Done.YES) {
            step++;
        }
        if (done != Lesson.Done.NOT_YET) {
            begun();
        }
    }

    /** What has been seen and what is to be done next; empty without a lesson. */
    public Optional<Phrase> told() {
        return lesson.map(each -> {
            Phrase told = Words.phrase(each.text(step));
            if (done()) {
                return told;
            }
            Phrase counted = Words.phrase("lesson.step", step + 1, each.steps(), told);
            return moved ? Words.phrase("lesson.moved", counted) : counted;
        });
    }
}
