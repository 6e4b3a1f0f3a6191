package io.github.weirwise.demo.picture;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/**
 * Foam cells that fill an area without gaps: each is all that lies nearer to its own middle than to any other (Voronoi), drawn
 * in by the film's half and rounded. The same area always gets the same cells.
 */
final class Cells {
    private static final double ROW = 0.866;
    private static final double JITTER = 0.26;
    private static final double REACH = 1.3;

    private Cells() {}

    private record Seed(double x, double y, double size) {}

    /**
     * Cells from the foot of an area upward, in its own coordinates with y downward.
     *
     * @param area what is filled
     * @param size distance of middles by height over the foot
     * @param gap film over that distance, 0 to 1
     * @param rounding 0 (flat walls) to 1 (round)
     */
    static List<Path2D> fill(Rectangle2D area, DoubleUnaryOperator size, double gap, double rounding) {
        List<List<Seed>> rows = rows(area, size);
        List<Path2D> cells = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            for (Seed seed : rows.get(row)) {
                cells.add(
                        cell(seed, rows.subList(Math.max(0, row - 2), Math.min(rows.size(), row + 3)), gap, rounding));
            }
        }
        return cells;
    }

    private static List<List<Seed>> rows(Rectangle2D area, DoubleUnaryOperator size) {
        List<List<Seed>> rows = new ArrayList<>();
        double up = 0;
        while (up < area.getHeight() + size.applyAsDouble(up)) {
            double step = Math.max(1.6, size.applyAsDouble(up));
            Random random = new Random(31L * rows.size() + 7);
            List<Seed> row = new ArrayList<>();
            // From the middle outward, so that a wider area has the same cells in its middle.
            int half = (int) Math.ceil(area.getWidth() / 2 / step) + 1;
            double offset = rows.size() % 2 == 0 ? 0 : step / 2;
            for (int i = -half; i <= half; i++) {
                row.add(new Seed(
                        area.getCenterX() + offset + i * step + JITTER * step * (2 * random.nextDouble() - 1),
                        area.getMaxY() - up + JITTER * step * (2 * random.nextDouble() - 1),
                        step));
            }
            rows.add(row);
            up += ROW * step;
        }
        return rows;
    }

    private static Path2D cell(Seed seed, List<List<Seed>> near, double gap, double rounding) {
        double reach = REACH * seed.size;
        double[][] corners = {{-reach, -reach}, {reach, -reach}, {reach, reach}, {-reach, reach}};
        for (List<Seed> row : near) {
            for (Seed other : row) {
                double dx = other.x - seed.x;
                double dy = other.y - seed.y;
                if (other != seed && Math.abs(dx) < 2 * reach && Math.abs(dy) < 2 * reach) {
                    corners = cut(corners, dx, dy);
                }
            }
        }
        return rounded(corners, seed, 1 - gap, rounding);
    }

    /** What of a convex area round the origin is nearer to it than to (dx, dy). */
    private static double[][] cut(double[][] corners, double dx, double dy) {
        double limit = (dx * dx + dy * dy) / 2;
        List<double[]> left = new ArrayList<>(corners.length + 1);
        for (int i = 0; i < corners.length; i++) {
            double[] a = corners[i];
            double[] b = corners[(i + 1) % corners.length];
            double beyondA = a[0] * dx + a[1] * dy - limit;
            double beyondB = b[0] * dx + b[1] * dy - limit;
            if (beyondA <= 0) {
                left.add(a);
            }
            if (beyondA < 0 != beyondB < 0) {
                double share = beyondA / (beyondA - beyondB);
                left.add(new double[] {a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])});
            }
        }
        return left.toArray(double[][]::new);
    }

    /** Corners are cut off by curves between points on the walls; with full rounding these are the walls' middles. */
    private static Path2D rounded(double[][] corners, Seed seed, double shrink, double rounding) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < corners.length; i++) {
            double[] corner = corners[i];
            double[] before = corners[(i + corners.length - 1) % corners.length];
            double[] after = corners[(i + 1) % corners.length];
            double share = rounding / 2;
            double startX = seed.x + shrink * (corner[0] + share * (before[0] - corner[0]));
            double startY = seed.y + shrink * (corner[1] + share * (before[1] - corner[1]));
            if (i == 0) {
                path.moveTo(startX, startY);
            } else {
                path.lineTo(startX, startY);
            }
            path.quadTo(
                    seed.x + shrink * corner[0],
                    seed.y + shrink * corner[1],
                    seed.x + shrink * (corner[0] + share * (after[0] - corner[0])),
                    seed.y + shrink * (corner[1] + share * (after[1] - corner[1])));
        }
        path.closePath();
        return path;
    }
}
