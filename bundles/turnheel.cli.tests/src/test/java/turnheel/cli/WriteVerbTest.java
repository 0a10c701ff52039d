package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WriteVerbTest {

    @TempDir
    private Path folder;

    @Test
    void printsThePatternOfAllSizes() {
        Run run = Run.of("write", Patterns.toeUp(folder)).clean();
        // 64 and 72 stitches: twenty-four and thirty rounds from 8, domain § 3
        assertTrue(run.lines().contains("Sizes: M (L)"), run.out());
        assertTrue(run.lines().contains("Rep inc rnd and closing rnd 10 (11) more times. 64 (72) sts."), run.out());
    }

    @Test
    void printsOneSize() {
        Run run = Run.of("write", Patterns.toeUp(folder), "--size", "L").clean();
        assertTrue(run.lines().contains("Rep inc rnd and closing rnd 11 more times. 72 sts."), run.out());
        Run.of("write", folder.resolve("gull.turnheel"), "--size", "XL").refused("XL", "M, L");
    }

    @Test
    void writesTextAndMarkdown() throws IOException {
        Path file = Patterns.toeUp(folder);
        Path text = folder.resolve("gull.txt");
        assertEquals(text + ": written.\n", Run.of("write", file, "--to", text).clean().out());
        assertEquals(Run.of("write", file).out(), Files.readString(text));
        Path markdown = folder.resolve("GULL.MD");
        Run.of("write", file, "--to", markdown).clean();
        assertTrue(Files.readString(markdown).contains("\n## Toe\n"));
        Run.of("write", file, "--to", text).refused(text, "--force");
        Run.of("write", file, "--to", text, "--force").clean();
        Run.of("write", file, "--to", folder.resolve("gull.doc")).refused("gull.doc", ".md");
        assertFalse(Files.exists(folder.resolve("gull.doc")));
    }

    @Test
    void writesAnEditionForEverySize() throws IOException {
        Path file = Patterns.toeUp(folder);
        for (String ending : new String[] {".txt", ".md"}) {
            Path medium = folder.resolve("gull-M" + ending);
            Path large = folder.resolve("gull-L" + ending);
            assertEquals(medium + ": written.\n" + large + ": written.\n",
                    Run.of("write", file, "--each-size", "--to", folder.resolve("gull" + ending)).clean().out());
            Path alone = folder.resolve("alone" + ending);
            Run.of("write", file, "--size", "L", "--to", alone).clean();
            assertEquals(Files.readString(alone), Files.readString(large));
            assertFalse(Files.exists(folder.resolve("gull" + ending)));
            Files.delete(medium);
            Run.of("write", file, "--each-size", "--to", folder.resolve("gull" + ending)).refused(large, "--force");
            assertFalse(Files.exists(medium));
        }
        Run.of("write", file, "--each-size").refused("--to");
        Run.of("write", file, "--each-size", "--size", "M", "--to", folder.resolve("x.txt")).refused("--size");
    }

    @Test
    void putsLongListsIntoSmallTables() {
        Path file = Patterns.with(folder.resolve("gull.turnheel"), "--size", "XL: foot-length=275mm foot-circumference=265mm "
                + "ankle-circumference=250mm heel-circumference=360mm leg-height=250mm", "--size",
                "XXL: foot-length=290mm foot-circumference=280mm ankle-circumference=265mm heel-circumference=380mm "
                        + "leg-height=260mm");
        Run run = Run.of("write", file, "--tables", "16").clean();
        assertTrue(run.out().contains("\nMeasurements and materials: what A"), run.out());
        // the feet of 225, 250, 265 and 280 mm, as they were given
        assertTrue(run.out().contains("\nTo fit: foot circumference A cm / B in; foot length C cm / D in\n"), run.out());
        assertTrue(run.out().contains("Size     A\nM     22.5\nL       25\nXL    26.5\nXXL     28\n"), run.out());
        assertFalse(Run.of("write", file, "--tables", "400").clean().out().contains("what A"));
        Run.of("write", file, "--tables", "3").refused("--tables 3", "16", "400");
    }

    @Test
    void writesInAHouseStyleThatShips() {
        Run run = Run.of("write", Patterns.toeUp(folder), "--style", "longhand").clean();
        assertTrue(run.out().contains("Repeat increase round and closing round 10 [11] more times. 64 [72] stitches.\n"),
                run.out());
        Run.of("write", folder.resolve("gull.turnheel"), "--style", "longhnad").refused("longhnad",
                "Did you mean longhand");
    }

    @Test
    void writesInAHouseStyleOfOnesOwn() throws IOException {
        Path file = Patterns.toeUp(folder);
        Path style = Files.writeString(folder.resolve("ours.properties"), """
                sized.opening=/
                sized.separator=/
                sized.closing=
                lengths=cm
                word.name.increase=Growing rnd
                """);
        Run run = Run.of("write", file, "--style", style).clean();
        assertTrue(run.out().contains("Rep growing rnd and closing rnd 10/11 more times. 64/72 sts.\n"), run.out());
        Files.writeString(style, "sized.dsah=x");
        Run.of("write", file, "--style", style).refused(style, "sized.dsah", "sized.dash");
        Files.writeString(style, "sized.dash=\\u12");
        Run.of("write", file, "--style", style).refused(style);
        Files.write(style, "sized.dash=é".getBytes(StandardCharsets.ISO_8859_1));
        Run.of("write", file, "--style", style).refused(style, "UTF-8");
        Run.of("write", file, "--style", folder.resolve("no.properties")).refused("no.properties");
    }

    @Test
    void takesTheTextApartForScripts() {
        JsonNode json = Run.of("write", Patterns.toeUp(folder), "--json").clean().json();
        assertEquals("[\"M\",\"L\"]", json.get("sizes").toString());
        JsonNode last = null;
        for (JsonNode paragraph : json.get("paragraphs")) {
            if (paragraph.get("text").asText().startsWith("Rep inc rnd")) {
                last = paragraph;
            }
        }
        assertEquals("instruction", last.get("role").asText());
        assertEquals("[{\"words\":\"Rep inc rnd and closing rnd \"},{\"values\":[\"10\",\"11\"]},"
                + "{\"words\":\" more times. \"},{\"values\":[\"64\",\"72\"]},{\"words\":\" sts.\"}]",
                last.get("pieces").toString());
    }

    @Test
    void writesAPatternWithErrorsAndSaysSo() {
        Path file = Patterns.toeUp(folder);
        Run.of("set", file, "foot.stitches[M]=66");
        Run run = Run.of("write", file);
        assertEquals(1, run.exitCode());
        assertTrue(run.out().contains("size M is not written"), run.out());
        assertEquals(0, Run.of("write", file, "--size", "L").exitCode());
    }
}
