package io.github.weirwise.lab.truth;

import static io.github.weirwise.lab.Dice.between;
import static io.github.weirwise.lab.Dice.factor;
import static io.github.weirwise.lab.Dice.near;
import static io.github.weirwise.unit.Part.*;

import io.github.weirwise.unit.SkimmerUnit;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * Truth "column": the full one-dimensional foam column (drainage, suction, growth, bursting), solved once on a grid by the command
 * column-table and only interpolated here. Head by Francis (1883) with one end contraction. It is steep: x1.3 a millimetre, and a
 * tenth less air is a fifth of the amount.
 */
public final class FullColumn implements ResponseLaw {
    private final SkimmerUnit sheet;
    private final ColumnTable table;
    private final double ratedOutsideMm;
    private final double ownMm;
    private final double ownLog;
    private final double crestOffsetMm;
    private final double air;
    private final double flow;
    private final double salinity;
    private final double filmOnLife;
    private final double freeMm;
    private final double ptCo;
    private final double lifePower;

    /** Draws a unit of this family around a data sheet of the laboratory's shapes. */
    public FullColumn(SkimmerUnit sheet, RandomGenerator dice) {
        this.sheet = sheet;
        List<ColumnTable> tables = ColumnTable.of(sheet.name().replace("lab ", ""));
        table = tables.get(dice.nextInt(tables.size()));
        // The lift goes nearly with the air, so two of the table's levels give the water outside.
        double little = table.levelMm(0, 0.3);
        ratedOutsideMm = little - 0.3 / 0.75 * (table.levelMm(0, 1.05) - little);
        ownMm = near(dice, 0, 3.5);
        crestOffsetMm = near(dice, 0, 1);
        air = sheet.ratedAirLitresPerHour() * factor(dice, 0.05);
        flow = sheet.ratedFlowLitresPerHour() * factor(dice, 0.04);
        salinity = near(dice, 35, 0.4);
        filmOnLife = between(dice, 0.06, 0.16);
        freeMm = between(dice, 25, 55);
        ptCo = 1700 * factor(dice, 0.25);
        ownLog = table.log(0, 1, 1);
        lifePower = (table.log(0, 1, 1.1) - table.log(0, 1, 0.9)) / Math.log(1.1 / 0.9);
    }

    @Override
    public Response at(double crestMm, double airSet, Fouling fouling, double foaminess, double passing) {
        double airShare = airSet
                * (1
                        - 0.28 * Math.pow(fouling.of(AIR_LINE), 2)
                        - 0.2 * Math.pow(fouling.of(INJECTOR_PUMP), 1.7)
                        - 0.1 * Math.pow(fouling.of(INJECTOR_NOZZLE), 1.5));
        double flowShare = 1 - 0.4 * fouling.of(RETURN_PUMP);
        double crest = crestMm + crestOffsetMm - 6 * fouling.of(WEIR_PLATE);
        double beyond = -freeMm + (freeMm + 10) * Math.pow(fouling.of(FILTER_PAD), 0.9);
        double head = headMm(flow * flowShare) + Math.max(0, 0.6 * beyond);
        double outside = crest + head - sheet.column().funnelBaseMm();
        double pressed = 5 * fouling.of(CUP_VENT) + 3 * fouling.of(SEATING);
        double rise = outside - pressed - ratedOutsideMm;
        double lost = filmOnLife * fouling.of(NECK_AND_CUP)
                + 0.04 * fouling.of(CUP_VENT)
                + 0.07 * fouling.of(SEATING)
                + 0.09 * fouling.of(SALT_MIX)
                + 0.04 * fouling.of(INJECTOR_NOZZLE);
        double life = Math.exp((foaminess + passing) / lifePower - lost);
        double arriving = airShare * (1 - 0.06 * fouling.of(RETURN_WATER));
        double log = table.log(rise + ownMm, Math.max(0.3, arriving), life) - ownLog;
        log = Math.max(Response.LEAST_LOG, Math.min(Response.MOST_LOG, log));
        return new Response(
                crest,
                head,
                beyond,
                outside,
                table.levelMm(rise, Math.max(0.3, airShare)),
                air * airShare,
                flow * flowShare,
                salinity - 8 * fouling.of(SALT_MIX),
                log,
                log > 2.8,
                ptCo * Math.exp(-0.45 * Math.max(-4, log)),
                26 * life);
    }

    /** Q = 1.84 (b - 0.1 h) h^1.5, metric. */
    private double headMm(double litresPerHour) {
        double width = sheet.weir().widthMm() / 1000;
        double head = 0.02;
        for (int i = 0; i < 4; i++) {
            head = Math.pow(litresPerHour / 3.6e6 / (1.84 * (width - 0.1 * head)), 2.0 / 3);
        }
        return 1000 * head;
    }
}
