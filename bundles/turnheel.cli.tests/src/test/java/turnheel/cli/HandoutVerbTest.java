package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HandoutVerbTest {

    @TempDir
    private Path folder;

    @Test
    void showsAPageForEachTechnique() {
        String all = Run.of("handout", Patterns.toeUp(folder)).clean().out();
        for (String page : new String[] {"Cast-on: ", "Toe: Round toe", "Heel: Short-row heel", "Cuff: 2×2 rib",
            "Last stitches: "}) {
            assertTrue(all.contains("\n" + page), page);
        }
        // by hand: of 72 stitches the turn is at 24, so the fourth increase round of L is the fourth round still
        assertTrue(all.contains("Increase round 4"), all);
    }

    @Test
    void showsThePartsAndSizeThatAreAskedFor() {
        Path file = Patterns.toeUp(folder);
        String toe = Run.of("handout", file, "--part", "toe", "--size", "L").clean().out();
        assertTrue(toe.contains("Where am I? Size L"), toe);
        assertFalse(toe.contains("Heel: "), toe);
        String both = Run.of("handout", file, "--part", "toe", "--part", "cast-on").clean().out();
        assertTrue(both.indexOf("\nCast-on: ") < both.indexOf("\nToe: "), both);
    }

    @Test
    void practisesInThickYarn() {
        String practice = Run.of("handout", Patterns.cuffDown(folder), "--practice").clean().out();
        assertTrue(practice.contains("19 stitches over 10 cm"), practice);
        assertTrue(practice.contains("the toe has come to its tip"), practice);
        assertTrue(practice.contains("Hand-knitted soles slip"), practice);
    }

    @Test
    void refusesWhatIsNotThere() {
        Path file = Patterns.toeUp(folder);
        Run.of("handout", file, "--part", "tow").refused("--part", "tow", "toe");
        Run.of("handout", file, "--part", "gusset").refused("gusset", "cast-on, toe, heel, cuff, closing");
        Run.of("handout", file, "--size", "XS").refused("XS", "M, L");
        Run.of("handout", file, "--practice", "--size", "M").refused("--practice", "--size");
        Run.of("handout", file, "--to", folder.resolve("toe.xlsx")).refused("toe.xlsx");
        assertFalse(Files.exists(folder.resolve("toe.xlsx")));
        Run.of("handout", file, "--to", file).refused("is there already", "--force");
    }
}
