package io.github.weirwise.evidence;

import io.github.weirwise.evidence.Referee.Worst;
import io.github.weirwise.internal.physics.bubbles.GasHoldup;
import io.github.weirwise.internal.physics.bubbles.RivalHoldup;
import io.github.weirwise.internal.physics.bubbles.TerminalSpeed;
import io.github.weirwise.internal.physics.foam.Adsorption;
import io.github.weirwise.internal.physics.foam.FoamLife;
import io.github.weirwise.internal.physics.foam.GatheredLoad;
import io.github.weirwise.internal.physics.foam.RisenFoam;
import io.github.weirwise.internal.physics.foam.RisingFoam;
import io.github.weirwise.internal.physics.hydraulics.Colebrook;
import io.github.weirwise.internal.physics.hydraulics.Pipe;
import io.github.weirwise.internal.physics.hydraulics.RectangularWeir;
import io.github.weirwise.internal.physics.hydraulics.Slot;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/** The closed forms and root finders of the physics floor against the same laws solved by Hipparchus' general tools. */
final class NumericsReferee {
    private static final double GRAVITY = 9.80665;

    private final SplittableRandom random;
    private final Map<String, Worst> worst = new TreeMap<>();

    private NumericsReferee(long seed) {
        this.random = new SplittableRandom(seed);
    }

    static Map<String, Worst> compare(int pointsEach, long seed) {
        NumericsReferee referee = new NumericsReferee(seed);
        for (int i = 0; i < pointsEach; i++) {
            referee.weir();
            referee.slot();
            referee.pipes();
            referee.bubble();
            referee.column();
            referee.risingFoam();
            referee.foamLife();
            referee.uptake();
        }
        return referee.worst;
    }

    private void weir() {
        double width = random.nextDouble(0.04, 0.3);
        RectangularWeir weir =
                new RectangularWeir(width, width * random.nextDouble(1, 3), random.nextDouble(0.05, 0.4));
        double q = random.nextDouble(2e-4, 2e-3);
        add("weir head", weir.head(q), root(h -> weir.discharge(h) - q, 1e-9, 2));
        double down = random.nextDouble(0.001, 0.05);
        double drowned =
                root(h -> weir.discharge(h) * RectangularWeir.drownedFactor(h, down) - q, Math.max(down, 1e-9), 5);
        add("drowned weir head", weir.drownedHead(q, down), drowned);
    }

    private void slot() {
        Slot slot = new Slot(random.nextDouble(0.005, 0.1), random.nextDouble(0.005, 0.05), 0.61);
        double level = random.nextDouble(0.001, 0.2);
        double top = Math.min(slot.heightM(), level);
        UnivariateFunction layer = z -> 0.61 * slot.widthM() * Math.sqrt(2 * GRAVITY * (level - z));
        add("slot discharge", slot.discharge(level), integral(layer, 0, top));
    }

    private void pipes() {
        double re = Math.exp(random.nextDouble(Math.log(4e3), Math.log(1e7)));
        double rough = random.nextDouble(0, 0.03);
        UnivariateFunction colebrook = f -> 1 / Math.sqrt(f) + 2 * Math.log10(rough / 3.7 + 2.51 / (re * Math.sqrt(f)));
        add("Colebrook friction", Colebrook.friction(re, rough), root(colebrook, 1e-3, 1));
        Pipe pipe = new Pipe(random.nextDouble(0.01, 0.06), random.nextDouble(0.2, 4), 1.5e-6, random.nextDouble(1, 8));
        double head = random.nextDouble(0.05, 2);
        add("pipe discharge", pipe.discharge(head, 1e-6), root(q -> pipe.headLoss(q, 1e-6) - head, 1e-9, 0.1));
    }

    private void bubble() {
        double d = random.nextDouble(1e-4, 2.5e-3);
        double rho = random.nextDouble(995, 1030);
        double mu = random.nextDouble(0.7e-3, 1.3e-3);
        UnivariateFunction balance = u -> {
            double re = rho * u * d / mu;
            double drag = 24 / re * (1 + 0.15 * Math.pow(re, 0.687));
            return drag * u * u - 4 * GRAVITY * d * (rho - 1.2) / (3 * rho);
        };
        add("bubble speed", TerminalSpeed.contaminated(d, rho, mu), root(balance, 1e-6, 2));
    }

    private void column() {
        double u = random.nextDouble(0.03, 0.2);
        double n = random.nextDouble(1.5, 4);
        double down = u * random.nextDouble(0, 0.4);
        double limit = RivalHoldup.floodingGasFlux(-down, u, n);
        double gas = limit * random.nextDouble(0.02, 0.95);
        // The greatest gas flux lies where its slope in e is nothing; the lower root is below that holdup.
        UnivariateFunction slope = e -> u * Math.pow(1 - e, n) * (1 - n * e) - down;
        double top = down == 0 ? 1 / n : root(slope, 0, 1 / n);
        double theirs = root(e -> u * e * Math.pow(1 - e, n) - gas * (1 - e) - down * e, 0, top);
        add("gas holdup", GasHoldup.richardsonZaki(gas, -down, u, n), theirs);
        double best = u * top * Math.pow(1 - top, n - 1) - down * top / (1 - top);
        add("flooding of a column", limit, best);
    }

    private void risingFoam() {
        double n = random.nextDouble(1.4, 2.6);
        double k = Math.exp(random.nextDouble(-8, 0));
        double gas = RisenFoam.floodingGasFlux(k, n) * random.nextDouble(0.01, 0.95);
        UnivariateFunction slope = e -> gas / ((1 - e) * (1 - e)) - n * k * Math.pow(e, n - 1);
        double theirs = root(slope, 0, (n - 1) / (n + 1));
        add("liquid fraction of foam", RisingFoam.liquidFraction(gas, k, n), theirs);
    }

    /** The gas in a foam is what entered and still lives, over all ages up to that of the lip. */
    private void foamLife() {
        FoamLife life = new FoamLife(random.nextDouble(5, 60), random.nextDouble(1.1, 3));
        double gas = random.nextDouble(1e-5, 1e-4);
        double volume = gas * life.meanLifeS() * random.nextDouble(0.05, 0.7);
        double age = life.ageAtTopS(gas, volume);
        // In logarithmic time, because the tail of the law is long.
        UnivariateFunction alive = x -> gas * life.survival(Math.expm1(x)) * Math.exp(x);
        add("gas held by foam", volume, integral(alive, 0, Math.log1p(age)));
    }

    private void uptake() {
        Adsorption isotherm = new Adsorption(random.nextDouble(1e-6, 4e-6), random.nextDouble(20, 1000));
        double c = random.nextDouble(1e-3, 5e-2);
        GatheredLoad uptake = new GatheredLoad(isotherm, random.nextDouble(1e-6, 1e-4));
        double time = random.nextDouble(0.5, 20);
        add("load of a bubble", uptake.load(c, time), integrated(uptake, c, time));
    }

    /** dGamma/dt = k (c - c_s), in units of the saturated load. */
    private static double integrated(GatheredLoad uptake, double c, double time) {
        double most = uptake.isotherm().saturationKgPerM2();
        double affinity = uptake.isotherm().affinityM3PerKg();
        OrdinaryDifferentialEquation balance = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 1;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                double atSurface = y[0] / (affinity * (1 - y[0]));
                return new double[] {uptake.transferSpeedMPerS() * (c - atSurface) / most};
            }
        };
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-9, time, 1e-13, 1e-12);
        ODEState start = new ODEState(0, new double[] {0});
        return integrator.integrate(balance, start, time).getPrimaryState()[0] * most;
    }

    private void add(String name, double ours, double theirs) {
        worst.computeIfAbsent(name, key -> new Worst()).add(ours, theirs);
    }

    private static double root(UnivariateFunction f, double low, double high) {
        return new BracketingNthOrderBrentSolver(1e-14, 1e-16, 5).solve(10_000, f, low, high);
    }

    private static double integral(UnivariateFunction f, double low, double high) {
        return new IterativeLegendreGaussIntegrator(16, 1e-11, 1e-18).integrate(10_000_000, f, low, high);
    }
}
