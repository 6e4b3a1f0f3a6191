package io.github.weirwise.unit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Signs of the answer to temperature and salt against continuous foam fractionation of three surfactants: Kumpabooth et al. 1999,
 * Sep. Sci. Technol. 34(2):157-172, abstract read, authors recalled. Warmer: more foam, more enrichment, drier, less recovered. More
 * salt: more foam, wetter, more recovered, less enriched.
 */
class PublishedSignsTest {
    static java.util.List<SkimmerUnit> units() {
        return LanternQuay.units();
    }

    private static OperatingPoint at(SkimmerUnit unit, double celsius, double salinity) {
        Settings settings = unit.ratedSettings(unit.weir().lowestCrestMm())
                .withWaterCelsius(celsius)
                .withPracticalSalinity(salinity);
        double wantedMm = unit.target().submergenceMm();
        double crest = WeirSetting.crestForSubmergence(unit, settings, wantedMm).orElseThrow();
        return OperatingPoint.of(unit, settings.withWeirCrestMm(crest));
    }

    @ParameterizedTest
    @MethodSource("units")
    void warmerFoamIsDrierAndRicher(SkimmerUnit unit) {
        OperatingPoint cool = at(unit, 20, 35);
        OperatingPoint warm = at(unit, 30, 35);
        assertThat(warm.liquidFractionAtLip()).isLessThan(cool.liquidFractionAtLip());
        assertThat(warm.strengthMgPerLitre()).isGreaterThan(cool.strengthMgPerLitre());
        assertThat(warm.skimmateMlPerDay()).isLessThan(cool.skimmateMlPerDay());
    }

    /** A miss: no published law of how long foam lives in warmer sea water was found, so the flow of foam stays as it is. */
    @ParameterizedTest
    @MethodSource("units")
    void warmerFoamFlowsNoFasterHereWhichIsAMiss(SkimmerUnit unit) {
        double cool = at(unit, 20, 35).foamCreepMmPerMin();
        assertThat(at(unit, 30, 35).foamCreepMmPerMin() / cool).isBetween(0.98, 1.02);
    }

    @ParameterizedTest
    @MethodSource("units")
    void saltierFoamIsMoreAndWetterAndLessRich(SkimmerUnit unit) {
        OperatingPoint fresher = at(unit, 25, 28);
        OperatingPoint saltier = at(unit, 25, 36);
        assertThat(saltier.foamCreepMmPerMin()).isGreaterThan(fresher.foamCreepMmPerMin());
        assertThat(saltier.liquidFractionAtLip()).isGreaterThan(fresher.liquidFractionAtLip());
        assertThat(saltier.skimmateMlPerDay()).isGreaterThan(fresher.skimmateMlPerDay());
        assertThat(saltier.strengthMgPerLitre()).isLessThan(fresher.strengthMgPerLitre());
    }
}
