package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SetVerbTest {

    @TempDir
    private Path folder;

    @Test
    void overridesOneSizeAndLeavesTheOther() {
        Path file = Patterns.toeUp(folder);
        Run run = Run.of("set", file, "foot.stitches[M]=60").clean();
        assertEquals(List.of("foot.stitches", "M", "–", "60"), run.row("foot.stitches"));

        Run grade = Run.of("grade", file).clean();
        assertEquals(List.of("foot.stitches", "stitches", "60*", "72"), grade.row("foot.stitches"));
        // worked by hand: 60 turn at 20, grow 3 + 10 times, and with one plain round between take 24 rounds
        assertEquals("20", grade.row("toe.alternateFrom").get(2));
        assertEquals("24", grade.row("toe.rounds").get(2));
    }

    @Test
    void setsAllSizesWithoutALabel() {
        Path file = Patterns.toeUp(folder);
        Run.of("set", file, "cuff.height=1 3/4in").clean();
        // 44.45 mm at 44 rounds over 10 cm is 19.558 rounds
        assertEquals(List.of("cuff.rounds", "rounds", "20", "20"), Run.of("grade", file).row("cuff.rounds"));
    }

    @Test
    void givesTheNumberBackToItsRuleWhenTheValueIsEmpty() {
        Path file = Patterns.toeUp(folder);
        String before = Run.of("grade", file).out();
        Run.of("set", file, "foot.stitches[M]=72", "fit.easeAround=-12 %").clean();
        Run.of("set", file, "foot.stitches[M]=", "fit.easeAround=").clean();
        assertEquals(before, Run.of("grade", file).out());
    }

    @Test
    void takesAGaugeWithoutASizeAsThatOfThePattern() {
        Path file = Patterns.toeUp(folder);
        Run.of("set", file, "gauge.stitches=30/10cm", "gauge.rounds[L]=45/10cm").clean();
        Run grade = Run.of("grade", file);
        assertTrue(grade.out().contains("30 stitches and 44 rounds over 10 cm"), grade.out());
        assertEquals(List.of("gauge.stitches", "per 10 cm", "30.0", "30.0"), grade.row("gauge.stitches"));
        assertEquals(List.of("gauge.rounds", "per 10 cm", "44.0", "45.0"), grade.row("gauge.rounds"));
    }

    @Test
    void changesWhatBelongsToTheWholePattern() {
        Path file = Patterns.toeUp(folder);
        Run.of("set", file, "title=Gull = Tern", "direction=cuff-down", "gauge=30x42/10cm", "toe=wedge",
                "increase=lifted", "heel=short-row", "turn=wrapped", "leg=straight", "length=ankle", "cuff=rib-1x1").clean();
        Run grade = Run.of("grade", file);
        assertEquals("Gull = Tern", grade.lines().getFirst());
        assertEquals("cuff-down, 30 stitches and 42 rounds over 10 cm", grade.lines().get(1));
        assertTrue(grade.out().contains("toe.tip"), grade.out());
        Run again = Run.of("set", file, "toe=wedge", "increase=lifted", "length=ankle", "cuff=rib-1x1",
                "gauge=30x42/10cm");
        assertTrue(again.clean().out().contains("nothing to change"), again.out());
    }

    @Test
    void keepsLabelsWithBracketsAndEqualsSigns() {
        Path file = folder.resolve("odd.turnheel");
        Run.of("new", file, "--size", "a=b [c]: foot-length=240mm foot-circumference=225mm").clean();
        assertEquals("72", Run.of("set", file, "foot.stitches[a=b [c]]=72").clean().row("foot.stitches").getLast());
    }

    @Test
    void doesNotTouchAFileThatSaysSoAlready() throws IOException {
        Path file = Patterns.toeUp(folder);
        Files.writeString(file, Files.readString(file).replace("    title", "        title"));
        byte[] laidOutByHand = Files.readAllBytes(file);
        Run.of("set", file, "body.footLength[M]=240 mm").clean();
        assertArrayEquals(laidOutByHand, Files.readAllBytes(file));
    }

    @Test
    void savesWhatLeavesErrorsAndSaysSo() {
        Path file = Patterns.toeUp(folder);
        // four shaping lines cannot share 66 stitches
        Run run = Run.of("set", file, "foot.stitches[M]=66");
        assertEquals(1, run.exitCode());
        assertTrue(run.err().contains("turnheel check " + file), run.err());
        assertEquals("66*", Run.of("grade", file).row("foot.stitches").get(2));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            foot.stiches[M]=64        | Did you mean foot.stitches?
            Foot.Stitches[M]=64       | Did you mean foot.stitches?
            foot.splay=3              | there is no key "foot.splay"
            tilte=Gull                | Did you mean title?
            foot.stitches[N]=64       | M L
            foot.stitches[M]=64mm     | a whole number
            foot.stitches[M]=64.5     | "64.5"
            foot.stitches[M]=-64      | between 4 and 1000
            foot.stitches[M]=many     | "many"
            body.footLength[M]=24     | a length such as 240 mm
            body.footLength[M]=24 ell | "24 ell"
            body.footLength[M]=9 m    | "9 m"
            fit.easeAround=-95 %      | between -40 and 40
            gauge.stitches=0/10cm     | gauge
            gauge.stitches=-3/10cm    | must lie between
            gauge.stitches=9999/1cm   | must lie between
            gauge.stitches=           | belongs to the whole pattern
            gauge.stitches=32         | a gauge such as 32/10 cm
            gauge=0x0/10cm            | gauge
            cuff=                     | belongs to the whole pattern
            cuff=rib-2                | rib-KxP
            title[M]=Gull             | whole pattern
            toe=square                | round wedge star
            toe.tip[M]=16             | toe.castOn
            foot.stitches             | KEY[SIZE]=VALUE
            =64                       | there is no ""
            [M]=64                    | there is no ""
            """)
    void refusesABadAssignmentAndTheGoodOneBesideIt(String bad, String says) throws IOException {
        Path file = Patterns.toeUp(folder);
        byte[] before = Files.readAllBytes(file);
        Run.of("set", file, "foot.stitches[L]=76", bad).refused(says);
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # result        | what it follows from, read off the rules in domain §§ 2 to 5
            foot.sole       | foot.stitches, foot.instep.
            heel.rows       | heel.stitches, heel.centre.
            fit.length      | body.footLength, fit.easeLength.
            toe.everyRound  | toe.alternateFrom, toe.castOn, toe.points.
            """)
    void refusesAResultAndNamesWhatItFollowsFrom(String result, String origins) throws IOException {
        Path file = Patterns.toeUp(folder);
        byte[] before = Files.readAllBytes(file);
        Run.of("set", file, result + "=30").refused(result, origins);
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void refusesToLeaveAValueThatNoPartWouldHave() throws IOException {
        Path file = Patterns.toeUp(folder);
        Run.of("set", file, "toe.castOn[L]=12").clean();
        byte[] before = Files.readAllBytes(file);
        Run.of("set", file, "toe=wedge").refused("toe.castOn", "size L", "\"toe.castOn[L]=\"");
        assertArrayEquals(before, Files.readAllBytes(file));
        Run.of("set", file, "toe=wedge", "toe.castOn[L]=").clean();
    }

    @Test
    void needsAnAssignment() {
        Run.of("set", Patterns.toeUp(folder)).refused("turnheel set", "KEY=VALUE");
    }
}
