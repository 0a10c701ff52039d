package turnheel.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.exchange.table.Grid;
import turnheel.exchange.table.TextGrid;
import turnheel.exchange.testknit.ResultTable;
import turnheel.exchange.testknit.TestKnitResults;
import turnheel.exchange.testknit.TestKnitSheet;
import turnheel.exchange.workbook.TableWorkbook;
import turnheel.exchange.workbook.WorkbookGrid;

/** Writes test-knit sheets to files, and reads them back when they were filled in. */
public final class TestKnitFiles {

    /** The endings of sheets that can be read back. */
    public static final List<String> ENDINGS = List.of(".csv", ".xlsx");

    private static final String WORKBOOK_ENDING = ".xlsx";
    private static final long LARGEST = 10_000_000;

    private TestKnitFiles() {
    }

    /** Whether a name ends as a sheet that can be read back does. */
    public static boolean isTable(String name) {
        return ENDINGS.stream().anyMatch(name.toLowerCase(Locale.ROOT)::endsWith);
    }

    private static boolean isWorkbook(Path file) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(WORKBOOK_ENDING);
    }

    /**
     * Writes the sheet of some sizes: as a table to be filled in, or as a document to be printed, by the target's
     * ending. The file appears whole or not at all.
     *
     * @param force whether a file that exists is replaced
     * @throws ExportException when the ending is neither a table's nor a document's, the file exists and {@code force}
     *     was not given, or it cannot be written; whatever was there before is unchanged
     */
    public static void write(Graded graded, List<GradedSize> sizes, Path target, boolean force) throws ExportException {
        if (!isTable(target.toString())) {
            Exports.write(TestKnitSheet.of(graded, sizes), target, force);
        } else if (isWorkbook(target)) {
            Exports.write(out -> TableWorkbook.write(Words.text("testKnit.sheet"), ResultTable.COLUMNS,
                    ResultTable.rows(graded, sizes), out), target, force);
        } else {
            Exports.writeText(ResultTable.csv(graded, sizes), target, force);
        }
    }

    /**
     * What a filled-in table holds. A file that is not there, or cannot be read, is a problem of the table like any
     * other.
     */
    public static TestKnitResults read(Path file, Graded graded) {
        String name = file.toString();
        if (!isTable(name)) {
            return unreadable("testKnit.unknownEnding", name);
        }
        if (Files.isDirectory(file)) {
            return unreadable("testKnit.isFolder", name);
        }
        if (Files.notExists(file)) {
            return unreadable("testKnit.noFile", name);
        }
        try {
            if (Files.size(file) > LARGEST) {
                return unreadable("testKnit.tooLarge", name);
            }
            byte[] content = Files.readAllBytes(file);
            Grid grid = isWorkbook(file) ? WorkbookGrid.read(content) : TextGrid.read(content);
            return TestKnitResults.read(grid, graded);
        } catch (IOException e) {
            return unreadable("testKnit.failed", name, Words.reason(e));
        }
    }

    private static TestKnitResults unreadable(String key, String... arguments) {
        return TestKnitResults.unreadable(Words.text(key, arguments));
    }
}
