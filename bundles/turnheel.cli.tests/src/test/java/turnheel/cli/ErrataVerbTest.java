package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ErrataVerbTest {

    @TempDir
    private Path folder;

    private Path before;
    private Path after;

    @BeforeEach
    void twoVersions() throws IOException {
        before = Patterns.cuffDown(folder);
        after = Files.copy(before, folder.resolve("after.turnheel"));
        Run.of("set", after, "cuff.rounds[L]=30").clean();
    }

    @Test
    void showsEachLineWithWhatReadsOtherwiseBelowIt() {
        List<String> lines = Run.of("errata", before, after).clean().lines();
        int line = lines.indexOf(lines.stream().filter(said -> said.startsWith("Cuff: Rep rnd 1 ")).findFirst().orElseThrow());
        assertTrue(lines.get(line + 2).strip().startsWith("L ") && lines.get(line + 2).endsWith("1 29 more"),
                lines.toString());
        assertTrue(lines.stream().anyMatch(said -> said.startsWith("cuff.rounds  L")), lines.toString());
    }

    @Test
    void tellsScriptsTheSame() throws IOException {
        JsonNode json = Run.of("errata", before, after, "--json").clean().json();
        assertEquals("cuff.rounds", json.get("inputs").get(0).get("key").asText());
        assertEquals("30", json.get("inputs").get(0).get("now").asText());
        for (JsonNode erratum : json.get("errata")) {
            assertEquals("L", erratum.get("size").asText());
        }
    }

    @Test
    void writesASheetInEveryFormatOfDocumentsAndAsATable() throws IOException {
        for (String name : List.of("sheet.md", "sheet.docx", "sheet.html", "sheet.pdf", "sheet.csv", "sheet.xlsx")) {
            Path sheet = folder.resolve(name);
            Run.of("errata", before, after, "--to", sheet).clean();
            assertTrue(Files.size(sheet) > 0, name);
            byte[] first = Files.readAllBytes(sheet);
            Run.of("errata", before, after, "--to", sheet).refused(name, "--force");
            Run.of("errata", after, before, "--to", sheet, "--force").clean();
            assertFalse(Arrays.equals(first, Files.readAllBytes(sheet)), name);
        }
        assertTrue(Files.readString(folder.resolve("sheet.md")).contains("| Place | Size | Reads | Should read |"));
    }

    @Test
    void refusesWhatIsNoSheetAndNoPattern() {
        Run.of("errata", before, after, "--to", folder.resolve("sheet.svg")).refused("sheet.svg", ".md");
        Run.of("errata", before, folder.resolve("none.turnheel")).refused("none.turnheel");
        Run.of("errata", before).refused("NEW");
    }
}
