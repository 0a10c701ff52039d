package turnheel.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

import turnheel.engine.grading.Graded;
import turnheel.exchange.edits.EditProblem;
import turnheel.exchange.edits.Edits;
import turnheel.exchange.workbook.WorkbookReader;

/** Reads exported workbooks back that a person has edited. */
public final class WorkbookFiles {

    private static final long LARGEST = 50_000_000;

    private WorkbookFiles() {
    }

    /**
     * What was changed in a workbook since it was exported. A file that is not there, or cannot be read, is a problem
     * like any other.
     *
     * @param graded the pattern as it is now
     */
    public static Edits read(Path file, Graded graded) {
        String name = file.toString();
        if (Files.isDirectory(file)) {
            return unreadable("edits.isFolder", name);
        }
        if (Files.notExists(file)) {
            return unreadable("edits.noFile", name);
        }
        if (!name.toLowerCase(Locale.ROOT).endsWith(ExportFormat.WORKBOOK.ending())) {
            return unreadable("edits.unknownEnding", name, ExportFormat.WORKBOOK.ending());
        }
        try {
            if (Files.size(file) > LARGEST) {
                return unreadable("edits.tooLarge", name);
            }
            return WorkbookReader.read(Files.readAllBytes(file), graded, Words.text("edits.damaged", name));
        } catch (IOException e) {
            return unreadable("edits.failed", name, Words.reason(e));
        }
    }

    private static Edits unreadable(String key, String... arguments) {
        return Edits.unreadable(new EditProblem(EditProblem.Kind.UNREADABLE, "", "", "", Words.text(key, arguments)));
    }
}
