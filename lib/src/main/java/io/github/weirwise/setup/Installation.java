package io.github.weirwise.setup;

import io.github.weirwise.internal.physics.seawater.Seawater;
import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Require;
import io.github.weirwise.report.Unit;
import java.util.Objects;
import java.util.Optional;

/**
 * A tank with overflow, drain, filter, return pump and all that goes with them, as measured before the first filling.
 *
 * @param name what its keeper calls it
 * @param tank the tank
 * @param overflow its overflow
 * @param drainage from overflow to skimmer chamber
 * @param filter the filter with the skimmer
 * @param extraSump a second vessel at the same level, if there is one
 * @param pump curve of the return pump
 * @param returnLine from pump to tank
 * @param hose where the skimmate goes
 * @param topOffReservoirLitres fresh water that an automatic top-off could pour in by itself, 0 (none) to 10000 L
 * @param stand what it stands on
 * @param waterCelsius water temperature, 5 to 40 C
 * @param practicalSalinity practical salinity, 0 to 42
 */
public record Installation(
        String name,
        DisplayTank tank,
        Overflow overflow,
        Drainage drainage,
        FilterBody filter,
        Optional<ExtraSump> extraSump,
        PumpCurve pump,
        ReturnLine returnLine,
        SkimmateHose hose,
        double topOffReservoirLitres,
        Stand stand,
        double waterCelsius,
        double practicalSalinity) {
    private static final Limit TOP_OFF_RESERVOIR_LITRES =
            Limit.of("topOffReservoirLitres", 0, 10000, Unit.LITRE, "setup.try.give0IfThere");
    private static final Limit WATER_CELSIUS =
            Limit.of("waterCelsius", 5, 40, Unit.CELSIUS, "setup.try.giveTheWaterTemperature");
    private static final Limit PRACTICAL_SALINITY =
            Limit.of("practicalSalinity", 0, 42, Unit.SALINITY, "setup.try.givePracticalSalinityNot");

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     * @throws IllegalArgumentException if the name is blank
     */
    public Installation {
        Require.text("name", name);
        Objects.requireNonNull(tank, "tank");
        Objects.requireNonNull(overflow, "overflow");
        Objects.requireNonNull(drainage, "drainage");
        Objects.requireNonNull(filter, "filter");
        Objects.requireNonNull(extraSump, "extraSump");
        Objects.requireNonNull(pump, "pump");
        Objects.requireNonNull(returnLine, "returnLine");
        Objects.requireNonNull(hose, "hose");
        TOP_OFF_RESERVOIR_LITRES.check(topOffReservoirLitres);
        Objects.requireNonNull(stand, "stand");
        WATER_CELSIUS.check(waterCelsius);
        PRACTICAL_SALINITY.check(practicalSalinity);
    }

    /** Density of the water, kg/m3 (EOS-80). */
    double density() {
        return Seawater.density(practicalSalinity, waterCelsius);
    }

    /** Kinematic viscosity of the water, m2/s. */
    double kinematicViscosity() {
        return Seawater.viscosity(practicalSalinity, waterCelsius) / density();
    }
}
