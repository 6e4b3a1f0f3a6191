package io.github.weirwise.lab;

import io.github.weirwise.unit.ColumnAssumptions;
import io.github.weirwise.unit.ColumnDetail;
import io.github.weirwise.unit.FoamTraits;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.ReferenceColumn;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.WeirSetting;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.hipparchus.exception.MathIllegalArgumentException;

/**
 * Command {@code column-table}: solves the full foam column for the laboratory's shapes and writes the table that truth "column"
 * interpolates, so that the truth itself shares no code with the library.
 */
public final class ColumnTableMaker {
    /** Where the table lies, from the project's root. */
    public static final Path FILE = Path.of("lib/src/test/resources/io/github/weirwise/lab/truth/column.csv");

    private static final double[] LIFE_SHAPES = {1.06, 1.15};
    private static final double[] AIR = {0.3, 0.45, 0.6, 0.75, 0.9, 1.05};
    private static final double[] LIFE = {0.5, 0.65, 0.8, 0.9, 1.0, 1.1, 1.25, 1.5, 2.0};
    private static final double[] RISE_MM = {-40, -30, -22, -16, -10, -5, 0, 5, 10, 16, 22, 30, 40, 55};
    private static final double LEAST = 1e-4;
    private static final double MOST_LOG = 4.5;

    private ColumnTableMaker() {}

    /** Writes the table; prints how many points were solved. */
    public static void run() throws Exception {
        long start = System.nanoTime();
        ExecutorService workers = Executors.newFixedThreadPool(2, work -> {
            Thread worker = new Thread(work);
            worker.setDaemon(true);
            return worker;
        });
        List<Callable<String>> jobs = new ArrayList<>();
        for (SkimmerUnit unit : LabUnits.ALL) {
            for (double shape : LIFE_SHAPES) {
                SkimmerUnit fitted = fitted(unit, shape);
                for (double air : AIR) {
                    for (double life : LIFE) {
                        jobs.add(() -> row(fitted, shape, air, life));
                    }
                }
            }
        }
        StringBuilder text = new StringBuilder(
                "# full foam column (evidence command column-table):"
                        + " shape,lifeShape,air share,life share, then log(amount/wanted) and level mm by mm of outside water over the rated\n");
        text.append("rise");
        for (double rise : RISE_MM) {
            text.append(String.format(Locale.ROOT, ",%.0f", rise));
        }
        text.append('\n');
        for (var each : workers.invokeAll(jobs)) {
            text.append(each.get());
        }
        workers.shutdown();
        Files.createDirectories(FILE.getParent());
        Files.writeString(FILE, text);
        System.out.printf(
                Locale.ROOT,
                "result: points=%d seconds=%.1f%n",
                jobs.size() * RISE_MM.length,
                (System.nanoTime() - start) / 1e9);
    }

    /** The full column; its sketch where the march of the full one gives up. */
    private static ReferenceColumn solved(SkimmerUnit unit, Settings settings) {
        try {
            return ReferenceColumn.of(unit, settings);
        } catch (MathIllegalArgumentException gaveUp) {
            return ReferenceColumn.of(unit, settings, ColumnAssumptions.DEFAULT.withDetail(ColumnDetail.SKETCH));
        }
    }

    private static double ratedCrest(SkimmerUnit unit) {
        return WeirSetting.crestForSubmergence(
                        unit,
                        unit.ratedSettings(unit.weir().lowestCrestMm()),
                        unit.target().submergenceMm())
                .orElseThrow();
    }

    /** Scaled so that the column gives the wanted amount at the wanted level. */
    private static SkimmerUnit fitted(SkimmerUnit unit, double shape) {
        FoamTraits traits = unit.traits().withLifeShape(shape);
        Settings rated = unit.ratedSettings(ratedCrest(unit));
        double low = 2;
        double high = 200;
        for (int i = 0; i < 25; i++) {
            double middle = Math.sqrt(low * high);
            SkimmerUnit each = unit.withTraits(traits.withMeanLifeSeconds(middle));
            if (solved(each, rated).skimmateMlPerDay() < unit.target().skimmateMlPerDay()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return unit.withTraits(traits.withMeanLifeSeconds(Math.sqrt(low * high)));
    }

    private static String row(SkimmerUnit unit, double shape, double air, double life) {
        SkimmerUnit each =
                unit.withTraits(unit.traits().withMeanLifeSeconds(unit.traits().meanLifeSeconds() * life));
        double rated = ratedCrest(unit);
        double outside = OperatingPoint.of(unit, unit.ratedSettings(rated)).clearLevelMm();
        StringBuilder logs = new StringBuilder();
        StringBuilder levels = new StringBuilder();
        for (double rise : RISE_MM) {
            double crest = rated + rise;
            for (int i = 0; i < 3; i++) {
                crest += outside
                        + rise
                        - OperatingPoint.of(unit, unit.ratedSettings(crest)).clearLevelMm();
            }
            Settings settings = unit.ratedSettings(crest).withAirLitresPerHour(unit.ratedAirLitresPerHour() * air);
            ReferenceColumn column = solved(each, settings);
            double amount = column.skimmateMlPerDay() / unit.target().skimmateMlPerDay();
            double log = column.flooded() ? MOST_LOG : Math.min(MOST_LOG, Math.log(Math.max(LEAST, amount)));
            logs.append(String.format(Locale.ROOT, ",%.2f", log));
            levels.append(String.format(Locale.ROOT, ",%.1f", column.submergenceMm()));
        }
        return String.format(
                Locale.ROOT,
                "%s,%.2f,%.2f,%.2f%s%s%n",
                unit.name().replace("lab ", ""),
                shape,
                air,
                life,
                logs,
                levels);
    }
}
