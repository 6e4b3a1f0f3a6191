package io.github.weirwise.bench;

import io.github.weirwise.evidence.ColumnCases;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** All full foam columns of the set, one after the other. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 400)
@Measurement(iterations = 200)
public class ColumnBench {
    private final ColumnCases cases = new ColumnCases();

    /** Liquid over all their lips. */
    @Benchmark
    public double column() {
        return cases.solve();
    }
}
