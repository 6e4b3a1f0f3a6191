package io.github.weirwise.diagnosis;

/** Reads a point of the unit cube coordinate by coordinate, as uniform or as standard normal numbers. */
final class Coordinates {
    private final double[] point;
    private int next;

    Coordinates(double[] point) {
        this.point = point;
    }

    /** The next coordinate, above 0 and below 1. */
    double uniform() {
        return point[next++];
    }

    /** The next coordinate as a standard normal number. */
    double normal() {
        return NormalTable.quantile(point[next++]);
    }
}
