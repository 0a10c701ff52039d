package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

/** One command and what came of it. */
record Run(int exitCode, String out, String err) {

    /** Runs a command in this process; paths are given as they are. */
    static Run of(Object... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exitCode = Main.run(new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, false, StandardCharsets.UTF_8),
                Arrays.stream(arguments).map(Object::toString).toArray(String[]::new));
        return new Run(exitCode, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** This run, which must have been clean. */
    Run clean() {
        assertEquals("", err);
        assertEquals(0, exitCode);
        return this;
    }

    /** This run, which must have been refused in one line that holds all of the texts. */
    Run refused(Object... texts) {
        assertEquals(2, exitCode, err);
        assertEquals("", out);
        assertEquals(1, err.lines().count(), err);
        assertTrue(err.startsWith("turnheel: ") && err.endsWith("\n"), err);
        for (Object text : texts) {
            assertTrue(err.contains(text.toString()), () -> "\"%s\" is not in: %s".formatted(text, err));
        }
        return this;
    }

    List<String> lines() {
        return out.lines().toList();
    }

    /** The fields of the line that starts with this one. */
    List<String> row(String first) {
        List<String> found = lines().stream().filter(line -> (line + " ").startsWith(first + " ")).toList();
        assertEquals(1, found.size(), () -> first + " in\n" + out);
        return List.of(found.getFirst().split(" {2,}"));
    }

    JsonNode json() {
        try {
            return new ObjectMapper().readTree(out);
        } catch (JsonProcessingException notJson) {
            throw new AssertionError(out, notJson);
        }
    }
}
