package io.github.weirwise.tank;

import io.github.weirwise.internal.physics.seawater.Seawater;
import java.util.Arrays;

/** One moment of a tank, an amount a {@link Stock}. Immutable; keep it, branch from it, compare it. */
public final class TankState {
    private final double hours;
    private final double[] amounts;

    TankState(double hours, double[] amounts) {
        this.hours = hours;
        this.amounts = amounts.clone();
    }

    /** Time since a Monday's midnight. */
    public double hours() {
        return hours;
    }

    /**
     * An amount.
     *
     * @param stock one of {@link Stock}; whether something is so is told as 0 or 1
     */
    public double of(int stock) {
        return amounts[stock];
    }

    /**
     * Whether something is so.
     *
     * @param stock one of {@link Stock}
     */
    public boolean is(int stock) {
        return amounts[stock] != 0;
    }

    double[] all() {
        return amounts.clone();
    }

    /** Whether water comes over the weir: the return pump is on and there is no power cut. */
    public boolean flowing() {
        return new TankDraft(this).flowing();
    }

    /** Practical salinity from the masses. */
    public double practicalSalinity() {
        double salt = of(Stock.SALT_KG);
        return 1000 * salt / (of(Stock.WATER_KG) + salt) / Seawater.GRAMS_PER_KG_PER_PRACTICAL;
    }

    /** Mean organics of the collected liquid, mg/L; zero when there is none. */
    public double collectedMgPerLitre() {
        double litres = (of(Stock.CUP_ML) + of(Stock.CONTAINER_ML)) / 1000;
        return litres > 0 ? 1000 * of(Stock.COLLECTED_G) / litres : 0;
    }

    /** The same moment with another amount. */
    public TankState with(int stock, double amount) {
        TankState changed = new TankState(hours, amounts);
        changed.amounts[stock] = amount;
        return changed;
    }

    /** The same moment on another day: the clock moved, everything else kept. */
    public TankState atHours(double other) {
        return new TankState(other, amounts);
    }

    /** This moment in the water of another, with that one's parts; foam, vessels, settings and ledger stay. */
    public TankState inWaterOf(TankState other) {
        TankState changed = new TankState(hours, amounts);
        System.arraycopy(other.amounts, 0, changed.amounts, 0, Stock.SKIMMATE_ML_PER_DAY);
        return changed;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TankState state && state.hours == hours && Arrays.equals(state.amounts, amounts);
    }

    @Override
    public int hashCode() {
        return Double.hashCode(hours) + 31 * Arrays.hashCode(amounts);
    }

    @Override
    public String toString() {
        return "tank at " + hours + " h " + Arrays.toString(amounts);
    }
}
