package io.github.weirwise.bench;

import io.github.weirwise.evidence.SteadyPoints;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** All steady points of a set, from their inputs to the skimmate: the law behind every operating point. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 2000)
@Measurement(iterations = 600)
public class SteadyBench {
    /** Which exponents the units have. */
    @Param({"general", "usual"})
    public String exponents;

    private SteadyPoints points;

    /** Draws the points. */
    @Setup
    public void draw() {
        points = exponents.equals("general") ? SteadyPoints.general() : SteadyPoints.usual();
    }

    /** Sum of the skimmate of all points. */
    @Benchmark
    public double steady() {
        double sum = 0;
        for (int i = 0; i < SteadyPoints.POINTS; i++) {
            sum += points.law(i).at(points.inputs(i)).skimmateM3PerS();
        }
        return sum;
    }
}
