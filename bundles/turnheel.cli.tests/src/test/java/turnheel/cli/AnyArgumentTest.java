package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/** Whatever is typed: it is done, or it is refused in one line and nothing has changed. */
class AnyArgumentTest {

    private static Path folder;
    private static Path file;
    private static byte[] content;

    @BeforeContainer
    static void makeAPattern() throws IOException {
        folder = Files.createTempDirectory("turnheel");
        file = Patterns.toeUp(folder);
        content = Files.readAllBytes(file);
    }

    @AfterContainer
    static void cleanUp() throws IOException {
        Files.delete(file);
        Files.delete(folder);
    }

    /** Text that often means something: pieces of arguments between any characters. */
    @Provide
    Arbitrary<String> arguments() {
        Arbitrary<String> pieces = Arbitraries.of("foot.stitches", "cuff.height", "body.footLength", "fit.easeAround",
                "gauge.stitches", "foot.sole", "toe", "title", "cuff", "foot-length", "foot-circumference", "[", "]", "M",
                "L", "=", "=", ":", " ", "64", "-", "9 1/2", "/", "10", "mm", "cm", "in", "%", "wedge", "rib-2x2", "--",
                "own.a", "own.b", "\n", "{0}", "%n", "'");
        return Arbitraries.oneOf(pieces, pieces, pieces, Arbitraries.strings().ofMaxLength(3)).list().ofMinSize(1)
                .ofMaxSize(9).map(several -> String.join("", several));
    }

    @Property(tries = 200)
    void setTakesItOrRefusesIt(@ForAll("arguments") String argument) throws IOException {
        takenOrRefused(Run.of("set", file, "--", argument));
    }

    @Property(tries = 100)
    void whyTakesItOrRefusesIt(@ForAll("arguments") String argument) throws IOException {
        takenOrRefused(Run.of("grade", file, "--why=" + argument));
    }

    @Property(tries = 200)
    void newTakesASizeOrRefusesIt(@ForAll("arguments") String argument) throws IOException {
        Path made = folder.resolve("made.turnheel");
        Run run = Run.of("new", made, "--size=" + argument);
        assertEquals(run.exitCode() != 2, Files.deleteIfExists(made));
        takenOrRefused(run);
    }

    @Property(tries = 50)
    void newTakesAnOwnRowOrRefusesIt(@ForAll("arguments") String argument) throws IOException {
        Path made = folder.resolve("made.turnheel");
        Run run = Run.of("new", made, "--size", Patterns.M, "--own-row=" + argument);
        assertEquals(run.exitCode() != 2, Files.deleteIfExists(made));
        takenOrRefused(run);
    }

    @Property(tries = 100)
    void theProgramTakesItOrRefusesIt(@ForAll("arguments") String argument) throws IOException {
        takenOrRefused(Run.of(argument, file));
    }

    private static void takenOrRefused(Run run) throws IOException {
        assertFalse(run.err().contains("fault of Turnheel"), run.err());
        if (run.exitCode() == 2) {
            run.refused();
            assertArrayEquals(content, Files.readAllBytes(file));
        } else {
            Files.write(file, content);
        }
    }
}
