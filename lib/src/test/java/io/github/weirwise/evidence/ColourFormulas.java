package io.github.weirwise.evidence;

import io.github.weirwise.internal.physics.colour.Chromaticity;
import io.github.weirwise.internal.physics.colour.CieFunctions;
import io.github.weirwise.internal.physics.colour.CieFunctions.Observer;
import io.github.weirwise.internal.physics.colour.DissolvedColour;
import io.github.weirwise.internal.physics.colour.PlatinumCobalt;
import io.github.weirwise.internal.physics.colour.Srgb;
import io.github.weirwise.internal.physics.colour.Tristimulus;

/** Check rows of {@code colour}. */
final class ColourFormulas {
    private ColourFormulas() {}

    static void addTo(Formulas to) {
        addTables(to);
        addScreen(to);
        addWater(to);
    }

    private static void addTables(Formulas to) {
        for (Observer function : Observer.values()) {
            to.add("CMF" + function, "observer functions", row -> CieFunctions.observer(function, row.in("nm")));
        }
        to.add("D65P", "daylight", row -> CieFunctions.daylight(row.in("nm")));
        to.add("LOCUSX", "chromaticity", row -> Chromaticity.x(spectral(row)));
        to.add("LOCUSY", "chromaticity", row -> Chromaticity.y(spectral(row)));
        to.add("WHITEX", "chromaticity", row -> Chromaticity.x(Chromaticity.daylight()));
        to.add("WHITEY", "chromaticity", row -> Chromaticity.y(Chromaticity.daylight()));
        to.add("D65X", "tristimulus values", row -> Chromaticity.daylight().x());
        to.add("D65Z", "tristimulus values", row -> Chromaticity.daylight().z());
    }

    private static void addScreen(Formulas to) {
        to.add("PRIMX", "sRGB", row -> primary(row).x() / 100);
        to.add("PRIMY", "sRGB", row -> primary(row).y() / 100);
        to.add("PRIMZ", "sRGB", row -> primary(row).z() / 100);
        to.add("DEC", "sRGB", row -> Chromaticity.decode(row.in("v")));
        to.add("ENC", "sRGB", row -> Srgb.encode(row.in("v")));
    }

    private static void addWater(Formulas to) {
        to.add("CDOMX", "coloured water", row -> through(row).x());
        to.add("CDOMY", "coloured water", row -> through(row).y());
        to.add("CDOMZ", "coloured water", row -> through(row).z());
        to.add("CDOMR", "coloured water", row -> Srgb.of(through(row)).red());
        to.add("CDOMG", "coloured water", row -> Srgb.of(through(row)).green());
        to.add("CDOMB", "coloured water", row -> Srgb.of(through(row)).blue());
        to.add("CDOMA", "absorption law", row -> new DissolvedColour(1, 0.0176).absorption(row.in("nm")));
        to.add("PTCOABS", "platinum-cobalt", row -> PlatinumCobalt.toAbsorption(row.in("ptco")));
    }

    private static Tristimulus spectral(CheckRow row) {
        double nm = row.in("nm");
        return new Tristimulus(
                CieFunctions.observer(Observer.X, nm),
                CieFunctions.observer(Observer.Y, nm),
                CieFunctions.observer(Observer.Z, nm));
    }

    private static Tristimulus primary(CheckRow row) {
        return Chromaticity.tristimulus(new Srgb((int) row.in("r"), (int) row.in("g"), (int) row.in("b"), false));
    }

    private static Tristimulus through(CheckRow row) {
        return new DissolvedColour(row.in("a440"), row.in("slope")).through(row.in("L"));
    }
}
