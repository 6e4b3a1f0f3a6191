package io.github.weirwise.evidence;

import io.github.weirwise.internal.physics.hydraulics.Colebrook;
import io.github.weirwise.internal.physics.hydraulics.Drain;
import io.github.weirwise.internal.physics.hydraulics.FullWidthWeir;
import io.github.weirwise.internal.physics.hydraulics.Orifice;
import io.github.weirwise.internal.physics.hydraulics.Pipe;
import io.github.weirwise.internal.physics.hydraulics.PipeFriction;
import io.github.weirwise.internal.physics.hydraulics.RectangularWeir;
import io.github.weirwise.internal.physics.hydraulics.WeirCoefficient;
import io.github.weirwise.internal.physics.seawater.Seawater;
import io.github.weirwise.setup.Fitting;
import io.github.weirwise.setup.SuddenChange;

/** Check rows of {@code hydraulics}. */
final class HydraulicFormulas {
    private static final double LITRE_PER_HOUR = 1e-3 / 3600;
    private static final double FOOT = 0.3048;
    private static final double INCH = 0.0254;
    private static final double US_GALLON = 3.785411784e-3;
    private static final double US_GRAVITY_FT = 32.174;

    private HydraulicFormulas() {}

    static void addTo(Formulas to) {
        addWeirs(to);
        addPipes(to);
        addCraneExamples(to);
    }

    private static void addWeirs(Formulas to) {
        to.add("KCUS", "weir coefficient", HydraulicFormulas::usCoefficient);
        to.add("KC", "weir discharge", row -> weir(row, 1).discharge(row.in("h")) / LITRE_PER_HOUR);
        to.add("KCHALF", "weir discharge", row -> weir(row, 2).discharge(row.in("h")) / LITRE_PER_HOUR);
        to.add("KCM", "weir discharge", row -> weir(row, 1).discharge(row.in("h")));
        to.add("WINV", "weir head", row -> 1000 * weir(row, 1).head(row.in("Q") * LITRE_PER_HOUR));
        to.add("VILL", "drowned weir", row -> RectangularWeir.drownedFactor(0.05, 0.05 * row.in("ratio")));
        to.add("REHB", "Rehbock's weir", row -> rehbock(row) / LITRE_PER_HOUR);
        to.add("REHBM", "Rehbock's weir", HydraulicFormulas::rehbock);
        to.add("ACKERS", "Ackers' weir", row -> FullWidthWeir.ackers(row.in("b"), row.in("p"), row.in("h")));
        to.add(
                "WHITE",
                "White's weir",
                row -> FullWidthWeir.white(row.in("b"), row.in("p"), row.in("h")) / LITRE_PER_HOUR);
        to.add("FRANCIS", "Francis' weir", row -> FullWidthWeir.francis(row.in("b"), row.in("h")) / LITRE_PER_HOUR);
        to.add("FRANCISUS", "Francis' weir", row -> FullWidthWeir.francis(1, 1) / Math.sqrt(FOOT));
    }

    private static void addPipes(Formulas to) {
        to.add("CHURCH", "pipe friction", row -> PipeFriction.churchill(row.in("Re"), row.in("rough")));
        to.add("COLE", "pipe friction, Colebrook", row -> Colebrook.friction(row.in("Re"), row.in("rough")));
        to.add("ORI", "orifice", row -> Orifice.round(row.in("d"), 0.61).discharge(row.in("h")) / LITRE_PER_HOUR);
        to.add("KIRCH", "orifice", row -> Orifice.SHARP_EDGED);
        to.add("WIDEN", "fittings", row -> SuddenChange.widening(row.in("ratio")));
        to.add("FULL", "full-bore drain", HydraulicFormulas::fullBore);
        to.add("QUIET", "self-venting drain", row -> Drain.selfVenting(row.in("D")) / LITRE_PER_HOUR);
    }

    private static void addCraneExamples(Formulas to) {
        to.add("CRANE719", "full-bore drain", HydraulicFormulas::craneDrain);
        to.add("CRANERE", "pipe friction", row -> craneReynolds());
        to.add("CRANEF", "pipe friction", row -> PipeFriction.churchill(craneReynolds(), 0));
        to.add("CRANEO", "orifice", row -> craneOrifice());
    }

    private static RectangularWeir weir(CheckRow row, double channelOverCrest) {
        return new RectangularWeir(row.in("b"), channelOverCrest * row.in("b"), row.in("p"));
    }

    private static double rehbock(CheckRow row) {
        return FullWidthWeir.rehbock(row.in("b"), row.in("p"), row.in("h"));
    }

    /** Ce in the form Q = C L he^1.5 in feet. */
    private static double usCoefficient(CheckRow row) {
        double share = row.in("bOverB");
        RectangularWeir weir = new RectangularWeir(share, 1, 1);
        return WeirCoefficient.at(weir, row.in("hOverP")) * 2 / 3 * Math.sqrt(2 * US_GRAVITY_FT);
    }

    private static double fullBore(CheckRow row) {
        double losses = Fitting.ENTRANCE_SHARP.lossCoefficient()
                + 2 * Fitting.ELBOW_90.lossCoefficient()
                + Fitting.EXIT.lossCoefficient();
        Pipe pipe = new Pipe(row.in("D"), 1.2, Pipe.SMOOTH_PLASTIC_M, losses);
        return pipe.discharge(row.in("H"), 0.94e-6) / LITRE_PER_HOUR;
    }

    /** Two pipes in a row: the flow at which their losses add up to the head. Mitre bend 60 fT, gate valve 8 fT. */
    private static double craneDrain(CheckRow row) {
        double viscosity = 1.1e-3 / (62.364 * 16.01846);
        double roughness = 0.0018 * INCH;
        double wide = 3.068 * INCH;
        double narrow = 2.067 * INCH;
        Pipe first = new Pipe(wide, 10 * FOOT, roughness, 0.5 + 68 * 0.018);
        Pipe second = new Pipe(narrow, 20 * FOOT, roughness, SuddenChange.narrowing(narrow / wide) + 1);
        double low = 0;
        double high = 1;
        for (int step = 0; step < 60; step++) {
            double middle = 0.5 * (low + high);
            double loss = first.headLoss(middle, viscosity) + second.headLoss(middle, viscosity);
            if (loss < row.in("headFt") * FOOT) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low * 60 / US_GALLON;
    }

    private static double craneReynolds() {
        double bore = 0.0525;
        double speed = 0.2 / 60 / (Math.PI / 4 * bore * bore);
        return speed * bore * Seawater.density(0, 30) / Seawater.viscosity(0, 30);
    }

    /** The hole's own discharge, raised by the speed of approach in the pipe. */
    private static double craneOrifice() {
        double head = 17_000 / (Seawater.density(0, 15) * 9.80665);
        double approach = 1 / Math.sqrt(1 - Math.pow(50 / 73.66, 4));
        return Orifice.round(0.05, Orifice.SHARP_EDGED).discharge(head) * approach * 60_000;
    }
}
