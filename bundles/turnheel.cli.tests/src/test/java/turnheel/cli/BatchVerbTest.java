package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.JsonNode;

import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BatchVerbTest {

    @TempDir
    private Path folder;
    private Path in;
    private Path out;

    @BeforeEach
    void makePatterns() throws IOException {
        in = Files.createDirectories(folder.resolve("in/deep")).getParent();
        out = folder.resolve("out");
        Patterns.toeUp(in);
        Patterns.cuffDown(in.resolve("deep"));
    }

    private List<String> files() throws IOException {
        if (!Files.exists(out)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(out)) {
            return files.filter(Files::isRegularFile).map(file -> out.relativize(file).toString()).sorted().toList();
        }
    }

    @Test
    void exportsWhatExportDoes() throws IOException {
        Run run = Run.of("batch", in, "--to", out, "--formats", "xlsx,.csv").clean();
        assertEquals(List.of("gull.turnheel", "done", "0", "0"), run.row("gull.turnheel"));
        assertTrue(run.out().endsWith("\ndone: 2, with queries: 0, failed: 0\n"), run.out());
        assertEquals(List.of("deep/tern.csv", "deep/tern.xlsx", "gull.csv", "gull.xlsx"), files());
        Run.of("export", in.resolve("deep/tern.turnheel"), "--to", folder.resolve("tern.xlsx")).clean();
        assertArrayEquals(Files.readAllBytes(folder.resolve("tern.xlsx")),
                Files.readAllBytes(out.resolve("deep/tern.xlsx")));
    }

    @Test
    void tellsFailuresQueriesAndTheRest() throws IOException {
        Files.writeString(in.resolve("broken.turnheel"), "no pattern");
        Run.of("set", in.resolve("deep/tern.turnheel"), "foot.stitches[M]=63");
        Run run = Run.of("batch", in, "--to", out, "--formats", "csv", "--json");
        assertEquals(2, run.exitCode());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(run.err().contains("of 3 patterns") && run.err().contains("failed: 1"), run.err());
        JsonNode patterns = run.json().get("patterns");
        assertEquals("broken.turnheel", patterns.get(0).get("file").asText());
        assertEquals("failed", patterns.get(0).get("state").asText());
        assertTrue(patterns.get(0).get("message").asText().contains("broken.turnheel"), patterns.toString());
        assertEquals("queries", patterns.get(1).get("state").asText());
        assertTrue(patterns.get(1).get("errors").asInt() > 0, patterns.toString());
        assertFalse(patterns.get(1).get("message").asText().isEmpty());
        assertEquals("done", patterns.get(2).get("state").asText());
        assertEquals(List.of("deep/tern.csv", "gull.csv"), files());
    }

    @Test
    void endsWithOneForQueriesOfTheLevelThatMatters() {
        Path tern = in.resolve("deep/tern.turnheel");
        // a warning, not an error: the sock would be a quarter smaller than the foot
        assertEquals(0, Run.of("set", tern, "fit.easeAround=-25 %").exitCode());
        assertEquals(0, Run.of("batch", in, "--to", out, "--formats", "csv").clean().exitCode());
        Run strict = Run.of("batch", in, "--to", out, "--formats", "csv", "--fail-on", "warning", "--force");
        assertEquals(1, strict.exitCode());
        assertTrue(strict.err().contains("patterns: 1"), strict.err());
        Run.of("set", tern, "foot.stitches[M]=63");
        assertEquals(1, Run.of("batch", in, "--to", out, "--formats", "csv", "--force").exitCode());
    }

    @Test
    void refusesBeforeAnythingIsWrittenWhatIsThereAlready() throws IOException {
        Files.createDirectories(out.resolve("deep"));
        Files.writeString(out.resolve("deep/tern.csv"), "mine");
        Run.of("batch", in, "--to", out, "--formats", "csv").refused(out.resolve("deep/tern.csv"), "--force", "files: 1");
        assertEquals(List.of("deep/tern.csv"), files());
        Run.of("batch", in, "--to", out, "--formats", "csv", "--force").clean();
        assertFalse(Files.readString(out.resolve("deep/tern.csv")).contains("mine"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            --formats xslx                       | Did you mean xlsx?
            --formats xlsx,                      | there is no ""
            --formats csv --part toe             | .svg
            --formats csv --size M               | .svg
            --formats csv --style studio         | --style
            --formats svg --part sleeve          | instep-pattern
            --formats csv --fail-on fatal        | error warning
            --to nowhere                         | --formats
            """)
    void refusesOptionsThatMeanNothing(String options, String says) throws IOException {
        Object[] given = options.split(" ");
        Object[] command = Stream.concat(Stream.of("batch", in, options.contains("--to") ? "--json" : "--to=" + out),
                Stream.of(given)).toArray();
        Run.of(command).refused(says);
        assertEquals(List.of(), files());
    }

    @Test
    void passesPartAndSizeToTheFormatsThatKnowThem() throws IOException {
        Run.of("batch", in, "--to", out, "--formats", "csv,svg", "--part", "toe", "--size", "L").clean();
        Run.of("export", in.resolve("gull.turnheel"), "--to", folder.resolve("toe.svg"), "--part", "toe", "--size", "L")
                .clean();
        assertEquals(Files.readString(folder.resolve("toe.svg")), Files.readString(out.resolve("gull.svg")));
        Run.of("batch", in, "--to", folder.resolve("other"), "--formats", "svg", "--size", "XS");
        assertFalse(Files.exists(folder.resolve("other/gull.svg")));
    }

    @Test
    void refusesAFolderThatIsNotThereOrHoldsNoPattern() throws IOException {
        Run.of("batch", folder.resolve("none"), "--to", out, "--formats", "csv").refused("there is no folder");
        Run.of("batch", in.resolve("gull.turnheel"), "--to", out, "--formats", "csv").refused("is no folder");
        Run.of("batch", Files.createDirectory(folder.resolve("empty")), "--to", out, "--formats", "csv")
                .refused("no .turnheel file");
    }

    /** A process that is interrupted as by Ctrl-C, in the midst of its work. */
    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void anInterruptLeavesWholeFilesOnly() throws Exception {
        for (int i = 0; i < 300; i++) {
            Files.copy(in.resolve("gull.turnheel"), in.resolve("gull%03d.turnheel".formatted(i)));
        }
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path"), Main.class.getName(), "batch",
                in.toString(), "--to", out.toString(), "--formats", "xlsx").redirectErrorStream(true)
                .redirectOutput(folder.resolve("said").toFile()).start();
        try {
            while (files().stream().noneMatch(name -> name.endsWith(".xlsx")) && process.isAlive()) {
                Thread.sleep(20);
            }
            new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start().waitFor();
            assertTrue(process.waitFor(60, TimeUnit.SECONDS), "it ends");
        } finally {
            process.destroyForcibly();
        }
        List<String> written = files();
        assertTrue(!written.isEmpty() && written.size() < 302, written.size() + " files");
        for (String name : written) {
            assertTrue(name.endsWith(".xlsx"), name);
            try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(out.resolve(name)))) {
                assertTrue(workbook.getNumberOfSheets() >= 4, name);
            }
        }
    }
}
