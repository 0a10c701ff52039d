package turnheel.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import turnheel.exchange.sizes.SizeTableReading;

class SizeFilesTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"mine.csv, ','", "mine.TSV, '\t'"})
    void readsByTheEnding(String name, String separator) throws IOException {
        Path file = Files.writeString(folder.resolve(name),
                "size" + separator + "foot-length\nM" + separator + "24 cm\n");
        SizeTableReading reading = SizeFiles.read(file);
        assertEquals(0, reading.problems().size());
        assertEquals("M", reading.sizes().getFirst().label());
    }

    @Test
    void whatCannotBeReadIsAProblem() throws IOException {
        Files.createDirectory(folder.resolve("a.csv"));
        Files.write(folder.resolve("text.xlsx"), new byte[] {1, 2, 3});
        Files.write(folder.resolve("large.csv"), new byte[10_000_001]);
        says("none.csv", "no file");
        says("a.csv", "folder");
        says("sizes.ods", ".csv, .tsv or .xlsx");
        says("text.xlsx", "no .xlsx workbook");
        says("large.csv", "10 MB");
    }

    private void says(String name, String expected) {
        SizeTableReading reading = SizeFiles.read(folder.resolve(name));
        assertTrue(reading.sizes().isEmpty());
        String sentence = reading.errors().getFirst().sentence();
        assertTrue(sentence.contains(expected) && !sentence.contains("{"), sentence);
    }
}
