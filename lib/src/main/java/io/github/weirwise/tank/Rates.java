package io.github.weirwise.tank;

/** One group of processes: adds its share to the derivatives, per hour. */
interface Rates {
    /** Called when settings may have changed. */
    void begin(TankDraft draft);

    /** Adds to {@code dy}. May read and complete {@code now}; groups are called in a fixed order. */
    void add(Moment now, double[] y, double[] dy);
}
