package io.github.weirwise.evidence;

import io.github.weirwise.internal.physics.seawater.MoreSeawater;
import io.github.weirwise.internal.physics.seawater.RefractiveIndex;
import io.github.weirwise.internal.physics.seawater.Seawater;
import io.github.weirwise.internal.physics.seawater.SpecificGravity;

/** Check rows of {@code seawater}. */
final class WaterFormulas {
    private static final double MOLAR_VOLUME_CM3 = 22391.6e-6;

    private WaterFormulas() {}

    static void addTo(Formulas to) {
        to.add("RHO", "density", WaterFormulas::density);
        to.add("RHO68", "density", WaterFormulas::density);
        to.add("MU", "viscosity", row -> 1000 * Seawater.viscosity(row.in("S"), row.celsius()));
        to.add("NU", "viscosity", row -> 1e6 * Seawater.viscosity(row.in("S"), row.celsius()) / density(row));
        to.add("SIG", "surface tension", row -> 1000 * MoreSeawater.surfaceTension(row.in("S"), row.celsius()));
        to.add("CAP", "capillary length", row -> 1000 * MoreSeawater.capillaryLength(row.in("S"), row.celsius()));
        to.add("O2", "oxygen", WaterFormulas::oxygen);
        to.add("O2MG", "oxygen", row -> 1000 * MoreSeawater.oxygenSolubilityKgPerM3(row.in("S"), row.celsius()));
        // The ideal-gas-corrected molar volume of oxygen at 0 degrees turns umol/kg into cm3 of gas per dm3 of water.
        to.add("O2CM3", "oxygen", row -> oxygen(row) * MOLAR_VOLUME_CM3 * density(row) / 1000);
        to.add("ION", "ionic strength", row -> MoreSeawater.ionicStrength(row.in("S")));
        to.add("SG25", "specific gravity", row -> SpecificGravity.AT_25_25.of(row.in("S")));
        to.add("SG20", "specific gravity", row -> SpecificGravity.AT_20_20.of(row.in("S")));
        to.add("SG60F", "specific gravity", row -> SpecificGravity.AT_60F_60F.of(row.in("S")));
        to.add(
                "SG25TO4",
                "specific gravity",
                row -> SpecificGravity.AT_25_25.of(row.in("S")) - SpecificGravity.AT_25_4.of(row.in("S")));
        to.add("SAL25", "salinity by specific gravity", row -> SpecificGravity.AT_25_25.salinity(row.in("sg")));
        to.add("SAL20", "salinity by specific gravity", row -> SpecificGravity.AT_20_20.salinity(row.in("sg")));
        to.add("RI", "refractive index", row -> RefractiveIndex.of(row.in("S"), row.celsius(), row.in("nm")));
    }

    private static double density(CheckRow row) {
        return Seawater.density(row.in("S"), row.celsius());
    }

    private static double oxygen(CheckRow row) {
        return Seawater.oxygenSolubility(row.in("S"), row.celsius());
    }
}
