package turnheel.benchmarks;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
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

import turnheel.engine.grading.Graded;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Edition;
import turnheel.exchange.ExportFormat;

/**
 * A graded pattern as a workbook, and POI writing the very same cells from a list. What the export does besides, above
 * all to decide, to word and to pack the file so that it is the same each time, should cost at most 0.3 of the latter.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class WorkbookBenchmark {

    @Param({"6", "12", "24"})
    private int sizes;

    private Graded graded = Patterns.grade(ManySizes.threeStitchPatterns(1, 32));
    private RawWorkbook raw;

    @Setup
    public void export() throws IOException {
        graded = Patterns.grade(ManySizes.threeStitchPatterns(sizes, 32));
        raw = RawWorkbook.of(turnheel().toByteArray());
    }

    /** From the graded pattern to the bytes of the file. */
    @Benchmark
    public ByteArrayOutputStream turnheel() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ExportFormat.WORKBOOK.write(graded, Edition.usual(), out);
        return out;
    }

    /** The same cells, styles, comments and names, from a list to the bytes of a file. */
    @Benchmark
    public ByteArrayOutputStream poi() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        raw.write(out);
        return out;
    }
}
