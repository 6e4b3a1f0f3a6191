package io.github.weirwise.evidence;

import io.github.weirwise.internal.physics.bubbles.AirDraw;
import io.github.weirwise.internal.physics.foam.Adsorption;
import io.github.weirwise.report.Range;
import io.github.weirwise.unit.AssumedCoverage;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmateStrength;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyInputs;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleBiFunction;

/** All assumptions of the fast form about one unit at its wanted point. */
final class SensitivityRows {
    private final SensitivityScene base;
    private final List<SensitivityRow> rows = new ArrayList<>();

    private SensitivityRows(SensitivityScene base) {
        this.base = base;
    }

    static List<SensitivityRow> of(SkimmerUnit unit) {
        SensitivityRows all = new SensitivityRows(SensitivityScene.of(unit));
        all.foam();
        all.bubbles();
        all.level();
        all.life();
        all.strength();
        return List.copyOf(all.rows);
    }

    private void foam() {
        double life = base.unit().traits().meanLifeSeconds();
        trait("mean life of a bubble, s", Trait.MEAN_LIFE, 0.9 * life, 1.1 * life);
        trait("spread of lives, alpha", Trait.LIFE_SHAPE, 1.1, 2);
        trait("mobility of the films, m", Trait.FILM_MOBILITY, 0.0016, 0.016);
        trait("drainage exponent n", Trait.DRAINAGE_EXPONENT, 1.5, 2.5);
        trait("bubbles at the lip, mm", Trait.LIP_BUBBLE, 1.6, 3);
        trait("mean liquid fraction of the foam", Trait.FOAM_LIQUID, 0.05, 0.2);
        trait("share of the foam's weight on the water, phi", Trait.WEIGHT_ON_WATER, 0.5, 1);
    }

    private void bubbles() {
        trait("fresh bubbles, mm", Trait.FRESH_BUBBLE, 0.6, 1);
        trait("holdup exponent", Trait.HOLDUP_EXPONENT, 1.75, 2.4);
        trait("share of the flow down through the column", Trait.FEED_SHARE, 0.05, 0.1);
        inputs(
                "rise speed of a bubble, over Schiller-Naumann's",
                "1",
                0.8,
                1.2,
                (in, v) -> new SteadyInputs(
                        in.crestM(),
                        in.flowM3PerS(),
                        in.levelBeyondM(),
                        in.airM3PerS(),
                        v * in.terminalSpeedMPerS(),
                        in.meanLifeS(),
                        in.lifeShape(),
                        in.drainageSpeedMPerS(),
                        in.backPressureHeadM(),
                        in.weightOnWater()));
        air(
                "air-draw curve: suction lost in a clean line, share; line at 0.9 of its opening",
                "share of air is read",
                0.6,
                0.1,
                (settings, loss) -> {
                    AirDraw draw = new AirDraw(1e-4, 0.2, 0.8, loss);
                    return draw.airFlow(1, 0.9, 0.2) / draw.airFlow(1, 1, 0.2);
                });
        air(
                "air-draw curve: depth at which the pump stalls, m; air follows the level",
                "air does not follow",
                0.4,
                1.5,
                (settings, stall) -> {
                    AirDraw draw = new AirDraw(1e-4, 0.2, stall, AirDraw.USUAL_LINE_LOSS);
                    double deeperMm = settings.weirCrestMm() - base.settings().weirCrestMm();
                    return draw.airFlow(1, 1, 0.2 + deeperMm / 1000) / draw.airFlow(1, 1, 0.2);
                });
    }

    private void level() {
        OperatingPoint point = OperatingPoint.of(base.unit(), base.settings());
        Range band = point.headBandMm();
        row(
                "weir formula: head wrong by, mm",
                "0",
                band.low() - point.headMm(),
                band.high() - point.headMm(),
                mm -> base.withSettings(s -> s.withWeirCrestMm(s.weirCrestMm() + mm)));
        row(
                "pressure in the cup, Pa",
                "0",
                20,
                50,
                pa -> base.withSettings(s -> s.withCondition(s.condition().withBackPressurePa(pa))));
        inputs(
                "viscosity, over the source's (its doubt)",
                "1",
                0.985,
                1.015,
                (in, v) -> new SteadyInputs(
                        in.crestM(),
                        in.flowM3PerS(),
                        in.levelBeyondM(),
                        in.airM3PerS(),
                        // Between creeping and swift the speed of such bubbles goes with about the square root of the
                        // viscosity.
                        in.terminalSpeedMPerS() / Math.sqrt(v),
                        in.meanLifeS(),
                        in.lifeShape(),
                        in.drainageSpeedMPerS() / v,
                        in.backPressureHeadM(),
                        in.weightOnWater()));
        row(
                "salinity (bubbles, life, water together)",
                "35",
                30,
                38,
                v -> base.withSettings(s -> s.withPracticalSalinity(v)));
        row(
                "temperature, C (water only; life of foam is not known)",
                "25",
                22,
                28,
                v -> base.withSettings(s -> s.withWaterCelsius(v)));
    }

    private void life() {
        life("answer of the life to load: exponent; load doubled", "0.15", 0.05, 0.3, v -> Math.pow(2, v));
        life("answer to salt: exponent; salinity 30", "0.2", 0.5, 0.05, v -> Math.pow(30.0 / 35, v));
        life("answer to a thick film in the neck: share lost", "0.25", 0.4, 0.1, v -> 1 - v);
        life("answer to the worst oil: share lost; a tenth of it", "0.6", 0.9, 0.3, v -> 1 - 0.1 * v);
        life("answer to a foaming agent: share gained; a tenth of it", "0.5", 0.2, 1, v -> 1 + 0.1 * v);
    }

    private void strength() {
        double load = base.settings().condition().skimmableMgPerLitre() / 1000;
        Adsorption used = AssumedCoverage.adsorption();
        double fullMg = used.saturationKgPerM2() * 1e6;
        double half = 1000 / used.affinityM3PerKg();
        double share = SkimmateStrength.COLLECTED_SHARE;
        double colour = SkimmateStrength.ABSORPTION_M2_PER_G;
        excess("full surface load, mg/m2", fullMg, 1.5, 3, v -> v / fullMg);
        excess(
                "organics at half the surface load, mg/L",
                half,
                50,
                1,
                v -> new Adsorption(used.saturationKgPerM2(), 1000 / v).load(load) / used.load(load));
        excess("share of that load which a bubble gathers", share, 0.1, 1, v -> v / share);
        excess("absorption of organics at 440 nm, m2/g", colour, 0.2, 0.8, v -> v / colour);
    }

    private void trait(String what, Trait trait, double low, double high) {
        String used = SensitivityRow.plain(trait.of(base.unit().traits()));
        row(what, used, low, high, v -> base.withTraits(traits -> trait.set(traits, v)));
    }

    private void inputs(String what, String used, double low, double high, ChangedInputs change) {
        row(what, used, low, high, v -> base.withInputs((settings, in) -> change.of(in, v)));
    }

    /** Air multiplied by what the settings and the value say. */
    private void air(String what, String used, double low, double high, ToDoubleBiFunction<Settings, Double> share) {
        row(
                what,
                used,
                low,
                high,
                v -> base.withInputs(
                        (settings, in) -> in.withAirM3PerS(in.airM3PerS() * share.applyAsDouble(settings, v))));
    }

    /** Mean life multiplied by what the value says. */
    private void life(String what, String used, double low, double high, DoubleUnaryOperator factor) {
        row(
                what,
                used,
                low,
                high,
                v -> base.withInputs((settings, in) -> in.withMeanLifeS(in.meanLifeS() * factor.applyAsDouble(v))));
    }

    /** What the bubbles carry, and so the darkness, multiplied by what the value says. */
    private void excess(String what, double used, double low, double high, DoubleUnaryOperator factor) {
        row(what, SensitivityRow.plain(used), low, high, v -> base.withExcess(factor.applyAsDouble(v)));
    }

    private void row(String what, String used, double low, double high, DoubleFunction<SensitivityScene> scene) {
        rows.add(new SensitivityRow(what, used, low, high, scene));
    }

    private interface ChangedInputs {
        SteadyInputs of(SteadyInputs inputs, double value);
    }
}
