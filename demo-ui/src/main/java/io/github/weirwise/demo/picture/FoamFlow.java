package io.github.weirwise.demo.picture;

/**
 * The way of the foam: up through funnel and neck with cells that grow as bubbles merge and drain, round the lip and down
 * outside. Tells for each place where it lies among the cells, counted from the lip, where they are {@code moved} rows on.
 */
final class FoamFlow {
    private final Section section;
    private final double lipCellMm;
    private final double footCellMm;
    private final double footMm;
    private final double moved;
    /** Rows between a height and the lip, by whole millimetres below the lip. */
    private final double[] rows;

    FoamFlow(Section section, Sight sight, double moved) {
        this.section = section;
        this.moved = moved;
        lipCellMm = sight.lipCellMm();
        footCellMm = Math.min(sight.freshCellMm(), sight.lipCellMm());
        footMm = Math.min(sight.footMm(), section.lipMm() - 1);
        rows = new double[(int) Math.ceil(section.lipMm() - section.column().openingMm()) + 2];
        for (int i = 1; i < rows.length; i++) {
            rows[i] = rows[i - 1] + 1 / (Cells.ROW * cellMm(section.lipMm() - i + 0.5));
        }
    }

    /** Drawn size of the cells at a height. */
    double cellMm(double heightMm) {
        double share = Math.max(0, Math.min(1, 1.6 * (heightMm - footMm) / (section.lipMm() - footMm)));
        return footCellMm + share * share * (3 - 2 * share) * (lipCellMm - footCellMm);
    }

    /** Film at a point beside a column's axis, 0 to 1, in a picture with so many pixels a millimetre. */
    double film(Cells cells, double besideMm, double heightMm, double pxPerMm) {
        double below = section.lipMm() - heightMm;
        double neck = section.radiusAt(Math.min(heightMm, section.lipMm()));
        double out = Math.abs(besideMm) - neck;
        if (below >= 0 && out <= 0) {
            double cell = cellMm(heightMm);
            return cells.film(besideMm / cell, -rowsBelow(below) - moved, cell * pxPerMm);
        }
        // Round the lip everything turns about its edge.
        double across = Math.copySign(neck - Math.hypot(out, Math.max(0, -below)), besideMm);
        double way = below >= 0 ? Math.PI * out + below : Math.hypot(out, below) * Math.atan2(-below, -out);
        return cells.film(across / lipCellMm, way / (Cells.ROW * lipCellMm) - moved, lipCellMm * pxPerMm);
    }

    private double rowsBelow(double mm) {
        int whole = Math.min(rows.length - 2, (int) mm);
        return rows[whole] + (mm - whole) * (rows[whole + 1] - rows[whole]);
    }
}
