package io.github.weirwise.evidence;

import io.github.weirwise.internal.physics.foam.Adsorption;
import io.github.weirwise.internal.physics.foam.BubbleUptake;
import io.github.weirwise.internal.physics.foam.CapillaryProfile;
import io.github.weirwise.internal.physics.foam.DrainageSolutions;
import io.github.weirwise.internal.physics.foam.Enrichment;
import io.github.weirwise.internal.physics.foam.GatheredLoad;
import io.github.weirwise.internal.physics.foam.OsmoticPressure;
import io.github.weirwise.internal.physics.foam.PlateauBorder;
import io.github.weirwise.internal.physics.foam.RisenFoam;

/** Check rows of {@code foam}. */
final class FoamFormulas {
    /** Some sources worked with g = 9.81; the library uses 9.80665. */
    private static final double ROUNDED_GRAVITY = 9.81 / 9.80665;

    private FoamFormulas() {}

    static void addTo(Formulas to) {
        addGeometry(to);
        addDrainage(to);
        addSurfaces(to);
    }

    private static void addGeometry(Formulas to) {
        to.add("PBA", "Plateau borders", row -> PlateauBorder.AREA);
        to.add("PBDE", "Plateau borders", row -> PlateauBorder.FRACTION);
        to.add("PBL", "Plateau borders", row -> PlateauBorder.EDGE_PER_RADIUS);
        to.add("PBK1", "Plateau borders", row -> PlateauBorder.PERMEABILITY);
        to.add("PBM", "Plateau borders", row -> PlateauBorder.RIGID_MOBILITY);
        to.add("REST", "static foam", FoamFormulas::atRest);
        to.add("OSMO", "osmotic pressure", row -> OsmoticPressure.ORDERED.reduced(row.in("phi")));
        to.add("OSMD", "osmotic pressure", row -> OsmoticPressure.DISORDERED.reduced(row.in("phi")));
    }

    private static void addDrainage(Formulas to) {
        to.add(
                "RISEE",
                "rising foam",
                row -> RisenFoam.equilibrium(gasFlux(row), k(row)).liquidFraction());
        to.add(
                "RISEJ",
                "rising foam",
                row -> 1000 * RisenFoam.equilibrium(gasFlux(row), k(row)).liquidFluxMPerS());
        to.add("FRONT", "forced drainage", row -> DrainageSolutions.forcedFrontExponent(row.in("n")));
        to.add("WAVE", "solitary wave", row -> DrainageSolutions.solitaryWave(row.in("v"), row.in("x")));
        to.add("STILL", "foam at rest", row -> DrainageSolutions.atRest(row.in("a0"), row.in("x")));
    }

    private static void addSurfaces(Formulas to) {
        to.add("LANG", "Langmuir load", row -> 1e6 * new Adsorption(2e-6, 20).load(row.in("c")));
        to.add("WT", "diffusion to a surface", row -> GatheredLoad.wardTordaiTime(2e-6, row.in("c"), 6e-11));
        to.add(
                "SHER",
                "transport to a sphere",
                row -> BubbleUptake.transferSpeed(0, 0.001, 1e-6, 6e-11) * 0.001 / 6e-11);
        to.add(
                "ENR",
                "enrichment",
                row -> Enrichment.simpleMode(row.in("c"), row.in("d"), row.in("load"), row.in("eps")));
    }

    private static double atRest(CheckRow row) {
        double radius = row.in("R") / 1000;
        CapillaryProfile foam = new CapillaryProfile(0.072, 1000 * ROUNDED_GRAVITY, radius, row.in("epsc"));
        return foam.liquidFraction(row.in("z") / 1000);
    }

    private static double gasFlux(CheckRow row) {
        return row.in("jg") / 1000;
    }

    private static double k(CheckRow row) {
        double radius = row.in("rb") / 1000;
        return 1000 * 9.81 * radius * radius * row.in("m") / 1e-3;
    }
}
