package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class YarnLeftTest {

    @TempDir
    private Path folder;

    private int legRounds(Path file, String grams) {
        return Run.of("rounds", file, "--size", "M", "--grams-left", grams, "--json").clean().json().get("legRounds").asInt();
    }

    @Test
    void tellsTheRoundsOfTheLegThatTheYarnLeftIsEnoughFor() {
        Path file = Patterns.toeUp(folder);
        Run.of("set", file, "yarn=Ledge Four: 420m/100g").clean();
        int few = legRounds(file, "15");
        int more = legRounds(file, "25");
        assertTrue(few > 0 && more > few, few + " and " + more);
        assertEquals(0, legRounds(file, "0"));
        assertTrue(Run.of("rounds", file, "--size", "M", "--grams-left", "15").clean().out()
                .startsWith("15 g are enough for " + few + " rounds of the leg in size M"));
    }

    @Test
    void refusesWhatCannotBeAnswered() {
        Path file = Patterns.toeUp(folder);
        Run.of("rounds", file, "--size", "M", "--grams-left", "15").refused("no yarn is chosen");
        Run.of("set", file, "yarn=Ledge Four: 420m/100g").clean();
        Run.of("rounds", file, "--size", "M", "--grams-left=-1").refused("between 0 and 10000");
        Run.of("rounds", file, "--size", "M", "--grams-left", "much").refused("--grams-left");
    }
}
