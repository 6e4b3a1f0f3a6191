package io.github.weirwise.demo.picture;

import java.util.SplittableRandom;

/**
 * Foam cells that fill an area without gaps: each is all that lies nearer to its own middle than to any other (Voronoi), less
 * half the film and with its corners rounded. Asked point by point, so that the cells can creep; a place among the cells always
 * looks the same. Places are counted in cells: rows upward, and middles apart across. For one thread.
 */
final class Cells {
    /** Distance of rows over that of middles in a row. */
    static final double ROW = 0.866;

    private static final double JITTER = 0.26;
    /** The pattern comes again after so many rows and cells, a power of 2. */
    private static final int PERIOD = 64;

    private static final int NEAR = 9;
    /** How far from a corner a fully rounded one begins; chosen so that cells take the share that {@link FoamTone} reckons with. */
    private static final double ROUND = 0.42;

    private final double[] jitter = new SplittableRandom(7)
            .doubles(2L * PERIOD * PERIOD, -JITTER, JITTER)
            .toArray();
    private final double[] dx = new double[NEAR];
    private final double[] dy = new double[NEAR];
    private final double halfFilm;
    private final double round;

    /**
     * @param gap film over the distance of middles, 0 to 1
     * @param rounding 0 (flat walls) to 1 (round)
     */
    Cells(double gap, double rounding) {
        halfFilm = gap / 2;
        round = ROUND * rounding;
    }

    /**
     * How much of a small round place is film, 0 to 1.
     *
     * @param across from the axis, in distances of middles
     * @param row up, in rows
     * @param sharpness 1 over the size of the place, in distances of middles
     */
    double film(double across, double row, double sharpness) {
        int nearest = surround(across, row);
        double first = Double.MAX_VALUE;
        double second = Double.MAX_VALUE;
        double own = dx[nearest] * dx[nearest] + dy[nearest] * dy[nearest];
        for (int i = 0; i < NEAR; i++) {
            if (i != nearest) {
                double apartX = dx[i] - dx[nearest];
                double apartY = dy[i] - dy[nearest];
                double wall =
                        (dx[i] * dx[i] + dy[i] * dy[i] - own) / (2 * Math.sqrt(apartX * apartX + apartY * apartY));
                second = Math.min(second, Math.max(first, wall));
                first = Math.min(first, wall);
            }
        }
        double corner = Math.max(0, round - (second - first));
        double inside = round > 0 ? first - corner * corner / (4 * round) : first;
        return Math.max(0, Math.min(1, 0.5 + (halfFilm - inside) * sharpness));
    }

    /** Finds the middles round a place; the number of the nearest. */
    private int surround(double across, double row) {
        int middleRow = (int) Math.rint(row);
        int nearest = 0;
        for (int i = 0; i < NEAR; i++) {
            int r = middleRow + i / 3 - 1;
            double offset = (r & 1) == 0 ? 0 : 0.5;
            int c = (int) Math.rint(across - offset) + i % 3 - 1;
            int at = 2 * ((r & PERIOD - 1) * PERIOD + (c & PERIOD - 1));
            dx[i] = c + offset + jitter[at] - across;
            dy[i] = (r - row) * ROW + jitter[at + 1];
            if (dx[i] * dx[i] + dy[i] * dy[i] < dx[nearest] * dx[nearest] + dy[nearest] * dy[nearest]) {
                nearest = i;
            }
        }
        return nearest;
    }
}
