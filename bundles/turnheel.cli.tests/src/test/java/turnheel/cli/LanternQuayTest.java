package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The examples are what their readme says, and what this state of the program makes of it. */
class LanternQuayTest {

    private static final Path EXAMPLES = Path.of(System.getProperty("basedir", "."), "../../examples/lantern-quay");

    @TempDir
    private Path folder;

    static List<Path> patterns() throws IOException {
        return files(EXAMPLES).stream().filter(file -> file.toString().endsWith(".turnheel")).toList();
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().matches(".*\\.(turnheel|xlsx|csv)")).sorted().toList();
        }
    }

    @Test
    void theCommandsOfTheReadmeMakeEveryFileByteForByte() throws IOException {
        for (String command : Commands.in(Files.readString(EXAMPLES.resolve("README.md")))) {
            Commands.run(command, folder).clean();
        }
        List<Path> kept = files(EXAMPLES);
        assertEquals(kept.stream().map(Path::getFileName).toList(),
                files(folder).stream().map(Path::getFileName).toList());
        for (Path file : kept) {
            assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(folder.resolve(file.getFileName())),
                    () -> file.getFileName() + " differs; if that is right, make it again as README.md says");
        }
    }

    @Test
    void thereAreSocksEachWayInFiveToNineSizes() throws IOException {
        assertEquals(3, patterns().size());
        for (Path pattern : patterns()) {
            int sizes = Run.of("grade", pattern, "--json").clean().json().get("sizes").size();
            assertTrue(sizes >= 5 && sizes <= 9, pattern + " has " + sizes);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("patterns")
    void nothingIsLeftToLookAt(Path pattern) {
        assertEquals("no queries\n", Run.of("check", pattern).clean().out());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("patterns")
    void everySizeGrowsAndEveryPartHasRounds(Path pattern) {
        JsonNode json = Run.of("grade", pattern, "--json").clean().json();
        for (JsonNode row : json.get("rows")) {
            if (row.get("key").asText().equals("foot.stitches")) {
                for (int i = 1; i < row.get("values").size(); i++) {
                    assertTrue(row.get("values").get(i).asInt() > row.get("values").get(i - 1).asInt(), row.toString());
                }
            }
        }
        for (JsonNode size : json.get("sizes")) {
            JsonNode rounds = Run.of("rounds", pattern, "--size", size.asText(), "--json").clean().json();
            assertEquals(5, rounds.get("parts").size());
            rounds.get("parts").forEach(part -> assertTrue(part.get("rounds").size() > 0, part.toString()));
        }
    }
}
