package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of the designer, from the command line into the file and back. The socks have 64 and 72 stitches. */
class OwnRowsTest {

    private static final String QUARTER = "own.quarter: A quarter = foot.stitches / 4";

    @TempDir
    private Path folder;

    private Path sock(String... rows) {
        String[] options = new String[2 * rows.length];
        for (int i = 0; i < rows.length; i++) {
            options[2 * i] = "--own-row";
            options[2 * i + 1] = rows[i];
        }
        return Patterns.with(folder.resolve("own.turnheel"), options);
    }

    @Test
    void areMadeWithThePatternAndStandLastInTheTable() {
        Run grade = Run.of("grade", sock(QUARTER, "own.tenth=10%*own.quarter")).clean();
        assertEquals(List.of("own.quarter", "16", "18"), grade.row("own.quarter"));
        assertEquals(List.of("own.tenth", "1.600", "1.800"), grade.row("own.tenth"));
        assertTrue(grade.lines().getLast().startsWith("own.tenth"), grade.out());
    }

    @Test
    void areNamedAsOwnForScripts() {
        JsonNode rows = Run.of("grade", sock(QUARTER), "--json").clean().json().get("rows");
        assertEquals("{'key':'own.quarter','part':'own','unit':'','values':[16,18],'sources':['own','own']}"
                .replace('\'', '"'), rows.get(rows.size() - 1).toString());
    }

    @Test
    void giveTheirReason() {
        Path file = sock(QUARTER);
        assertEquals("""
                A quarter in size M is 16 (own row).
                = Foot stitches ÷ 4
                = 64 ÷ 4
                Made from: foot.stitches
                Read by: nothing
                """, Run.of("grade", file, "--why", "own.quarter[M]").clean().out());
        Run why = Run.of("grade", file, "--why", "foot.stitches[M]").clean();
        assertTrue(why.lines().getLast().endsWith("own.quarter"), why.out());
        Run.of("grade", file, "--why", "own.quartre[M]").refused("Did you mean own.quarter?");
    }

    @Test
    void areAddedChangedAndDropped() throws IOException {
        Path file = sock();
        String before = Files.readString(file);
        assertEquals(List.of("own.half", "pattern", "–", "foot.stitches/2"),
                Run.of("set", file, "own.half=foot.stitches/2").clean().row("own.half"));
        assertEquals(List.of("own.half", "pattern", "foot.stitches/2", "Half = foot.instep"),
                Run.of("set", file, "own.half: Half = foot.instep").clean().row("own.half"));
        // the label stays where none is given
        Run.of("set", file, "own.half==foot.sole").clean();
        assertTrue(Files.readString(file).contains(
                "<ownRow key=\"own.half\" label=\"Half\" formula=\"=foot.sole\"/>"), Files.readString(file));
        Run.of("set", file, "own.half=").clean();
        assertEquals(before, Files.readString(file));
    }

    @Test
    void keepTheirPlaceWhenTheyChange() {
        Path file = sock("own.b=1", "own.a=2");
        Run.of("set", file, "own.b=3").clean();
        List<String> own = Run.of("grade", file).lines().stream().filter(line -> line.startsWith("own.")).toList();
        assertEquals("own.b", own.getFirst().split(" ")[0]);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            own.bad=1/                    | own.unread
            own.bad=LOG(foot.stitches)    | own.unread
            own.bad=foot.stiches          | own.unknown-key
            own.bad=own.bad+1             | own.circular
            own.bad=1/(foot.stitches-64)  | own.no-number
            """)
    void areKeptWhenTheyAreWrongAndAskedAbout(String row, String check) throws IOException {
        Path file = sock();
        Run set = Run.of("set", file, row);
        assertEquals(1, set.exitCode(), set.err());
        assertTrue(Files.readString(file).contains("formula=\"" + row.substring(row.indexOf('=') + 1) + "\""));
        JsonNode query = Run.of("check", file, "--json").json().get("queries").get(0);
        assertEquals(List.of(check, "own.bad"), List.of(query.get("id").asText(), query.get("key").asText()));
        assertEquals("–", Run.of("grade", file).row("own.bad").get(1));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            own.none=              | there is no own row own.none
            own.Half=1             | own. and a name
            own.=1                 | own. and a name
            own.a-b=1              | own. and a name
            own.quarter[M]=1       | without a size
            own.QUARTER=1          | own. and a name
            own.quarTer=1          | own.quarter is there already
            own.x                  | KEY=VALUE
            """)
    void areRefusedWhereTheyAreNone(String change, String says) throws IOException {
        Path file = sock(QUARTER);
        byte[] before = Files.readAllBytes(file);
        Run.of("set", file, change).refused(says);
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            half=foot.stitches/2    | own. and a name
            own.half                | own. and a name
            own.half=               | own. and a name
            foot.stitches=64        | own. and a name
            """)
    void areRefusedInANewPatternToo(String row, String says) {
        Path file = folder.resolve("new.turnheel");
        Run.of("new", file, "--size", Patterns.M, "--own-row", row).refused(says);
        assertFalse(Files.exists(file));
        Run.of("new", file, "--size", Patterns.M, "--own-row", QUARTER, "--own-row", QUARTER).refused("two own rows");
    }

    @Test
    void refuseALabelThatFitsNoTable() {
        Run.of("set", sock(), "own.x: %s = 1".formatted("L".repeat(41))).refused("40 characters");
    }

    @Test
    void takeFormulasFromFilesThatSomebodyElseWrote() throws IOException {
        Path file = sock(QUARTER);
        Files.writeString(file, Files.readString(file).replace("foot.stitches / 4", "&quot;&#10;=cmd|'/C calc'!A0"));
        Run check = Run.of("check", file);
        assertEquals(1, check.exitCode());
        assertTrue(check.out().contains("own.unread"), check.out());
        Files.writeString(file, Files.readString(file).replace("own.quarter", "foot.stitches"));
        Run.of("grade", file).refused("foot.stitches", "own row");
    }
}
