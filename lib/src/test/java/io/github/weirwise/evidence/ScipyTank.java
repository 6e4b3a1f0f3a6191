package io.github.weirwise.evidence;

import io.github.weirwise.internal.physics.seawater.Seawater;
import io.github.weirwise.tank.Evaporation;
import io.github.weirwise.tank.Feeding;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankEvent;
import io.github.weirwise.tank.TankParameter;
import io.github.weirwise.tank.TankPart;
import io.github.weirwise.tank.TankPlan;
import io.github.weirwise.tank.TankProcess;
import io.github.weirwise.tank.TankSimulator;
import io.github.weirwise.tank.TankStart;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmateStrength;
import io.github.weirwise.unit.SkimmerUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The tank-year of {@link TankYear}, written out for the tank in SciPy, and how far the two end apart. */
final class ScipyTank {
    /** Processes that the tank in SciPy does not know. */
    private static final TankProcess[] LEFT_OUT = {
        TankProcess.OXYGEN, TankProcess.BREAK_IN, TankProcess.DAY_SWING, TankProcess.LOAD_NOISE
    };

    private static final Set<TankPart> VESSELS = Set.of(TankPart.CUP, TankPart.CONTAINER, TankPart.RESERVOIR);
    private static final double SECONDS = 6;
    private static final double SAME = 0.01;

    /** Where a year ends: litres of skimmate, grams of nitrate nitrogen. */
    record End(double skimmateLitres, double nitrateG) {}

    private record Line(double hours, String kind, double amount) {}

    private final Path folder;
    private final TankPlan plan;
    private final Settings settings;
    private final List<TankEvent> upkeep;
    private Optional<End> theirs = Optional.empty();

    ScipyTank(Path folder) {
        this.folder = folder;
        TankPlan whole = TankScenes.plan(FirstRoundUnits.small());
        plan = whole.withParameters(whole.parameters().without(LEFT_OUT));
        settings = TankScenes.onTarget(plan.unit());
        upkeep = TankScenes.usualYear(plan);
    }

    /** Nanoseconds of the quickest year; empty where SciPy is not installed. */
    Optional<Double> run() throws IOException, InterruptedException {
        Optional<OtherLanguage> scipy = OtherLanguage.python("tank_year", "scipy");
        if (scipy.isEmpty()) {
            return Optional.empty();
        }
        Path file = folder.resolve("tank.txt");
        Files.writeString(file, described());
        Map<String, OtherLanguage.Time> said = scipy.get().run(file, SECONDS);
        OtherLanguage.Time end = said.get("end");
        theirs = Optional.of(new End(end.quickest(), end.average()));
        End ours = ours();
        double apart = Math.max(
                Math.abs(theirs.get().skimmateLitres / ours.skimmateLitres - 1),
                Math.abs(theirs.get().nitrateG / ours.nitrateG - 1));
        if (!(apart <= SAME)) {
            throw new IllegalStateException("the tank in SciPy is another tank: " + theirs.get() + " against " + ours);
        }
        return Optional.of(said.get("year").quickest());
    }

    /** Our end of the same year, with what the other leaves out left out. */
    End ours() {
        TankState end =
                new TankSimulator(plan).advance(TankStart.mature(plan, settings), TankScenes.YEAR_HOURS, upkeep);
        return new End(end.of(Stock.SKIMMATE_ML) / 1000, end.of(Stock.NITRATE_G));
    }

    /** What the two agree on, in words; empty where SciPy is not installed. */
    String compared() {
        return theirs.map(end -> {
                    End ours = ours();
                    return String.format(
                            Locale.ROOT,
                            "Both tanks end alike: %.2f and %.2f L of skimmate in the year, %.3f and %.3f g of nitrate nitrogen at its end.",
                            end.skimmateLitres,
                            ours.skimmateLitres,
                            end.nitrateG,
                            ours.nitrateG);
                })
                .orElse("");
    }

    private String described() {
        StringBuilder text = new StringBuilder();
        for (TankParameter parameter : TankParameter.values()) {
            put(text, parameter.name(), plan.parameters().value(parameter));
        }
        unit(text);
        tank(text);
        for (Line line : lines()) {
            text.append(String.format(Locale.ROOT, "event %s %s %s%n", line.hours, line.kind, line.amount));
        }
        return text.toString();
    }

    private void unit(StringBuilder text) {
        SkimmerUnit unit = plan.unit();
        put(text, "boreMm", unit.column().boreMm());
        put(text, "openingMm", unit.column().openingMm());
        put(text, "funnelBaseMm", unit.column().funnelBaseMm());
        put(text, "funnelHeightMm", unit.column().funnelHeightMm());
        put(text, "neckBoreMm", unit.column().neckBoreMm());
        put(text, "neckHeightMm", unit.column().neckHeightMm());
        put(text, "weirMm", unit.weir().widthMm());
        put(text, "meanLifeSeconds", unit.traits().meanLifeSeconds());
        put(text, "lifeShape", unit.traits().lifeShape());
        put(text, "freshBubbleMm", unit.traits().freshBubbleMm());
        put(text, "lipBubbleMm", unit.traits().lipBubbleMm());
        put(text, "mobility", unit.traits().filmMobility());
        put(text, "foamLiquid", unit.traits().meanFoamLiquidFraction());
        put(text, "collectedShare", SkimmateStrength.COLLECTED_SHARE);
        put(text, "targetMlPerDay", unit.target().skimmateMlPerDay());
        put(text, "crestMm", settings.weirCrestMm());
        put(text, "flowLitresPerHour", settings.flowLitresPerHour());
        put(text, "airLitresPerHour", settings.airLitresPerHour());
    }

    private void tank(StringBuilder text) {
        double celsius = settings.waterCelsius();
        put(text, "celsius", celsius);
        put(text, "litres", plan.body().runningLitres());
        put(text, "heldLitres", plan.body().heldLitres());
        put(text, "sumpLitres", plan.body().sumpLitres());
        put(text, "mediaM2", plan.biofilter().mediaM2());
        put(text, "drownedShare", plan.biofilter().drownedShare());
        put(text, "padM2", plan.biofilter().padM2());
        put(text, "padLevelMm", plan.biofilter().padLevelMm());
        put(text, "bypassLevelMm", plan.biofilter().bypassLevelMm());
        put(text, "proteinShare", Feeding.PROTEIN_SHARE);
        put(text, "oxygenMgPerLitre", TankStart.mature(plan, settings).of(Stock.OXYGEN_MG_PER_LITRE));
        put(text, "topOffKgPerLitre", Seawater.density(0, celsius) / 1000);
        double fresh = evaporation(0, celsius) / 24;
        put(text, "freshKgPerHour", fresh);
        put(text, "lessKgPerHourPerSalinity", (fresh - evaporation(35, celsius) / 24) / 35);
    }

    private double evaporation(double salinity, double celsius) {
        return plan.body().surfaceM2()
                        * Evaporation.ashraeKgPerM2Day(
                                celsius,
                                salinity,
                                22,
                                0.5,
                                0,
                                plan.parameters().value(TankParameter.EVAPORATION_FACTOR))
                + plan.parameters().value(TankParameter.TOWER_EVAPORATION_KG_PER_DAY);
    }

    private static void put(StringBuilder text, String name, double value) {
        text.append(name).append(' ').append(value).append('\n');
    }

    /** Meals and upkeep in their order; at one hour meals come first. */
    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        for (double at = plan.feeding().nextMealAfter(0);
                at < TankScenes.YEAR_HOURS;
                at = plan.feeding().nextMealAfter(at)) {
            lines.add(new Line(at, "MEAL", plan.feeding().mealGrams(at)));
        }
        for (TankEvent event : upkeep) {
            if (event instanceof TankEvent.WaterChanged change) {
                lines.add(new Line(event.atHours(), "WATER", change.litres()));
            } else if (event instanceof TankEvent.Serviced service && !VESSELS.contains(service.part())) {
                lines.add(new Line(event.atHours(), service.part().name(), 0));
            }
        }
        lines.sort(Comparator.comparingDouble(Line::hours));
        return lines;
    }
}
