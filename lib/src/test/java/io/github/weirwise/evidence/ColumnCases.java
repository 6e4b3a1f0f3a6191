package io.github.weirwise.evidence;

import io.github.weirwise.internal.physics.foam.BubbleGrowth;
import io.github.weirwise.internal.physics.foam.Capillarity;
import io.github.weirwise.internal.physics.foam.FoamColumn;
import io.github.weirwise.internal.physics.foam.FoamLife;
import io.github.weirwise.internal.physics.foam.FoamLiquid;
import io.github.weirwise.internal.physics.foam.FoamPermeability;
import io.github.weirwise.internal.physics.foam.Venting;
import io.github.weirwise.internal.physics.seawater.MoreSeawater;
import io.github.weirwise.internal.physics.seawater.Seawater;
import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.ColumnAssumptions;
import io.github.weirwise.unit.FoamTraits;
import io.github.weirwise.unit.ReferenceColumn;
import io.github.weirwise.unit.SkimmerUnit;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Full foam columns for the benchmark, and the same as a file of doubles for the program in SciPy. */
public final class ColumnCases {
    /** Columns in the set. */
    public static final int COLUMNS = 6;
    /** Relative error of each step. */
    public static final double TOLERANCE = 1e-7;

    private static final int NUMBERS = 15;

    private final List<double[]> rows = new ArrayList<>();
    private final List<FoamColumn> columns = new ArrayList<>();

    /** Each default unit at its wanted level and 3 mm below, with its life fitted for the column. */
    public ColumnCases() {
        for (SkimmerUnit unit : WorkingBox.defaults()) {
            SkimmerUnit fitted =
                    ReferenceColumn.withFittedLife(unit, WorkingBox.anchor(unit), ColumnAssumptions.DEFAULT);
            add(fitted, unit.target().submergenceMm());
            add(fitted, unit.target().submergenceMm() - 3);
        }
    }

    private void add(SkimmerUnit unit, double submergenceMm) {
        Column shape = unit.column();
        FoamTraits traits = unit.traits();
        double tension = MoreSeawater.surfaceTension(35, 25) - ColumnAssumptions.DEFAULT.surfacePressureMnPerM() / 1000;
        FoamLiquid liquid = new FoamLiquid(Seawater.density(35, 25), Seawater.viscosity(35, 25), tension);
        BubbleGrowth growth = new BubbleGrowth(
                traits.freshBubbleMm() / 2000,
                traits.lipBubbleMm() / 2000,
                ColumnAssumptions.DEFAULT.grownAgeSeconds());
        double waterM = (shape.funnelBaseMm() + submergenceMm) / 1000;
        double air = unit.ratedAirLitresPerHour() / 3.6e6;
        columns.add(new FoamColumn(
                heightM -> Math.PI / 4e6 * shape.boreAtMm(1000 * heightM) * shape.boreAtMm(1000 * heightM),
                waterM,
                shape.lipMm() / 1000,
                air,
                liquid,
                FoamPermeability.toPacking(traits.filmMobility(), 2),
                Capillarity.DISORDERED,
                growth,
                new FoamLife(traits.meanLifeSeconds(), traits.lifeShape()),
                Venting.THROUGH_FOAM));
        rows.add(new double[] {
            shape.boreMm() / 2000,
            shape.funnelBaseMm() / 1000,
            (shape.funnelBaseMm() + shape.funnelHeightMm()) / 1000,
            shape.neckBoreMm() / 2000,
            waterM,
            shape.lipMm() / 1000,
            air,
            liquid.densityKgPerM3(),
            liquid.viscosityPaS(),
            tension,
            traits.filmMobility(),
            growth.freshRadiusM(),
            growth.grownRadiusM(),
            traits.meanLifeSeconds(),
            traits.lifeShape()
        });
    }

    /** Solves all columns; the liquid over their lips together, m3/s. */
    public double solve() {
        double sum = 0;
        for (FoamColumn column : columns) {
            sum += column.settled(TOLERANCE).liquidOverLipM3PerS();
        }
        return sum;
    }

    void write(Path file) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(8 * NUMBERS * rows.size()).order(ByteOrder.nativeOrder());
        rows.forEach(row -> {
            for (double number : row) {
                buffer.putDouble(number);
            }
        });
        Files.write(file, buffer.array());
    }

    /** The worst relative difference of the liquid over the lip. */
    double worstDifference(Path answers) throws IOException {
        ByteBuffer theirs = ByteBuffer.wrap(Files.readAllBytes(answers)).order(ByteOrder.nativeOrder());
        double worst = 0;
        for (FoamColumn column : columns) {
            double ours = column.settled(TOLERANCE).liquidOverLipM3PerS();
            worst = Math.max(worst, Math.abs(theirs.getDouble() / ours - 1));
        }
        return worst;
    }
}
