package io.github.weirwise.evidence;

import io.github.weirwise.internal.physics.foam.BubbleUptake;
import io.github.weirwise.internal.physics.foam.Capillarity;
import io.github.weirwise.internal.physics.foam.GatheredLoad;
import io.github.weirwise.internal.physics.foam.Venting;
import io.github.weirwise.internal.physics.seawater.Seawater;
import io.github.weirwise.unit.AssumedCoverage;
import io.github.weirwise.unit.ColumnAssumptions;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.ReferenceColumn;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmateStrength;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyInputs;
import io.github.weirwise.unit.SteadyLaw;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;

/**
 * Command {@code sensitivity}: what skimmate, submergence and darkness of the middle unit make of each assumption, how each of
 * the three units spans dry to wet, and what the column's own assumptions do; writes its part of docs/reference/model.md.
 */
final class Sensitivity {
    private static final ColumnAssumptions USED = ColumnAssumptions.DEFAULT;

    private Sensitivity() {}

    static DocumentPart part() {
        return new DocumentPart(Path.of("docs", "reference", "model.md"), "sensitivity");
    }

    static void run(String[] options) throws IOException {
        String text = text();
        System.out.println(text);
        part().write(text);
        int parameters = SensitivityRows.of(FirstRoundUnits.middle()).size()
                + columnRows().size();
        System.out.println("result: parameters=" + parameters);
    }

    /** The part of the document; the same on every run. */
    static String text() {
        return assumptions() + spans() + column() + gathering();
    }

    private static String assumptions() {
        SkimmerUnit unit = FirstRoundUnits.middle();
        SensitivityScene base = SensitivityScene.of(unit);
        StringBuilder table = new StringBuilder("""
                The middle unit at its wanted point, fast form: one assumption at a time takes two other values. The level and the amount
                are what follows while the unit's mean life is kept. Then the life is fitted again, as a journal does, to the wanted amount:
                what is left is how the unit answers to 2 mm more weir. Darkness is that of the vial while the life is kept.

                | assumption | used | tried | level, mm | skimmate x | x at +2 mm, life fitted again | darkness x |
                |---|---|---|---|---|---|---|
                """);
        table.append(
                String.format(Locale.ROOT, "| none | | | 0 | 1 | %s | 1 |%n", SensitivityRow.ratio(base.answerTo(2))));
        SensitivityRows.of(unit).forEach(row -> table.append(row.against(base)));
        return table.toString();
    }

    private static String spans() {
        StringBuilder table = new StringBuilder("""

                From too dry to too wet: millimetres of weir between 0.4 and 2.4 times the wanted amount, and what a move of the weir makes of
                the amount; fast form, and full column with its own life in brackets.

                | unit | 0.4 to 2.4, mm | -4 mm | -2 mm | +2 mm | +4 mm |
                |---|---|---|---|---|---|
                """);
        for (SkimmerUnit unit : WorkingBox.defaults()) {
            Settings anchor = WorkingBox.anchor(unit);
            SkimmerUnit full = ReferenceColumn.withFittedLife(unit, anchor, USED);
            double target = unit.target().skimmateMlPerDay();
            DoubleUnaryOperator fast =
                    mm -> WorkingBox.fast(unit, anchor.withWeirCrestMm(anchor.weirCrestMm() + mm)) / target;
            DoubleUnaryOperator column =
                    mm -> ReferenceColumn.of(full, anchor.withWeirCrestMm(anchor.weirCrestMm() + mm))
                                    .skimmateMlPerDay()
                            / target;
            table.append(String.format(Locale.ROOT, "| %s | %.1f (%.1f)", unit.name(), span(fast), span(column)));
            for (double mm : new double[] {-4, -2, 2, 4}) {
                table.append(
                        String.format(Locale.ROOT, " | %.2f (%.2f)", fast.applyAsDouble(mm), column.applyAsDouble(mm)));
            }
            table.append(" |\n");
        }
        return table.toString();
    }

    private static double span(DoubleUnaryOperator ratio) {
        return crossing(ratio, 2.4) - crossing(ratio, 0.4);
    }

    /** The move at which a rising ratio passes a value, mm. */
    private static double crossing(DoubleUnaryOperator ratio, double value) {
        double low = -30;
        double high = 30;
        while (high - low > 1e-3) {
            double middle = 0.5 * (low + high);
            if (ratio.applyAsDouble(middle) < value) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /** What only the column assumes. */
    private record ColumnRow(String what, ColumnAssumptions assumptions) {}

    private static List<ColumnRow> columnRows() {
        return List.of(
                new ColumnRow("bubbles grown within 50 s", USED.withGrownAgeSeconds(50)),
                new ColumnRow("bubbles grown within 200 s", USED.withGrownAgeSeconds(200)),
                new ColumnRow("surface tension lowered by 5 mN/m", USED.withSurfacePressureMnPerM(5)),
                new ColumnRow("surface tension lowered by 40 mN/m", USED.withSurfacePressureMnPerM(40)),
                new ColumnRow("bubbles in order", USED.withCapillarity(Capillarity.ORDERED)),
                new ColumnRow("burst gas leaves only at the top", USED.withVenting(Venting.AT_TOP)),
                new ColumnRow("bubbles merge, the gas stays", USED.withVenting(Venting.BY_MERGING)));
    }

    private static String column() {
        SkimmerUnit unit = WorkingBox.defaults().get(1);
        Settings anchor = WorkingBox.anchor(unit);
        StringBuilder table = new StringBuilder("""

                The same unit by the full column, what only the column assumes (used: grown within 100 s, 20 mN/m, without order, vented
                through the foam). "None" says that no mean life from half to twice the usual one gives the wanted amount: the unit floods.

                | assumption | skimmate x, life kept | x at +2 mm, life fitted again |
                |---|---|---|
                """);
        SkimmerUnit fitted = ReferenceColumn.withFittedLife(unit, anchor, USED);
        double amount = ReferenceColumn.of(fitted, anchor, USED).skimmateMlPerDay();
        table.append(String.format(
                Locale.ROOT,
                "| as used | 1 | %s |%n",
                SensitivityRow.ratio(SensitivityScene.columnAnswer(unit, USED, 2))));
        for (ColumnRow row : columnRows()) {
            double other = ReferenceColumn.of(fitted, anchor, row.assumptions).skimmateMlPerDay();
            table.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s |%n",
                    row.what,
                    SensitivityRow.ratio(other / amount),
                    SensitivityRow.ratio(SensitivityScene.columnAnswer(unit, row.assumptions, 2))));
        }
        return table.toString();
    }

    /** How much of its load a bubble can gather on its way from the opening to the foam, by transport. */
    private static String gathering() {
        StringBuilder text = new StringBuilder(
                String.format(Locale.ROOT, """

                A bubble of the fresh size that rises alone from the column's opening to the wanted level, in water with 2 mg/L of a protein \
                (diffusivity %.0e m2/s), gathers by the transport law at least this share of its load; %.1f is used (see the doubts below). A swarm \
                rises slower, and froth has more time.

                | unit | way, mm | time, s | share of the load | organics carried out at that share, over those computed |
                |---|---|---|---|---|
                """, BubbleUptake.PROTEIN_DIFFUSIVITY, SkimmateStrength.COLLECTED_SHARE));
        for (SkimmerUnit unit : FirstRoundUnits.units()) {
            SteadyInputs in = SteadyInputs.of(unit, WorkingBox.anchor(unit));
            double way =
                    new SteadyLaw(unit).at(in).columnLevelM() - unit.column().openingMm() / 1000;
            double speed = in.terminalSpeedMPerS();
            double kinematic = Seawater.viscosity(35, 25) / Seawater.density(35, 25);
            double transfer = BubbleUptake.transferSpeed(
                    speed, unit.traits().freshBubbleMm() / 1000, kinematic, BubbleUptake.PROTEIN_DIFFUSIVITY);
            GatheredLoad uptake = new GatheredLoad(AssumedCoverage.adsorption(), transfer);
            double share = uptake.load(0.002, way / speed)
                    / AssumedCoverage.adsorption().load(0.002);
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %.0f | %.1f | %.2f | %.2f |%n",
                    unit.name(),
                    1000 * way,
                    way / speed,
                    share,
                    share / SkimmateStrength.COLLECTED_SHARE));
        }
        return text.append("\n").toString();
    }
}
