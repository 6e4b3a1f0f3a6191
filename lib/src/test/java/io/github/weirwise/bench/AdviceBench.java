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
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A full advice after 30 journal entries, with nothing kept from the call before. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 400)
@Measurement(iterations = 400)
public class AdviceBench {
    private final AdviceScene scene = new AdviceScene(30);

    /** From the journal to the step. */
    @Benchmark
    public Advice advice() {
        return scene.advise();
    }
}
