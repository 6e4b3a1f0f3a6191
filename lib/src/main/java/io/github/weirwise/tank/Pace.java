package io.github.weirwise.tank;

/** The numbers of a plan's processes, looked up once for the thousands of steps of an integration. */
final class Pace {
    private final double[] values = new double[TankParameter.values().length];
    private final boolean[] runs = new boolean[values.length];

    Pace(TankPlan plan) {
        for (TankParameter each : TankParameter.values()) {
            values[each.ordinal()] = plan.parameters().value(each);
            runs[each.ordinal()] = plan.parameters().runs(each.process());
        }
    }

    /** A number. */
    double of(TankParameter parameter) {
        return values[parameter.ordinal()];
    }

    /** A number; nothing while its process is switched off. */
    double running(TankParameter parameter) {
        return runs(parameter) ? of(parameter) : 0;
    }

    /** A number by the day as one by the hour; nothing while its process is switched off. */
    double perHour(TankParameter perDay) {
        return running(perDay) / 24;
    }

    /** Share of a gap that closes in an hour, by the time constant in hours; nothing while its process is switched off. */
    double closing(TankParameter hours) {
        return runs(hours) ? 1 / of(hours) : 0;
    }

    /** The same by the time constant in days. */
    double closingByDays(TankParameter days) {
        return runs(days) ? 1 / (24 * of(days)) : 0;
    }

    /** Whether the process of a number runs. */
    boolean runs(TankParameter parameter) {
        return runs[parameter.ordinal()];
    }
}
