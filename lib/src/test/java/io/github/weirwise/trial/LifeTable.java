package io.github.weirwise.trial;

/**
 * Share of the gas that lives to the lip against the foam's fullness (gas held over gas in, in mean lives), tabulated from
 * a {@link LifeLaw}.
 *
 * <p>With venting through the foam the held gas is the integral of survival up to the age at the lip; with venting at the
 * top it is simply that age.
 */
final class LifeTable {
    private static final int POINTS = 220;
    private static final double FIRST_LOG_T = -14;
    private static final double LAST_LOG_T = 14;
    private static final double FAINTEST = 1e-9;

    private final double[] logFullness;
    private final double[] logShare;
    private final double[] age;
    private final int size;
    /** The law's own unit of time in mean lives, upside down. */
    private final double unit;

    LifeTable(LifeLaw law, double steepness) {
        double[] held = new double[POINTS];
        logShare = new double[POINTS];
        age = new double[POINTS];
        double step = (LAST_LOG_T - FIRST_LOG_T) / (POINTS - 1);
        double sum = Math.exp(FIRST_LOG_T);
        double before = sum;
        int count = 0;
        for (int i = 0; i < POINTS; i++) {
            double t = Math.exp(FIRST_LOG_T + i * step);
            double share = law.survival(t, steepness);
            if (share < FAINTEST) {
                break;
            }
            if (i > 0) {
                sum += step * (before + share * t) / 2;
            }
            before = share * t;
            held[count] = law.ventsAtTop() ? t : sum;
            logShare[count] = Math.log(share);
            age[count] = t;
            count++;
        }
        size = count;
        logFullness = new double[size];
        unit = law.ventsAtTop() ? 1 : held[size - 1];
        for (int i = 0; i < size; i++) {
            logFullness[i] = Math.log(held[i] / unit);
        }
    }

    /** Share that lives to the lip, 0 to 1. */
    double share(double fullness) {
        double x = Math.log(fullness);
        if (x <= logFullness[0]) {
            return 1;
        }
        if (x >= logFullness[size - 1]) {
            return 0;
        }
        int i = cell(logFullness, x, true);
        double along = (x - logFullness[i]) / (logFullness[i + 1] - logFullness[i]);
        return Math.exp(logShare[i] + along * (logShare[i + 1] - logShare[i]));
    }

    /** Fullness at which this share lives to the lip. */
    double fullness(double share) {
        int i = cell(logShare, Math.log(share), false);
        double along = (Math.log(share) - logShare[i]) / (logShare[i + 1] - logShare[i]);
        return Math.exp(logFullness[i] + along * (logFullness[i + 1] - logFullness[i]));
    }

    /** How many per cent less gas arrives for one per cent more fullness, at the fullness of this share. */
    double steepness(double share) {
        double x = fullness(share);
        double spread = 1.02;
        double more = share(x * spread);
        double less = share(x / spread);
        return more > 0 ? Math.log(less / more) / (2 * Math.log(spread)) : 1000;
    }

    /** Time until half of the bubbles that lived to the lip have burst, in mean lives. */
    double collapse(double share) {
        double first = Math.log(Math.max(share, 4 * FAINTEST));
        double half = Math.max(logShare[size - 1], first - Math.log(2));
        return (ageAt(half) - ageAt(first)) / unit;
    }

    private double ageAt(double logOfShare) {
        int i = cell(logShare, logOfShare, false);
        double along = (logOfShare - logShare[i]) / (logShare[i + 1] - logShare[i]);
        return age[i] * Math.pow(age[i + 1] / age[i], along);
    }

    private int cell(double[] values, double x, boolean rising) {
        int low = 0;
        int high = size - 1;
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (values[middle] <= x == rising) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The table of a law whose steepness at a share is as wanted, or as near as the law gets. */
    static LifeTable withSteepness(LifeLaw law, double share, double wanted) {
        double calm = 0;
        double steep = 1;
        for (int i = 0; i < 14; i++) {
            double middle = (calm + steep) / 2;
            if (new LifeTable(law, middle).steepness(share) > wanted) {
                steep = middle;
            } else {
                calm = middle;
            }
        }
        return new LifeTable(law, (calm + steep) / 2);
    }
}
