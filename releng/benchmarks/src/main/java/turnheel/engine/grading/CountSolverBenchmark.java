package turnheel.engine.grading;

import java.util.List;
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

import turnheel.benchmarks.ManySizes;

/** The best counts of all sizes, for an ordinary gauge and for one so fine that every size has hundreds of candidates. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class CountSolverBenchmark {

    @Param({"6", "24"})
    private int sizes;

    @Param({"32", "120"})
    private double stitchesPerTenCentimetres;

    private List<SizeWish> wishes = List.of();

    @Setup
    public void wish() {
        wishes = CountWishes.of(ManySizes.threeStitchPatterns(sizes, stitchesPerTenCentimetres)).sizes();
    }

    @Benchmark
    public CountAnswer solve() {
        return CountSolver.solve(wishes);
    }
}
