package io.github.weirwise.bench;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.evidence.AdviceScene;
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

/** A full advice after so many journal entries, with nothing kept from the call before; the machine's compiler has settled. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3000)
@Measurement(iterations = 600)
public class AdviceBench {
    /** Entries of the journal. */
    @Param({"30", "300"})
    public int entries;

    private AdviceScene scene;

    /** Makes the journal. */
    @Setup
    public void journal() {
        scene = new AdviceScene(entries);
    }

    /** From the journal to the step. */
    @Benchmark
    public Advice advice() {
        return scene.advise();
    }
}
