package turnheel.benchmarks;

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

import turnheel.engine.knitting.Knitted;
import turnheel.engine.knitting.Manuscript;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.writing.Manuscripts;
import turnheel.engine.writing.Renderings;
import turnheel.engine.yarn.Patterns;

/** What a keystroke in a written pattern costs: its text read, and every size knitted. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class KnitBenchmark {

    private static final int PLAIN_ROUNDS = 100_000;
    private static final int STITCHES = 100;

    @Param({"6", "24"})
    private int sizes;

    private String text = "";
    private Manuscript read = Manuscript.read("");
    private Manuscript plain = Manuscript.read("");

    @Setup
    public void write() {
        text = Renderings.plain(Manuscripts.write(Patterns.grade(ManySizes.threeStitchPatterns(sizes, 32)),
                HouseStyles.shipped("studio")));
        read = Manuscript.read(text);
        plain = Manuscript.read("Leg\nCast on %d sts; join to work in the rnd.\nK %d rnds.\n".formatted(STITCHES,
                PLAIN_ROUNDS));
    }

    /** The text into instructions. */
    @Benchmark
    public Manuscript reading() {
        return Manuscript.read(text);
    }

    /** Every size on its needle, the text already read. */
    @Benchmark
    public Knitted knitting() {
        return read.knit();
    }

    /** Both: what the screen waits for. */
    @Benchmark
    public Knitted keystroke() {
        return Manuscript.read(text).knit();
    }

    /** Ten million loops of plain knitting; divide to get loops a second. */
    @Benchmark
    public Knitted tenMillionPlainLoops() {
        return plain.knit();
    }
}
