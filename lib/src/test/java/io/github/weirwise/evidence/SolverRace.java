package io.github.weirwise.evidence;

import io.github.weirwise.internal.physics.bubbles.GasHoldup;
import io.github.weirwise.internal.physics.bubbles.RivalHoldup;
import io.github.weirwise.internal.physics.foam.RisenFoam;
import io.github.weirwise.internal.physics.foam.RisingFoam;
import io.github.weirwise.internal.physics.hydraulics.RectangularWeir;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.DoubleSupplier;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** The steady law's four roots by their own Newton's methods and by Hipparchus' general solver, on the same equations. */
final class SolverRace {
    private static final int POINTS = 2000;
    private static final double TOLERANCE = 1e-12;
    private static final double SAME = 1e-8;

    private final SplittableRandom random = new SplittableRandom(5);

    /**
     * One kind of root.
     *
     * @param name what is found
     * @param ours nanoseconds a root
     * @param theirs nanoseconds a root by the general solver
     */
    record Lap(String name, double ours, double theirs) {
        double ratio() {
            return theirs / ours;
        }
    }

    /** One equation, solved both ways. */
    private record Task(DoubleSupplier ours, DoubleSupplier theirs) {}

    static List<Lap> run() {
        SolverRace race = new SolverRace();
        return List.of(
                race.lap("head of a weir", race::weir),
                race.lap("head of a drowned weir", race::drowned),
                race.lap("holdup, any exponent", race::holdup),
                race.lap("wetness of rising foam, any exponent", race::foam));
    }

    static String table(List<Lap> laps) {
        StringBuilder text = new StringBuilder("""

                ## Roots against a general solver

                The equations inside the steady law, each by its own Newton's method and by Hipparchus' bracketing Brent solver (fifth order, relative \
                tolerance 1e-12), medians over 2000 points. The law is quick because its roots are found from the side that cannot overshoot.

                | root | ns | Hipparchus, ns | ours is quicker by |
                |---|---|---|---|
                """);
        laps.forEach(lap -> text.append(String.format(
                Locale.ROOT, "| %s | %.0f | %.0f | %.1f |%n", lap.name, lap.ours, lap.theirs, lap.ratio())));
        return text.toString();
    }

    private interface Draw {
        Task next();
    }

    private Lap lap(String name, Draw draw) {
        List<Task> tasks = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            Task task = draw.next();
            double ours = task.ours.getAsDouble();
            if (Math.abs(ours - task.theirs.getAsDouble()) > SAME * Math.abs(ours)) {
                throw new IllegalStateException(name + ": the two solvers find other roots");
            }
            tasks.add(task);
        }
        double ours = Bench.medianMs(() -> sum(tasks, true), 30, 31);
        double theirs = Bench.medianMs(() -> sum(tasks, false), 10, 15);
        return new Lap(name, 1e6 * ours / POINTS, 1e6 * theirs / POINTS);
    }

    private static Double sum(List<Task> tasks, boolean ours) {
        double sum = 0;
        for (Task task : tasks) {
            sum += (ours ? task.ours : task.theirs).getAsDouble();
        }
        return sum;
    }

    private Task weir() {
        RectangularWeir weir = new RectangularWeir(random.nextDouble(0.06, 0.3), 0.3, random.nextDouble(0.1, 0.3));
        double q = random.nextDouble(2e-4, 1.5e-3);
        return new Task(() -> weir.head(q), () -> root(h -> weir.discharge(h) - q, 1e-9, 1));
    }

    private Task drowned() {
        RectangularWeir weir = new RectangularWeir(random.nextDouble(0.06, 0.3), 0.3, random.nextDouble(0.1, 0.3));
        double q = random.nextDouble(2e-4, 1.5e-3);
        double down = random.nextDouble(0.002, 0.03);
        return new Task(
                () -> weir.drownedHead(q, down),
                () -> root(h -> weir.discharge(h) * RectangularWeir.drownedFactor(h, down) - q, down, 1));
    }

    private Task holdup() {
        double u = random.nextDouble(0.05, 0.15);
        double n = random.nextDouble(1.6, 3);
        double down = 0.05 * u;
        double gas = RivalHoldup.floodingGasFlux(-down, u, n) * random.nextDouble(0.05, 0.6);
        UnivariateFunction balance = e -> u * e * Math.pow(1 - e, n) - gas * (1 - e) - down * e;
        // The greatest flux lies under 1/n, and the lower root well below it at these fluxes.
        double top = greatest(e -> balance.value(e), 1 / n);
        return new Task(() -> GasHoldup.richardsonZaki(gas, -down, u, n), () -> root(balance, 0, top));
    }

    /** Some place, going down from an end, at which a function is above 0. */
    private static double greatest(UnivariateFunction f, double end) {
        double at = end;
        while (f.value(at) <= 0 && at > 1e-6) {
            at *= 0.98;
        }
        return at;
    }

    private Task foam() {
        double n = random.nextDouble(1.6, 2.6);
        double k = Math.exp(random.nextDouble(-6, -1));
        double gas = RisenFoam.floodingGasFlux(k, n) * random.nextDouble(0.005, 0.6);
        UnivariateFunction slope = e -> gas / ((1 - e) * (1 - e)) - n * k * Math.pow(e, n - 1);
        return new Task(() -> RisingFoam.liquidFraction(gas, k, n), () -> root(slope, 0, (n - 1) / (n + 1)));
    }

    private static double root(UnivariateFunction f, double low, double high) {
        return new BracketingNthOrderBrentSolver(TOLERANCE, 1e-16, 5).solve(10_000, f, low, high);
    }
}
