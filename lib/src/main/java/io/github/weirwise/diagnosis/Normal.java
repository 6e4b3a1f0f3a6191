package io.github.weirwise.diagnosis;

/**
 * The standard normal distribution. The share below a value is by Hart's rational approximation (Hart et al. 1968, algorithm 5666,
 * as printed by West 2005), good to 1e-14; a test holds it against a reference library, whose general form takes fifty times as
 * long in the innermost loop of every choice.
 *
 * @since 0.2
 */
public final class Normal {
    static final double ROOT_2_PI = Math.sqrt(2 * Math.PI);
    private static final double FARTHEST = 37;
    /** From here on what is left above is less than the last digit of 1. */
    private static final double ALL = 8.5;

    private static final double SPLIT = 7.07106781186547;

    private Normal() {}

    /**
     * Density at z standard deviations.
     *
     * @param z any number
     */
    public static double density(double z) {
        return bell(z) / ROOT_2_PI;
    }

    /** The density at z over that in the middle. */
    static double bell(double z) {
        return Math.exp(-0.5 * z * z);
    }

    /**
     * Share below z standard deviations, 0 to 1.
     *
     * @param z any number
     */
    public static double below(double z) {
        return certain(z) ? certainly(z) : inside(z, bell(z));
    }

    /** The same with the bell at z, where it is known already. */
    static double below(double z, double bell) {
        return certain(z) ? certainly(z) : inside(z, bell);
    }

    private static boolean certain(double z) {
        return z > ALL || z < -FARTHEST;
    }

    private static double certainly(double z) {
        return z > 0 ? 1 : 0;
    }

    private static double inside(double z, double bell) {
        double x = Math.abs(z);
        double tail = x < SPLIT ? middle(x, bell) : far(x, bell);
        return z > 0 ? 1 - tail : tail;
    }

    private static double middle(double x, double bell) {
        double up = 3.52624965998911e-02 * x + 0.700383064443688;
        up = up * x + 6.37396220353165;
        up = up * x + 33.912866078383;
        up = up * x + 112.079291497871;
        up = up * x + 221.213596169931;
        up = up * x + 220.206867912376;
        double down = 8.83883476483184e-02 * x + 1.75566716318264;
        down = down * x + 16.064177579207;
        down = down * x + 86.7807322029461;
        down = down * x + 296.564248779674;
        down = down * x + 637.333633378831;
        down = down * x + 793.826512519948;
        down = down * x + 440.413735824752;
        return bell * up / down;
    }

    private static double far(double x, double bell) {
        double fraction = x + 0.65;
        fraction = x + 4 / fraction;
        fraction = x + 3 / fraction;
        fraction = x + 2 / fraction;
        fraction = x + 1 / fraction;
        return bell / fraction / 2.506628274631;
    }
}
