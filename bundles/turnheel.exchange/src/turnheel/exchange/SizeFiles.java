package turnheel.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import turnheel.exchange.sizes.SizeTableReader;
import turnheel.exchange.sizes.SizeTableReading;

/** Reads tables of sizes from files. */
public final class SizeFiles {

    /** The endings of files that can hold a table of sizes. */
    public static final List<String> ENDINGS = List.of(".csv", ".tsv", ".xlsx");

    private static final String WORKBOOK_ENDING = ".xlsx";
    private static final long LARGEST = 10_000_000;

    private SizeFiles() {
    }

    /** Whether a name ends as a file of sizes does. */
    public static boolean isName(String name) {
        return ENDINGS.stream().anyMatch(name.toLowerCase(Locale.ROOT)::endsWith);
    }

    /** What a file holds. A file that is not there, or cannot be read, is a problem of the table like any other. */
    public static SizeTableReading read(Path file) {
        String name = file.toString();
        if (!isName(name)) {
            return unreadable("sizes.unknownEnding", name);
        }
        if (Files.isDirectory(file)) {
            return unreadable("sizes.isFolder", name);
        }
        if (Files.notExists(file)) {
            return unreadable("sizes.noFile", name);
        }
        try {
            if (Files.size(file) > LARGEST) {
                return unreadable("sizes.tooLarge", name);
            }
            byte[] content = Files.readAllBytes(file);
            return name.toLowerCase(Locale.ROOT).endsWith(WORKBOOK_ENDING) ? SizeTableReader.workbook(content)
                    : SizeTableReader.text(content);
        } catch (IOException e) {
            return unreadable("sizes.failed", name, Words.reason(e));
        }
    }

    private static SizeTableReading unreadable(String key, String... arguments) {
        return SizeTableReading.unreadable(Words.text(key, arguments));
    }
}
