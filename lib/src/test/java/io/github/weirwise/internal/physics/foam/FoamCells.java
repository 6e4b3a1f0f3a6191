package io.github.weirwise.internal.physics.foam;

import org.hipparchus.ode.OrdinaryDifferentialEquation;

/**
 * A foam column cut into equal cells (finite volumes): how liquid fraction and age of each change in time. Carriage and
 * drainage together are a flux eps J - (1 - eps) K q(eps) under the total volume flux J, taken across cell faces by Godunov's
 * rule from values that slope within their cells (limited); so the lip passes by itself the greatest flux that foam can pass.
 * Suction is taken from the difference of osmotic pressure between cells. Ages ride on the bubbles.
 */
final class FoamCells implements OrdinaryDifferentialEquation {
    private static final double DRIEST = 1e-9;

    private final FoamColumn column;
    private final ColumnLaws laws;
    private final boolean vents;
    private final boolean merges;
    private final int cells;
    private final double width;
    private final double[] cellArea;
    private final double[] faceArea;

    FoamCells(FoamColumn column, int cells) {
        this.column = column;
        this.laws = new ColumnLaws(column);
        this.vents = column.venting() == Venting.THROUGH_FOAM;
        this.merges = column.venting() == Venting.BY_MERGING;
        this.cells = cells;
        this.width = (column.lipM() - column.waterM()) / cells;
        this.cellArea = new double[cells];
        this.faceArea = new double[cells + 1];
        for (int i = 0; i <= cells; i++) {
            faceArea[i] = column.bore().areaM2(column.waterM() + i * width);
        }
        for (int i = 0; i < cells; i++) {
            double middle = column.bore().areaM2(column.waterM() + (i + 0.5) * width);
            cellArea[i] = (faceArea[i] + 4 * middle + faceArea[i + 1]) / 6;
        }
    }

    int cells() {
        return cells;
    }

    double widthM() {
        return width;
    }

    double cellVolumeM3(int cell) {
        return cellArea[cell] * width;
    }

    double heightM(int cell) {
        return column.waterM() + (cell + 0.5) * width;
    }

    @Override
    public int getDimension() {
        return 2 * cells;
    }

    @Override
    public double[] computeDerivatives(double time, double[] state) {
        return new Flows(state).change();
    }

    /** The flows through all faces of one state. */
    Flows flows(double[] state) {
        return new Flows(state);
    }

    /** Flows through the faces, summed up from the water, because each vented volume is missing from all faces above. */
    final class Flows {
        private final double[] state;
        private final double[] squareRadius = new double[cells];
        private final double[] suctionHead = new double[cells];
        private final double[] liquid = new double[cells + 1];
        private final double[] bubbleSpeed = new double[cells + 1];
        private double volume;

        private Flows(double[] state) {
            this.state = state;
            for (int i = 0; i < cells; i++) {
                double age = Math.max(0, state[cells + i]);
                squareRadius[i] = laws.squareRadius(age, merges ? laws.survival(age) : 1);
                suctionHead[i] = laws.sucks() ? laws.suctionHead(fraction(i), Math.sqrt(squareRadius[i])) : 0;
            }
            fromWater();
            for (int face = 1; face < cells; face++) {
                volume -= vented(face - 1);
                across(face);
            }
            volume -= vented(cells - 1);
            overLip();
        }

        double liquidOverLipM3PerS() {
            return liquid[cells];
        }

        /** Gas that arrives at the lip. */
        double gasAtLipM3PerS() {
            return volume - liquid[cells];
        }

        FoamSlice slice(int cell) {
            double speed = 0.5 * (bubbleSpeed[cell] + bubbleSpeed[cell + 1]);
            double gas = speed * (1 - fraction(cell)) * cellArea[cell];
            return new FoamSlice(
                    heightM(cell), state[cell], gas, speed, state[cells + cell], Math.sqrt(squareRadius[cell]));
        }

        private double[] change() {
            double[] change = new double[2 * cells];
            double ageBelow = 0;
            for (int i = 0; i < cells; i++) {
                change[i] = (liquid[i] - liquid[i + 1]) / (cellArea[i] * width);
                double ageAbove = upperAge(i);
                double speed = Math.max(0, 0.5 * (bubbleSpeed[i] + bubbleSpeed[i + 1]));
                change[cells + i] = 1 - speed * (ageAbove - ageBelow) / width;
                ageBelow = ageAbove;
            }
            return change;
        }

        private double fraction(int cell) {
            return Math.max(DRIEST, Math.min(ColumnLaws.WETTEST, state[cell]));
        }

        /** Gas that leaves a cell through the foam. */
        private double vented(int cell) {
            return vents
                    ? cellArea[cell] * width * (1 - fraction(cell)) * laws.hazard(Math.max(0, state[cells + cell]))
                    : 0;
        }

        /** The water's surface: wet as packed bubbles, without suction; gas comes in, liquid may pass both ways. */
        private void fromWater() {
            double gasFlux = column.gasFlowM3PerS() / faceArea[0];
            double speed = laws.drainageSpeed(laws.squareRadius(0, 1));
            double packing = laws.packingFraction();
            double inside = Math.max(DRIEST, fraction(0) - 0.5 * slope(0));
            double flux = laws.liquidFluxAcross(gasFlux, speed, packing, inside);
            double middle = 0.5 * (packing + inside);
            flux += speed * between(packing, inside) / (1 - middle) * suctionHead[0] / (0.5 * width);
            liquid[0] = flux * faceArea[0];
            volume = column.gasFlowM3PerS() + liquid[0];
            bubbleSpeed[0] = gasFlux / (1 - inside);
        }

        private void across(int face) {
            double flux = volume / faceArea[face];
            double speed = laws.drainageSpeed(0.5 * (squareRadius[face - 1] + squareRadius[face]));
            double below = Math.max(DRIEST, fraction(face - 1) + 0.5 * slope(face - 1));
            double above = Math.max(DRIEST, fraction(face) - 0.5 * slope(face));
            double middle = 0.5 * (below + above);
            double suction = (suctionHead[face] - suctionHead[face - 1]) / width;
            double passed = laws.mixedFluxAcross(flux, speed, below, above) + speed * between(below, above) * suction;
            liquid[face] = passed * faceArea[face];
            bubbleSpeed[face] = (flux - passed) / (1 - middle);
        }

        private void overLip() {
            double flux = volume / faceArea[cells];
            double oldest = upperAge(cells - 1);
            double square = laws.squareRadius(oldest, laws.survival(oldest));
            double speed = laws.drainageSpeed(square);
            double inside = Math.max(DRIEST, fraction(cells - 1) + 0.5 * slope(cells - 1));
            double wettest = Math.min(inside, laws.packingFraction());
            double passed =
                    flux <= 0 ? 0 : laws.mixedFlux(flux, speed, laws.fullestBetween(flux, speed, DRIEST, wettest));
            if (column.venting() == Venting.AT_TOP) {
                double age = laws.ageAtTop(oldest, inside, Math.sqrt(square));
                double wet = laws.survival(age) * inside / (1 - inside);
                passed = Math.min(passed, flux * wet / (1 + wet));
            }
            liquid[cells] = Math.max(0, passed) * faceArea[cells];
            bubbleSpeed[cells] = (flux - Math.max(0, passed)) / (1 - inside);
        }

        /**
         * Permeability between two wetnesses such that it times the difference of suction is the flux between them: exact
         * for dry channels, where q goes with e^2 and suction with e^(-1/2), and of second order else.
         */
        private double between(double a, double b) {
            double middle = 0.5 * (a + b);
            double root = Math.sqrt(a * b);
            return laws.permeabilityFlux(middle) * root * (a + root + b) / (3 * middle * middle);
        }

        /** Slope of the liquid fraction within a cell times its width, limited so that no new extreme arises (van Leer). */
        private double slope(int cell) {
            if (cell == 0 || cell == cells - 1) {
                return 0;
            }
            double down = fraction(cell) - fraction(cell - 1);
            double up = fraction(cell + 1) - fraction(cell);
            return down * up > 0 ? 2 * down * up / (down + up) : 0;
        }

        /** Age at a cell's upper face, in a straight line from its neighbours (Fromm). */
        private double upperAge(int cell) {
            double age = state[cells + cell];
            if (cell == 0) {
                return 2 * age;
            }
            double below = state[cells + cell - 1];
            return cell == cells - 1 ? age + 0.5 * (age - below) : age + 0.25 * (state[cells + cell + 1] - below);
        }
    }
}
