package io.github.weirwise.evidence;

import io.github.weirwise.internal.physics.bubbles.InterfacialArea;
import io.github.weirwise.internal.physics.bubbles.RivalHoldup;
import io.github.weirwise.internal.physics.bubbles.RivalSpeeds;
import io.github.weirwise.internal.physics.bubbles.RivalSpeeds.Surface;
import io.github.weirwise.internal.physics.bubbles.TerminalSpeed;

/** Check rows of {@code bubbles}. */
final class BubbleFormulas {
    private static final double AIR_DENSITY = 1.2;
    private static final double GRAVITY = 9.80665;

    /** The liquids of the rows: water of 20 degrees, sea water of salinity 35 and 25 degrees. */
    private record Liquid(double density, double viscosity, double tension) {
        static final Liquid FRESH = new Liquid(998.21, 1.0016e-3, 0.07274);
        static final Liquid SEA = new Liquid(1023.34, 0.9588e-3, 0.07307);

        static Liquid of(CheckRow row) {
            return row.in("sea") == 1 ? SEA : FRESH;
        }
    }

    private BubbleFormulas() {}

    static void addTo(Formulas to) {
        addSpeeds(to);
        addHoldups(to);
    }

    private static void addSpeeds(Formulas to) {
        to.add(
                "SN",
                "rigid bubble",
                row -> speed(row, l -> TerminalSpeed.contaminated(d(row), l.density, l.viscosity)));
        to.add("SPHERE", "rigid bubble", BubbleFormulas::sphereReynolds);
        to.add(
                "CLIFT",
                "Clift's sphere",
                row -> speed(row, l -> RivalSpeeds.cliftSphere(d(row), l.density, l.viscosity)));
        to.add("TPURE", "Tomiyama's bubble", row -> tomiyama(row, Surface.PURE));
        to.add("TSLIGHT", "Tomiyama's bubble", row -> tomiyama(row, Surface.SLIGHTLY_CONTAMINATED));
        to.add("TFULL", "Tomiyama's bubble", row -> tomiyama(row, Surface.FULLY_CONTAMINATED));
        to.add(
                "GRACE",
                "Grace's bubble",
                row -> speed(row, l -> RivalSpeeds.graceEllipsoid(d(row), l.density, l.viscosity, l.tension)));
        to.add(
                "MEND",
                "Mendelson's bubble",
                row -> speed(row, l -> RivalSpeeds.mendelson(d(row), l.density, l.tension)));
        Liquid fresh = Liquid.FRESH;
        to.add("MORTON", "Morton number", row -> RivalSpeeds.morton(fresh.density, fresh.viscosity, fresh.tension));
    }

    private static void addHoldups(Formulas to) {
        to.add("RZN", "Richardson-Zaki exponent", row -> RivalHoldup.richardsonZakiExponent(row.in("Re")));
        to.add("VGJ", "churn drift speed", row -> RivalHoldup.churnDriftSpeed(row.in("rho"), row.in("sigma")));
        to.add("ZF", "churn holdup", row -> RivalHoldup.zuberFindlay(row.in("jg"), row.in("jl"), row.in("v")));
        to.add("WALLIS", "drift-flux holdup", row -> RivalHoldup.wallis(row.in("jg"), row.in("jl"), row.in("v")));
        to.add("FLOODU", "flooding of a column", row -> 1000 * RivalHoldup.floodingGasFlux(0, row.in("v"), 2));
        to.add("AREA", "interfacial area", row -> InterfacialArea.perVolume(row.in("eps"), row.in("mm") / 1000));
    }

    private static double speed(CheckRow row, java.util.function.ToDoubleFunction<Liquid> law) {
        return 1000 * law.applyAsDouble(Liquid.of(row));
    }

    private static double tomiyama(CheckRow row, Surface surface) {
        return speed(row, l -> RivalSpeeds.tomiyama(d(row), l.density, l.viscosity, l.tension, surface));
    }

    private static double d(CheckRow row) {
        return row.in("mm") / 1000;
    }

    /** Reynolds number at which the library's bubble of the given CD Re^2 rises. */
    private static double sphereReynolds(CheckRow row) {
        Liquid l = Liquid.FRESH;
        double weight = 4 * l.density * (l.density - AIR_DENSITY) * GRAVITY / (3 * l.viscosity * l.viscosity);
        double diameter = Math.cbrt(row.in("best") / weight);
        double speed = TerminalSpeed.contaminated(diameter, l.density, l.viscosity);
        return RivalSpeeds.reynolds(speed, diameter, l.density, l.viscosity);
    }
}
