package io.github.weirwise.internal.physics.foam;

/**
 * Steady column by counting gas and liquid age by age, without suction and in few steps of equal height; see {@link
 * FoamColumn#sketched}. At each height the foam is as wet as carriage upward and drainage downward balance, packing at most.
 */
final class ColumnSketch {
    /** Steps of the midpoint rule; twice as many move the liquid over the lip by some tenths of a per cent. */
    private static final int STEPS = 32;

    private static final int MOST_ROOT_STEPS = 30;
    /** Newton's method squares the error: after a step of this size it is far below the steps' own. */
    private static final double ROOT_TOLERANCE = 1e-5;

    private static final double NOTHING_LEFT = 1e-6;

    private final FoamColumn column;
    private final ColumnLaws laws;
    private final double gas;
    private final double lifeVolume;
    private final double tail;
    private final double theta;
    private double survival;
    private double age;

    ColumnSketch(FoamColumn column) {
        this.column = column;
        laws = new ColumnLaws(column);
        gas = column.gasFlowM3PerS();
        lifeVolume = gas * column.life().meanLifeS();
        tail = 1 / (column.life().alpha() - 1);
        theta = column.life().thetaS();
    }

    FoamSketch draw() {
        double step = (column.lipM() - column.waterM()) / STEPS;
        double held = 0;
        double liquid = 0;
        double liquidHead = 0;
        double topM = column.lipM();
        for (int i = 0; i < STEPS; i++) {
            double heightM = column.waterM() + i * step;
            double lower = column.bore().areaM2(heightM);
            double middle = column.bore().areaM2(heightM + 0.5 * step);
            double half = held + 0.5 * step * lower * (1 - fraction(lower, held));
            double wet = fraction(middle, half);
            if (survival <= 0) {
                topM = heightM;
                break;
            }
            held += step * middle * (1 - wet);
            liquid += step * middle * wet;
            liquidHead += step * wet;
        }
        return atTop(topM, held, liquid, liquidHead);
    }

    /** How wet the foam above a held volume of gas is; 0 where nothing lives any more. */
    private double fraction(double area, double held) {
        outlive(held);
        if (survival <= 0) {
            return 0;
        }
        double speed = laws.drainageSpeed(laws.squareRadius(age, survival));
        return carriedFraction(gas * survival / (area * speed));
    }

    /** Age and share alive of the gas above a held volume; one power serves both. */
    private void outlive(double held) {
        double left = 1 - held / lifeVolume;
        if (left <= NOTHING_LEFT) {
            survival = 0;
            age = Double.POSITIVE_INFINITY;
            return;
        }
        double power = Math.pow(left, tail);
        survival = left * power;
        age = theta * (1 / power - 1);
    }

    /**
     * The wetness eps at which gas flux over drainage speed y carries up what runs down, y eps/(1 - eps) = q(eps), by Newton's
     * method in the logarithm, in which the two sides are nearly straight; packing where the gas carries more.
     */
    private double carriedFraction(double ratio) {
        FoamPermeability permeability = column.permeability();
        double packing = laws.packingFraction();
        if (ratio * packing >= (1 - packing) * permeability.flux(packing)) {
            return packing;
        }
        double eps = Math.min(packing, Math.pow(ratio, 1 / (permeability.exponent() - 1)));
        for (int step = 0; step < MOST_ROOT_STEPS; step++) {
            double flux = permeability.flux(eps);
            double dry = 1 - eps;
            double rise = eps * permeability.slope(eps) / flux - 1 / dry;
            double move = Math.log(ratio * eps / (dry * flux)) / rise;
            eps = Math.min(packing, eps * Math.exp(move));
            if (Math.abs(move) <= ROOT_TOLERANCE) {
                break;
            }
        }
        return eps;
    }

    private FoamSketch atTop(double topM, double held, double liquid, double liquidHead) {
        outlive(held);
        if (survival <= 0 || topM < column.lipM()) {
            return new FoamSketch(
                    topM, Math.min(held, lifeVolume), liquid, liquidHead, 0, 0, Double.POSITIVE_INFINITY, 0, 0, false);
        }
        double area = column.bore().areaM2(column.lipM());
        double flux = survival * gas / area;
        double square = laws.squareRadius(age, survival);
        double speed = laws.drainageSpeed(square);
        double fullest = laws.fullestFraction(flux, speed);
        double over = area * Math.max(0, laws.liquidFlux(flux, speed, fullest));
        boolean flooded = fullest >= laws.packingFraction();
        return new FoamSketch(topM, held, liquid, liquidHead, survival, fullest, age, Math.sqrt(square), over, flooded);
    }
}
