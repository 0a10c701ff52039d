package turnheel.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

import turnheel.engine.design.Design;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Batch;
import turnheel.exchange.BatchListener;
import turnheel.exchange.BatchOutcome;
import turnheel.exchange.BatchPlan;
import turnheel.exchange.Edition;
import turnheel.exchange.ExportException;
import turnheel.exchange.ExportFormat;

/**
 * A publisher's whole catalogue, a thousand patterns in twelve sizes, graded and exported to workbooks on all cores, end to
 * end; and LibreOffice, started once, recalculating and saving forty of the same workbooks. Both are times of one
 * workbook, LibreOffice's start shared by the forty of them; what is wished for is a twentieth.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(1)
public class CatalogueBenchmark {

    private static final int PATTERNS = 1000;
    private static final int RECALCULATED = 40;
    private static final int SIZES = 12;
    private static final String ENDING = ".turnheel";
    private static final String ALWAYS_RECALCULATE = """
            <?xml version="1.0" encoding="UTF-8"?>
            <oor:items xmlns:oor="http://openoffice.org/2001/registry">
            <item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse">\
            <value>0</value></prop></item>
            </oor:items>
            """;

    private Path folder = Path.of("");

    /** Writes the catalogue once: files that name their pattern, since reading pattern files is another's work. */
    @Setup(Level.Trial)
    public void catalogue() throws IOException, ExportException, InterruptedException {
        folder = Files.createTempDirectory("turnheel-catalogue");
        Path patterns = Files.createDirectories(folder.resolve("patterns"));
        for (int i = 0; i < PATTERNS; i++) {
            Files.writeString(patterns.resolve("p%04d%s".formatted(i, ENDING)), Integer.toString(i));
        }
        Path profile = Files.createDirectories(folder.resolve("profile/user"));
        Files.writeString(profile.resolve("registrymodifications.xcu"), ALWAYS_RECALCULATE);
        turnheel();
    }

    /** Gauges from thick to thin yarn. */
    private static Design design(Path file) throws IOException {
        int number = Integer.parseInt(Files.readString(file));
        return ManySizes.threeStitchPatterns(SIZES, 20 + 20.0 * number / PATTERNS);
    }

    /** Every pattern of the catalogue. */
    @Benchmark
    @OperationsPerInvocation(PATTERNS)
    public List<BatchOutcome> turnheel() throws ExportException, InterruptedException {
        BatchPlan plan = BatchPlan.of(folder.resolve("patterns"), ENDING, folder.resolve("workbooks"),
                List.of(ExportFormat.WORKBOOK));
        return Batch.run(plan, file -> Patterns.grade(design(file)), Edition.usual(), true,
                Batch.usualWorkers(), new BatchListener() {
                    @Override
                    public void finished(BatchOutcome outcome, int finished, int all) {
                        if (outcome.state() != BatchOutcome.State.DONE) {
                            throw new IllegalStateException(outcome.message());
                        }
                    }

                    @Override
                    public boolean isCancelled() {
                        return false;
                    }
                });
    }

    /** Some of its workbooks; they are alike. */
    @Benchmark
    @OperationsPerInvocation(RECALCULATED)
    public int libreOffice() throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("soffice", "--headless", "--norestore",
                "-env:UserInstallation=" + folder.resolve("profile").toUri(), "--convert-to",
                "xlsx:Calc MS Excel 2007 XML", "--outdir", folder.resolve("recalculated").toString()));
        for (int i = 0; i < RECALCULATED; i++) {
            command.add(folder.resolve("workbooks/p%04d.xlsx".formatted(i * PATTERNS / RECALCULATED)).toString());
        }
        Path said = folder.resolve("soffice.log");
        Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
        int exitCode = process.waitFor();
        try (Stream<Path> made = Files.list(folder.resolve("recalculated"))) {
            if (exitCode != 0 || made.count() != RECALCULATED) {
                throw new IllegalStateException(Files.readString(said, StandardCharsets.UTF_8));
            }
        }
        return exitCode;
    }

    @TearDown(Level.Trial)
    public void cleanUp() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
