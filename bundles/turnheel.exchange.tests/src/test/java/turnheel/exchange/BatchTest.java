package turnheel.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import turnheel.engine.design.Design;
import turnheel.engine.grading.Graded;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.BatchOutcome.State;
import turnheel.exchange.drawing.Drawn;

class BatchTest {

    private static final String ENDING = ".turnheel";
    private static final List<ExportFormat> TWO = List.of(ExportFormat.WORKBOOK, ExportFormat.TABLE);

    @TempDir
    Path folder;

    /** The progress of a run. */
    private static class Watched implements BatchListener {

        final List<String> finished = Collections.synchronizedList(new ArrayList<>());

        @Override
        public void finished(BatchOutcome outcome, int count, int all) {
            finished.add(outcome.source() + " " + count + "/" + all);
        }

        @Override
        public boolean isCancelled() {
            return false;
        }
    }

    private Path in() {
        return folder.resolve("in");
    }

    private Path out() {
        return folder.resolve("out");
    }

    /** A pattern file names its design; its format is another's matter. */
    private void pattern(String path, String design) throws IOException {
        Path file = in().resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, design);
    }

    private static Graded read(Path file) throws IOException {
        Design design = Designs.all().get(Files.readString(file));
        if (design == null) {
            throw new IOException(file + ": broken");
        }
        return Patterns.grade(design);
    }

    private BatchPlan plan(List<ExportFormat> formats) throws ExportException {
        return BatchPlan.of(in(), ENDING, out(), formats);
    }

    private List<BatchOutcome> run(BatchPlan plan, int workers, BatchListener listener) throws InterruptedException {
        return Batch.run(plan, BatchTest::read, Edition.usual(), false, workers, listener);
    }

    private static List<String> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).map(file -> folder.relativize(file).toString()).sorted().toList();
        }
    }

    private static List<State> states(List<BatchOutcome> outcomes) {
        return outcomes.stream().map(BatchOutcome::state).toList();
    }

    @ParameterizedTest(name = "{0} workers")
    @ValueSource(ints = {1, 2, 5})
    void givesTheSameBytesAsOneExportWhateverTheOrder(int workers) throws Exception {
        List<String> designs = List.copyOf(Designs.all().keySet());
        for (String design : designs) {
            pattern("deep/er/" + design + ENDING, design);
        }
        List<ExportFormat> formats = List.of(ExportFormat.values());
        List<BatchOutcome> outcomes = run(plan(formats), workers, new Watched());
        assertEquals(Collections.nCopies(designs.size(), State.DONE), states(outcomes));
        assertEquals(designs.size() * formats.size(), files(out()).size());
        for (String design : designs) {
            for (ExportFormat format : formats) {
                Path alone = folder.resolve("alone" + format.ending());
                Exports.write(Patterns.grade(Designs.all().get(design)), alone, true);
                assertArrayEquals(Files.readAllBytes(alone),
                        Files.readAllBytes(out().resolve("deep/er/" + design + format.ending())), design + format);
            }
        }
    }

    @Test
    void keepsSubFoldersAndTellsOutcomesInTheOrderOfThePaths() throws Exception {
        pattern("b" + ENDING, "toe-up");
        pattern("sub/a.TURNHEEL", "overrides");
        pattern("sub/notes.txt", "toe-up");
        pattern("a.xlsx" + ENDING, "cuff-down");
        pattern(ENDING, "toe-up");
        Watched watched = new Watched();
        List<BatchOutcome> outcomes = run(plan(List.of(ExportFormat.TABLE)), 2, watched);
        assertEquals(List.of("a.xlsx.turnheel", "b.turnheel", "sub/a.TURNHEEL"),
                outcomes.stream().map(outcome -> outcome.source().toString()).toList());
        assertEquals(List.of("a.xlsx.csv", "b.csv", "sub/a.csv"), files(out()));
        assertEquals(List.of("1/3", "2/3", "3/3"),
                watched.finished.stream().map(line -> line.substring(line.indexOf(' ') + 1)).toList());
        // overrides break what the parts need; the first error is told
        BatchOutcome overruled = outcomes.getLast();
        assertTrue(overruled.errors() > 0 && !overruled.message().isEmpty(), overruled.toString());
        assertEquals(0, outcomes.get(1).errors());
    }

    @Test
    void oneBrokenPatternDoesNotStopTheRest() throws Exception {
        pattern("a" + ENDING, "toe-up");
        pattern("b" + ENDING, "rubbish");
        pattern("c" + ENDING, "cuff-down");
        List<BatchOutcome> outcomes = run(plan(TWO), 1, new Watched());
        assertEquals(List.of(State.DONE, State.FAILED, State.DONE), states(outcomes));
        assertTrue(outcomes.get(1).message().endsWith("b.turnheel: broken"), outcomes.get(1).message());
        assertEquals(List.of("a.csv", "a.xlsx", "c.csv", "c.xlsx"), files(out()));
    }

    @Test
    void aFaultInOnePatternDoesNotStopTheRest() throws Exception {
        pattern("a" + ENDING, "toe-up");
        pattern("b" + ENDING, "cuff-down");
        List<BatchOutcome> outcomes = Batch.run(plan(List.of(ExportFormat.TABLE)), file -> {
            if (file.endsWith("a" + ENDING)) {
                throw new IllegalStateException("a slip of ours");
            }
            return read(file);
        }, Edition.usual(), false, 2, new Watched());
        assertEquals(List.of(State.FAILED, State.DONE), states(outcomes));
        assertTrue(outcomes.getFirst().message().contains("a slip of ours"), outcomes.getFirst().message());
    }

    @Test
    void aFileThatAppearedMeanwhileIsAFailureOfItsPatternAlone() throws Exception {
        pattern("a" + ENDING, "toe-up");
        pattern("b" + ENDING, "cuff-down");
        BatchPlan plan = plan(TWO);
        Files.createDirectories(out());
        Files.writeString(out().resolve("a.csv"), "mine");
        assertEquals(List.of(Path.of("a.csv")), plan.existing());
        List<BatchOutcome> outcomes = run(plan, 2, new Watched());
        assertEquals(List.of(State.FAILED, State.DONE), states(outcomes));
        assertEquals(List.of(Path.of("a.xlsx")), outcomes.getFirst().written());
        assertEquals("mine", Files.readString(out().resolve("a.csv")));
        Batch.run(plan, BatchTest::read, Edition.usual(), true, 2, new Watched());
        assertTrue(Files.readString(out().resolve("a.csv")).contains("foot.stitches"));
    }

    @Test
    void aSizeThatAPatternDoesNotHaveIsAFailureWhereTheFormatShowsOneSize() throws Exception {
        pattern("a" + ENDING, "toe-up");
        pattern("b" + ENDING, "cuff-down");
        Edition edition = new Edition(Optional.of(Drawn.What.TOE), Optional.of("M"), HouseStyles.usual());
        List<BatchOutcome> outcomes = Batch.run(plan(List.of(ExportFormat.TABLE, ExportFormat.DRAWING)), BatchTest::read,
                edition, false, 2, new Watched());
        assertEquals(List.of(State.DONE, State.FAILED), states(outcomes));
        assertTrue(outcomes.getLast().message().contains("36/37, 38/39, 40/41"), outcomes.getLast().message());
        assertEquals(List.of("a.csv", "a.svg", "b.csv"), files(out()));
    }

    @ParameterizedTest(name = "{0} workers")
    @ValueSource(ints = {1, 3})
    void noMorePatternsAreHeldThanThereAreWorkers(int workers) throws Exception {
        for (int i = 0; i < 12; i++) {
            pattern("p" + i + ENDING, "toe-up");
        }
        AtomicInteger read = new AtomicInteger();
        AtomicInteger ended = new AtomicInteger();
        AtomicInteger most = new AtomicInteger();
        Batch.run(plan(List.of(ExportFormat.TABLE)), file -> {
            most.accumulateAndGet(read.incrementAndGet() - ended.get(), Math::max);
            return read(file);
        }, Edition.usual(), false, workers, new Watched() {
            @Override
            public void finished(BatchOutcome outcome, int count, int all) {
                ended.incrementAndGet();
            }
        });
        assertEquals(12, ended.get());
        assertTrue(most.get() <= workers, most + " at once");
    }

    @Test
    void whatIsWrittenWhenItIsCancelledIsWhole() throws Exception {
        for (int i = 0; i < 8; i++) {
            pattern("p" + i + ENDING, "toe-up");
        }
        AtomicInteger finished = new AtomicInteger();
        List<BatchOutcome> outcomes = run(plan(TWO), 2, new BatchListener() {
            @Override
            public void finished(BatchOutcome outcome, int count, int all) {
                finished.set(count);
            }

            @Override
            public boolean isCancelled() {
                return finished.get() >= 2;
            }
        });
        assertEquals(8, outcomes.size());
        long done = outcomes.stream().filter(outcome -> outcome.state() == State.DONE).count();
        assertTrue(done >= 2 && done <= 3, outcomes.toString());
        assertEquals(8 - done, outcomes.stream().filter(outcome -> outcome.state() == State.CANCELLED).count());
        assertEquals(outcomes.stream().mapToInt(outcome -> outcome.written().size()).sum(), files(out()).size());
        Exports.write(Patterns.grade(Designs.toeUp()), folder.resolve("alone.xlsx"), false);
        for (BatchOutcome outcome : outcomes) {
            for (Path file : outcome.written()) {
                if (file.toString().endsWith(".xlsx")) {
                    assertArrayEquals(Files.readAllBytes(folder.resolve("alone.xlsx")),
                            Files.readAllBytes(out().resolve(file)));
                }
            }
        }
    }

    @Test
    void anInterruptStopsItAndLeavesWholeFilesOnly() throws Exception {
        for (int i = 0; i < 4; i++) {
            pattern("p" + i + ENDING, "toe-up");
        }
        BatchPlan plan = plan(TWO);
        Thread.currentThread().interrupt();
        List<BatchOutcome> outcomes = run(plan, 1, new Watched());
        assertTrue(Thread.interrupted(), "the caller still knows of its interrupt");
        assertEquals(State.CANCELLED, outcomes.getLast().state());
        List<String> whole = outcomes.stream().flatMap(outcome -> outcome.written().stream()).map(Path::toString).sorted()
                .toList();
        assertEquals(whole, Files.exists(out()) ? files(out()) : List.of());
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void linksAreFollowedAndLoopsLeftAlone() throws Exception {
        pattern("a" + ENDING, "toe-up");
        pattern("sub/b" + ENDING, "toe-up");
        Files.createSymbolicLink(in().resolve("sub/loop"), in());
        Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
        Files.writeString(elsewhere.resolve("c" + ENDING), "toe-up");
        Files.createSymbolicLink(in().resolve("linked"), elsewhere);
        Files.createSymbolicLink(in().resolve("dead" + ENDING), folder.resolve("nowhere"));
        BatchPlan plan = plan(List.of(ExportFormat.TABLE));
        assertEquals(List.of("a.turnheel", "dead.turnheel", "linked/c.turnheel", "sub/b.turnheel"),
                plan.items().stream().map(item -> item.source().toString()).toList());
        assertEquals(List.of(), plan.unreadable());
        assertEquals(List.of(State.DONE, State.FAILED, State.DONE, State.DONE), states(run(plan, 2, new Watched())));
    }

    private String refusal() {
        return assertThrows(ExportException.class, () -> plan(TWO)).getMessage();
    }

    @Test
    void refusesWhatCannotWorkBeforeItBegins() throws IOException {
        assertTrue(refusal().contains("there is no folder"), refusal());
        Files.createDirectories(in());
        assertTrue(refusal().contains("no .turnheel file"), refusal());
        pattern("Gull" + ENDING, "toe-up");
        Files.writeString(out(), "a file");
        assertTrue(refusal().contains("is a file"), refusal());
        Files.delete(out());
        Files.delete(in().resolve("Gull" + ENDING));
        Files.delete(in());
        Files.writeString(in(), "a file");
        assertTrue(refusal().contains("is no folder"), refusal());
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void refusesPatternsWhoseFilesWouldBeOneOnSomeDisks() throws IOException {
        pattern("Gull" + ENDING, "toe-up");
        pattern("gull" + ENDING, "cuff-down");
        assertTrue(refusal().contains("Gull.turnheel") && refusal().contains("gull.turnheel"), refusal());
        Files.delete(in().resolve("gull" + ENDING));
        pattern("sub/tern" + ENDING, "toe-up");
        pattern("SUB/tern" + ENDING, "toe-up");
        assertTrue(refusal().contains("SUB/tern"), refusal());
        Files.delete(in().resolve("SUB/tern" + ENDING));
        // one letter with its accent, or two characters
        pattern("skär" + ENDING, "toe-up");
        pattern("ska\u0308r" + ENDING, "toe-up");
        assertTrue(refusal().contains("rename one of them"), refusal());
    }
}
