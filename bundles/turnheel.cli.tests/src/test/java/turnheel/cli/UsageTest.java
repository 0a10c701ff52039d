package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UsageTest {

    private static final String VERBS =
            "new set sizes grade rounds write find-round export batch handout test-knit check errata";

    @TempDir
    private Path folder;

    @Test
    void aVerbIsNeeded() {
        Run.of().refused(VERBS, "turnheel --help");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"exprot, export", "chek, check", "gradee, grade", "GRADE, grade", "ste, set"})
    void aMistypedVerbIsSuggested(String mistyped, String meant) {
        Run.of(mistyped).refused("\"" + mistyped + "\"", VERBS, "Did you mean " + meant + "?");
    }

    @ParameterizedTest(name = "verb {0}")
    @CsvSource({"knit", "''"})
    void aVerbThatIsNotThereIsRefusedWithThoseThatAre(String verb) {
        Run.of(verb, "x.turnheel").refused("there is no verb \"" + verb + "\"", VERBS);
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"grade, --wyh, --why", "rounds, --sise=M, --size", "export, --forse, --force", "new, --titel, --title",
            "check, --jsn, --json"})
    void aMistypedOptionIsSuggested(String verb, String mistyped, String meant) {
        Run.of(verb, "x.turnheel", mistyped).refused(mistyped.replaceFirst("=.*", ""), "Did you mean " + meant + "?");
    }

    @Test
    void anOptionThatIsNotThereIsRefusedWithThoseThatAre() {
        Run.of("grade", "x.turnheel", "--style", "formal").refused("--style", "--help", "--why", "--json");
        Run.of("grade", "x.turnheel", "-x").refused("-x", "--why");
    }

    @Test
    void whatIsLeftOverIsRefused() throws IOException {
        Path file = Patterns.toeUp(folder);
        byte[] before = Files.readAllBytes(file);
        Run.of("grade", file, "twice.turnheel").refused("turnheel grade", "twice.turnheel");
        Run.of("export", file, "--to", folder.resolve("a.csv"), "--to", folder.resolve("b.csv"))
                .refused("--to", "once");
        Run.of("grade", file, "--why").refused("--why");
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void aFileThatIsMissingIsAskedFor() {
        for (String verb : new String[] {"new", "set", "grade", "rounds", "find-round", "export", "handout",
            "test-knit", "check"}) {
            Run.of(verb).refused("turnheel " + verb, "FILE", "--help");
        }
    }

    @Test
    void anArgumentThatNamesAFileOfArgumentsIsJustAName() {
        Run.of("grade", "@none.turnheel").refused("@none.turnheel", "there is no such file");
    }

    @Test
    void otherPeoplesTextCannotCommandTheTerminal() {
        Path file = folder.resolve("bell.turnheel");
        Run.of("new", file, "--title", "Bell \u009b31m\u202eeye", "--size", Patterns.M).clean();
        String shown = Run.of("grade", file).clean().lines().getFirst();
        assertEquals("Bell  31m eye", shown);
        Run.of("grade", "a\u001b[2Jb\nc.turnheel").refused("a [2Jb c.turnheel");
    }

    @Test
    void anOutputThatIsFullIsAnError() {
        PrintStream full = new PrintStream(new OutputStream() {
            @Override
            public void write(int octet) throws IOException {
                throw new IOException("no space left");
            }
        }, false, StandardCharsets.UTF_8);
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exitCode = Main.run(full, new PrintStream(err, false, StandardCharsets.UTF_8), "sizes");
        assertEquals(2, exitCode);
        String said = err.toString(StandardCharsets.UTF_8);
        assertTrue(said.contains("standard output"), said);
    }
}
