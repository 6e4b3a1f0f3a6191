package io.github.weirwise.bench;

import io.github.weirwise.evidence.TankYear;
import io.github.weirwise.tank.TankRun;
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

/** One simulated tank-year with a state every hour. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 80)
@Measurement(iterations = 60)
public class TankYearBench {
    private final TankYear year = new TankYear();

    /** The year. */
    @Benchmark
    public TankRun tankYear() {
        return year.run();
    }
}
