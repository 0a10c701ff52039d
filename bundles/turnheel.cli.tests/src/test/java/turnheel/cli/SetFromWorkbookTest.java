package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person does to an exported workbook comes back as {@code set} would have done it. */
class SetFromWorkbookTest {

    @TempDir
    private Path folder;

    /** Numbers typed into cells by name; {@code null} empties the cell. */
    private static Path edit(Path workbook, Map<String, Double> typed) throws IOException {
        Path edited = workbook.resolveSibling("edited.xlsx");
        try (InputStream in = Files.newInputStream(workbook); XSSFWorkbook book = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(edited)) {
            typed.forEach((name, value) -> {
                CellReference at = new CellReference(book.getName(name).getRefersToFormula());
                XSSFCell cell = book.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
                cell.setBlank();
                if (value != null) {
                    cell.setCellValue(value);
                }
            });
            book.write(out);
        }
        return edited;
    }

    private static Path export(Path file) {
        Path workbook = file.resolveSibling("gull.xlsx");
        Run.of("export", file, "--to", workbook, "--force");
        return workbook;
    }

    @Test
    void takesInputsAndOverridesAndShowsThem() throws IOException {
        Path file = Patterns.toeUp(folder);
        Path edited = edit(export(file), Map.of("body_footLength_size1", 245.0, "heel_centre_size2", 10.0));
        Run dry = Run.of("set", file, "--from", edited, "--dry-run").clean();
        assertTrue(dry.out().endsWith("not saved (--dry-run).\n"), dry.out());
        assertEquals(List.of("body.footLength", "M", "240 mm", "245 mm"), dry.row("body.footLength"));
        Run run = Run.of("set", file, "--from", edited).clean();
        assertEquals(List.of("heel.centre", "L", "–", "10"), run.row("heel.centre"));
        assertEquals("10*", Run.of("grade", file).row("heel.centre").getLast());
        // what was taken is in the pattern now, and the workbook no longer of its state
        Run.of("set", file, "--from", edited).refused(edited, "changed since", "--force");
        Run again = Run.of("set", file, "--from", edited, "--force").clean();
        assertTrue(again.out().contains("nothing to change"), again.out());
    }

    @Test
    void savesNothingWithDryRun() throws IOException {
        Path file = Patterns.toeUp(folder);
        byte[] before = Files.readAllBytes(file);
        Run json = Run.of("set", file, "heel.centre[M]=10", "--dry-run", "--json").clean();
        assertFalse(json.json().get("saved").asBoolean());
        assertEquals("10", json.json().get("changes").get(0).get("now").asText());
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void oneBadCellRefusesAllAndDryRunListsEveryOne() throws IOException {
        Path file = Patterns.toeUp(folder);
        byte[] before = Files.readAllBytes(file);
        Path edited = edit(export(file), Map.of("body_footLength_size1", 245.0, "heel_centre_size2", 10.5,
                "foot_stitches_size1", -4.0));
        Run.of("set", file, "--from", edited, "cuff.height=30mm").refused("Counts!", "more to put right: 1");
        assertArrayEquals(before, Files.readAllBytes(file));
        Run dry = Run.of("set", file, "--from", edited, "--dry-run");
        assertEquals(2, dry.exitCode());
        assertEquals(2, dry.lines().stream().filter(line -> line.startsWith("Counts!")).count(), dry.out());
    }

    @Test
    void assignmentsComeAfterTheWorkbookAsOneChange() throws IOException {
        Path file = Patterns.toeUp(folder);
        byte[] before = Files.readAllBytes(file);
        Path edited = edit(export(file), Map.of("heel_centre_size1", 12.0));
        Run.of("set", file, "--from", edited, "foot.stiches=64").refused("Did you mean foot.stitches?");
        assertArrayEquals(before, Files.readAllBytes(file));
        Run.of("set", file, "--from", edited, "heel.centre[M]=14").clean();
        assertEquals("14*", Run.of("grade", file).row("heel.centre").get(2));
    }

    @Test
    void takesAnOwnRowsFormula() throws IOException {
        Path file = Patterns.toeUp(folder);
        Run.of("set", file, "own.half: Half = foot.stitches/2").clean();
        Path edited = export(file).resolveSibling("own.xlsx");
        try (InputStream in = Files.newInputStream(folder.resolve("gull.xlsx")); XSSFWorkbook book = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(edited)) {
            for (int size = 1; size <= 2; size++) {
                CellReference at = new CellReference(book.getName("own_half_size" + size).getRefersToFormula());
                book.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol())
                        .setCellFormula("foot_stitches_size%d/2+1".formatted(size));
            }
            book.write(out);
        }
        Run run = Run.of("set", file, "--from", edited).clean();
        assertEquals(List.of("own.half", "pattern", "Half = foot.stitches/2", "Half = foot.stitches/2+1"),
                run.row("own.half"));
        assertEquals("33", Run.of("grade", file).row("own.half").get(1).split(" +")[0]);
    }

    @Test
    void whatIsNoEditedWorkbookIsRefused() throws IOException {
        Path file = Patterns.toeUp(folder);
        Run.of("set", file, "--from", folder.resolve("none.xlsx")).refused("there is no file", "none.xlsx");
        Run.of("set", file, "--from", folder).refused("is a folder");
        Run.of("set", file, "--from", file).refused(".xlsx file");
        Run.of("set", file, "--from", Files.writeString(folder.resolve("text.xlsx"), "text")).refused("damaged");
        Run.of("set", file, "--force", "foot.stitches[M]=64").refused("--from");
        Path other = Patterns.cuffDown(folder);
        Run.of("set", file, "--from", export(other)).refused("another pattern", "\"tern\"", "\"gull\"");
    }

    /** A number of the pattern, as it is typed into the cell and as a command says it. */
    private record Typed(String key, int size, Double number, String written) {
        String name() {
            return key.replace('.', '_') + "_size" + size;
        }

        String assignment() {
            return key + "[" + (size == 1 ? "M" : "L") + "]=" + written;
        }
    }

    @Provide
    Arbitrary<List<Typed>> changes() {
        Arbitrary<Typed> lengths = Combinators.combine(Arbitraries.of("body.footLength", "body.footCircumference",
                "body.heelCircumference", "body.legHeight", "cuff.height"), Arbitraries.integers().between(1, 2),
                Arbitraries.integers().between(900, 3900)).as((key, size, tenths) -> new Typed(key, size, tenths / 10.0,
                        tenths / 10.0 + "mm"));
        Arbitrary<Typed> counts = Combinators.combine(Arbitraries.of("foot.stitches", "foot.instep", "heel.stitches",
                "heel.centre", "toe.castOn", "foot.rounds", "leg.stitches", "cuff.rounds"),
                Arbitraries.integers().between(1, 2), Arbitraries.integers().between(8, 90))
                .as((key, size, count) -> new Typed(key, size, (double) count, Integer.toString(count)));
        Arbitrary<Typed> shares = Combinators.combine(Arbitraries.integers().between(1, 2),
                Arbitraries.integers().between(-300, 300)).as((size, tenths) -> new Typed("fit.easeAround", size,
                        tenths / 10.0, tenths / 10.0 + "%"));
        Arbitrary<Typed> gauges = Combinators.combine(Arbitraries.of("gauge.stitches", "gauge.rounds"),
                Arbitraries.integers().between(1, 2), Arbitraries.integers().between(200, 900))
                .as((key, size, tenths) -> new Typed(key, size, tenths / 10.0, tenths / 10.0 + "/10cm"));
        Arbitrary<Typed> emptied = Combinators.combine(Arbitraries.of("foot.stitches", "heel.centre", "body.legHeight"),
                Arbitraries.integers().between(1, 2)).as((key, size) -> new Typed(key, size, null, ""));
        return Arbitraries.oneOf(lengths, counts, shares, gauges, emptied).list().ofMinSize(1).ofMaxSize(8)
                .uniqueElements(Typed::name)
                // a gauge typed into both sizes is the pattern's, which a table test shows
                .filter(all -> all.stream().filter(typed -> typed.key().startsWith("gauge")).count() < 2);
    }

    @Property(tries = 60)
    void anyChangesMakeTheFileThatSetMakes(@ForAll("changes") List<Typed> changes) throws IOException {
        Path scratch = Files.createTempDirectory("turnheel");
        try {
            Path file = Patterns.toeUp(scratch);
            Run.of("set", file, "foot.stitches[L]=76", "heel.centre[M]=12");
            Path workbook = export(file);
            Path twin = Files.copy(file, scratch.resolve("twin.turnheel"), StandardCopyOption.REPLACE_EXISTING);
            Map<String, Double> cells = new LinkedHashMap<>();
            List<Object> command = new ArrayList<>(List.of("set", twin));
            for (Typed typed : changes) {
                cells.put(typed.name(), typed.number());
                command.add(typed.assignment());
            }
            Run byHand = Run.of(command.toArray());
            Run fromBook = Run.of("set", file, "--from", edit(workbook, cells));
            assertEquals(byHand.exitCode(), fromBook.exitCode(), fromBook.err());
            assertEquals(Files.readString(twin), Files.readString(file));
        } finally {
            for (String name : List.of("gull.turnheel", "twin.turnheel", "gull.xlsx", "edited.xlsx")) {
                Files.deleteIfExists(scratch.resolve(name));
            }
            Files.delete(scratch);
        }
    }
}
