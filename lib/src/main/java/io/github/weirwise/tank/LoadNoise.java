package io.github.weirwise.tank;

/**
 * A smooth random factor on the load that the skimmer meets: log-normal, median 1, the same for the same seed and hour
 * whatever was asked before.
 */
final class LoadNoise {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private final long seed;
    private final double sigma;
    private final double patchHours;

    private LoadNoise(long seed, double sigma, double patchHours) {
        this.seed = seed;
        this.sigma = sigma;
        this.patchHours = patchHours;
    }

    static LoadNoise of(TankPlan plan) {
        TankParameters p = plan.parameters();
        double sigma = p.runs(TankProcess.LOAD_NOISE) ? p.value(TankParameter.NOISE_SIGMA) : 0;
        return new LoadNoise(plan.seed(), sigma, p.value(TankParameter.NOISE_HOURS));
    }

    double factor(double hours) {
        if (sigma == 0) {
            return 1;
        }
        double patch = hours / patchHours;
        long left = (long) Math.floor(patch);
        double u = patch - left;
        double smooth = u * u * u * (u * (6 * u - 15) + 10);
        return Math.exp(sigma * ((1 - smooth) * normal(left) + smooth * normal(left + 1)));
    }

    /** Sum of four uniform numbers, scaled to unit variance: near enough to normal, without wild tails. */
    private double normal(long patch) {
        long z = mix(seed + GOLDEN * patch);
        double sum = (z & 0xFFFF) + (z >>> 16 & 0xFFFF) + (z >>> 32 & 0xFFFF) + (z >>> 48);
        return (sum / 65535 - 2) * Math.sqrt(3);
    }

    private static long mix(long z) {
        long x = (z ^ z >>> 30) * 0xBF58476D1CE4E5B9L;
        x = (x ^ x >>> 27) * 0x94D049BB133111EBL;
        return x ^ x >>> 31;
    }
}
