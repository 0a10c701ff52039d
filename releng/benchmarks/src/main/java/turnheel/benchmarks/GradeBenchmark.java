package turnheel.benchmarks;

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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

import turnheel.engine.checks.Checks;
import turnheel.engine.design.Design;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.Grader;
import turnheel.engine.query.Query;
import turnheel.engine.yarn.Patterns;

/** One edit: everything is graded anew, since grading is total and keeps nothing. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class GradeBenchmark {

    @Param({"6", "24"})
    private int sizes;

    private Design design() {
        return ManySizes.threeStitchPatterns(sizes, 32);
    }

    /** Counts and lengths. */
    @Benchmark
    public Graded counts() {
        return Grader.grade(design());
    }

    /** Counts, every round of every size, and the yarn that they take. */
    @Benchmark
    public Graded everyNumber() {
        return Patterns.grade(design());
    }

    /** What the grid waits for: every number, checked. */
    @Benchmark
    public List<Query> checked() {
        return Checks.of(Patterns.grade(design()));
    }
}
