package io.github.weirwise.demo.desk;

import io.github.weirwise.unit.FoamState;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** A small lesson in free play: a few things to do, each looked at before the next is told. */
public enum Lesson {
    /** The level answers at once, the foam in hours. */
    LEVEL(
            "lesson.LEVEL.end",
            List.of(
                    new Step(
                            "lesson.LEVEL.raise",
                            (desk, began) -> Done.when(
                                    levelMm(desk) > desk.scene().bandMm().high())),
                    new Step("lesson.LEVEL.wait", (desk, began) -> waited(desk, began, 3)),
                    new Step("lesson.LEVEL.settle", (desk, began) -> unmoved(desk, began, desk.settled())),
                    new Step("lesson.LEVEL.back", (desk, began) -> Done.when(levelIsRight(desk))),
                    new Step("lesson.LEVEL.again", (desk, began) -> Done.when(desk.settled() && isRight(desk))))),
    /** A closed air line looks like a weir that stands too low. */
    AIR(
            "lesson.AIR.end",
            List.of(
                    new Step("lesson.AIR.close", (desk, began) -> Done.when(opening(desk) <= 0.55)),
                    new Step("lesson.AIR.settle", (desk, began) -> Done.when(desk.settled())),
                    new Step("lesson.AIR.raise", (desk, began) -> Done.when(isRight(desk) && amountRatio(desk) > 0.8)),
                    new Step("lesson.AIR.open", (desk, began) -> Done.when(opening(desk) >= 0.99)),
                    new Step(
                            "lesson.AIR.back",
                            (desk, began) -> Done.when(levelIsRight(desk) && opening(desk) >= 0.99)))),
    /** Who moves again before the foam has settled chases it. */
    WAITING(
            "lesson.WAITING.end",
            List.of(
                    new Step(
                            "lesson.WAITING.lower",
                            (desk, began) -> Done.when(
                                    levelMm(desk) < desk.scene().bandMm().low())),
                    new Step("lesson.WAITING.wait", (desk, began) -> waited(desk, began, 1)),
                    new Step("lesson.WAITING.settle", (desk, began) -> unmoved(desk, began, desk.settled())),
                    new Step("lesson.WAITING.back", (desk, began) -> Done.when(levelIsRight(desk))),
                    new Step("lesson.WAITING.again", (desk, began) -> unmoved(desk, began, desk.settled()))));

    private final String end;
    private final List<Step> steps;

    Lesson(String end, List<Step> steps) {
        this.end = end;
        this.steps = steps;
    }

    /** Text of a step, or of the end after the last one. */
    String text(int step) {
        return step < steps.size() ? steps.get(step).text() : end;
    }

    int steps() {
        return steps.size();
    }

    Done at(int step, TryDesk desk, Began began) {
        return steps.get(step).check().done(desk, began);
    }

    /** How a step stands. */
    enum Done {
        NOT_YET,
        YES,
        /** The weir was moved when it should have been left. */
        MOVED;

        private static Done when(boolean done) {
            return done ? YES : NOT_YET;
        }
    }

    /** How it was when a step began. */
    record Began(double crestMm, Instant at) {}

    private record Step(String text, Check check) {}

    private interface Check {
        Done done(TryDesk desk, Began began);
    }

    private static double levelMm(TryDesk desk) {
        return desk.tank().rest().submergenceMm();
    }

    private static double amountRatio(TryDesk desk) {
        return desk.tank().rest().skimmateMlPerDay() / desk.unit().target().skimmateMlPerDay();
    }

    private static Done waited(TryDesk desk, Began began, int hours) {
        return unmoved(desk, began, !desk.now().isBefore(began.at().plus(Duration.ofHours(hours))));
    }

    private static Done unmoved(TryDesk desk, Began began, boolean done) {
        return desk.settings().weirCrestMm() != began.crestMm() ? Done.MOVED : Done.when(done);
    }

    private static double opening(TryDesk desk) {
        return desk.settings().condition().airLineOpening();
    }

    private static boolean isRight(TryDesk desk) {
        return desk.tank().rest().foamState() == FoamState.ON_TARGET;
    }

    private static boolean levelIsRight(TryDesk desk) {
        return desk.scene().bandMm().contains(levelMm(desk));
    }
}
