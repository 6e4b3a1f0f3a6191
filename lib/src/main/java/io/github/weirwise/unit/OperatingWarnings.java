package io.github.weirwise.unit;

import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import java.util.ArrayList;
import java.util.List;

/** What a steady state should be told with, worded as its consequence. */
final class OperatingWarnings {
    /** Below this head the water clings to the crest and the level is uncertain by millimetres. */
    private static final double SMALL_HEAD_MM = 15;

    private OperatingWarnings() {}

    static List<Warning> of(SkimmerUnit unit, SteadyInputs inputs, SteadyPoint point, HeadDoubt head, LoadDoubt load) {
        List<Warning> warnings = new ArrayList<>();
        double submergenceMm = point.columnLevelM() * 1000 - unit.column().funnelBaseMm();
        addFlow(warnings, inputs, point, head);
        if (point.columnFlooded()) {
            warnings.add(Warning.danger("unit.columnFlooded"));
        }
        if (point.lipFlooded()) {
            warnings.add(Warning.danger("unit.lipFlooded"));
        }
        if (point.columnLevelM() * 1000 < unit.column().openingMm()) {
            warnings.add(Warning.caution("unit.openingBare", mm(unit.column().openingMm())));
        } else if (submergenceMm < 0) {
            warnings.add(Warning.note("unit.belowFunnel", mm(-submergenceMm)));
        } else if (submergenceMm > unit.column().funnelHeightMm()) {
            warnings.add(Warning.caution("unit.inNeck"));
        }
        ResponseDoubt doubt = ResponseDoubt.of(unit, inputs, point);
        if (doubt.factor() > ResponseDoubt.TOLD_FROM) {
            warnings.add(Warning.note("unit.farFromTarget", Quantity.of(doubt.factor(), Unit.PLAIN)));
        }
        if (load.worthTelling()) {
            warnings.add(Warning.note(
                    "unit.loadAssumed",
                    Quantity.of(SkimmateStrength.COLLECTED_SHARE, Unit.SHARE),
                    Quantity.of(load.transportShare(), Unit.SHARE),
                    Quantity.of(load.factor(), Unit.PLAIN)));
        }
        if (inputs.backPressureHeadM() > 1e-3) {
            warnings.add(Warning.caution("unit.backPressure", mm(inputs.backPressureHeadM() * 1000)));
        }
        return Warning.ranked(warnings);
    }

    private static void addFlow(List<Warning> warnings, SteadyInputs inputs, SteadyPoint point, HeadDoubt head) {
        double headMm = point.headM() * 1000;
        if (inputs.flowM3PerS() <= 0) {
            warnings.add(Warning.caution("unit.noFlow"));
        } else if (inputs.levelBeyondM() > inputs.crestM()) {
            warnings.add(Warning.caution("unit.drowned", mm((inputs.levelBeyondM() - inputs.crestM()) * 1000)));
        } else if (headMm < SMALL_HEAD_MM) {
            warnings.add(Warning.caution("unit.smallHead", mm(SMALL_HEAD_MM), mm(head.halfWidthMm())));
        }
    }

    private static Quantity mm(double value) {
        return Quantity.of(value, Unit.MILLIMETRE);
    }
}
