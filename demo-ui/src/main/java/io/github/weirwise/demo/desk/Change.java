package io.github.weirwise.demo.desk;

import io.github.weirwise.demo.look.Words;
import io.github.weirwise.practice.FreePlay;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.FoamState;
import io.github.weirwise.unit.OperatingPoint;

/** Tells in a few sentences what a change of settings does: the level at once, foam and colour once settled, and why. */
final class Change {
    private static final double SAME_MM = 0.15;
    private static final double SAME_RATIO = 0.03;
    private static final double NOTHING_ML_PER_DAY = 0.5;

    private final OperatingPoint before;
    private final OperatingPoint after;

    private Change(OperatingPoint before, OperatingPoint after) {
        this.before = before;
        this.after = after;
    }

    static Phrase of(Lever lever, FreePlay before, FreePlay after) {
        Change change = new Change(before.rest(), after.rest());
        return Words.phrase(
                "change.all",
                Words.phrase(
                        "change.lever." + lever,
                        Quantity.of(lever.of(before.settings()), lever.unit()),
                        Quantity.of(lever.of(after.settings()), lever.unit())),
                change.level(),
                change.amount(),
                change.why(lever));
    }

    private Phrase level() {
        double rise = after.submergenceMm() - before.submergenceMm();
        if (Math.abs(rise) < SAME_MM) {
            return Words.phrase("change.level.same");
        }
        return Words.phrase(
                rise > 0 ? "change.level.up" : "change.level.down", mm(Math.abs(rise)), mm(after.submergenceMm()));
    }

    private Phrase amount() {
        if (after.foamState() == FoamState.FLOODING) {
            return Words.phrase("change.amount.flood");
        }
        if (after.skimmateMlPerDay() < NOTHING_ML_PER_DAY) {
            return Words.phrase("change.amount.none");
        }
        double ratio = after.skimmateMlPerDay() / Math.max(NOTHING_ML_PER_DAY, before.skimmateMlPerDay());
        Quantity amount = Quantity.of(after.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY);
        if (Math.abs(ratio - 1) < SAME_RATIO) {
            return Words.phrase("change.amount.same", amount);
        }
        Phrase colour = Words.phrase(
                after.darknessPtCo() > before.darknessPtCo() ? "change.colour.darker" : "change.colour.paler");
        return Words.phrase(ratio > 1 ? "change.amount.more" : "change.amount.less", amount, colour);
    }

    private Phrase why(Lever lever) {
        return switch (lever) {
            case FLOW -> Words.phrase("change.why.FLOW", mm(before.headMm()), mm(after.headMm()));
            case AIR, AIR_LINE -> Words.phrase("change.why.AIR", mm(before.gasLiftMm()), mm(after.gasLiftMm()));
            default -> Words.phrase("change.why." + lever);
        };
    }

    private static Quantity mm(double value) {
        return Quantity.of(value, Unit.MILLIMETRE);
    }
}
