package turnheel.exchange;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

import turnheel.engine.grading.Graded;

/** Exports graded patterns to files. */
public final class Exports {

    private Exports() {
    }

    /** Writes a graded pattern in its usual edition. */
    public static void write(Graded graded, Path target, boolean force) throws ExportException {
        write(graded, Edition.usual(), target, force);
    }

    /**
     * Writes a graded pattern in the format that the target's ending names. The file appears whole or not at all.
     *
     * @param edition what of the pattern, as far as the format can leave something out
     * @param force whether a file that exists is replaced
     * @throws ExportException when the ending is unknown, the file exists and {@code force} was not given, or it
     *     cannot be written, or there is nothing to draw; whatever was there before is unchanged
     */
    public static void write(Graded graded, Edition edition, Path target, boolean force) throws ExportException {
        ExportFormat format = ExportFormat.of(target);
        check(target, force);
        if (format.kind() == ExportFormat.Kind.DRAWN && !edition.drawing().showsSomething(graded)) {
            throw new ExportException(Words.text("nothingToDraw", target.toString(),
                    edition.drawn().name().toLowerCase(Locale.ROOT)));
        }
        try {
            ByteArrayOutputStream content = new ByteArrayOutputStream();
            format.write(graded, edition, content);
            WholeFile.write(target, content.toByteArray(), force);
        } catch (IOException e) {
            throw new ExportException(Words.text("failed", target.toString(), Words.reason(e)), e);
        }
    }

    /**
     * Writes a text in UTF-8. The file appears whole or not at all.
     *
     * @param force whether a file that exists is replaced
     * @throws ExportException when the file exists and {@code force} was not given, or it cannot be written; whatever was
     *     there before is unchanged
     */
    public static void writeText(String text, Path target, boolean force) throws ExportException {
        check(target, force);
        try {
            WholeFile.write(target, text.getBytes(StandardCharsets.UTF_8), force);
        } catch (IOException e) {
            throw new ExportException(Words.text("failed", target.toString(), Words.reason(e)), e);
        }
    }

    /** Says early and clearly what would fail. */
    private static void check(Path target, boolean force) throws ExportException {
        if (Files.isDirectory(target)) {
            throw new ExportException(Words.text("isFolder", target.toString()));
        }
        if (Files.exists(target) && !force) {
            throw new ExportException(Words.text("exists", target.toString()));
        }
        if (Files.exists(target) && !Files.isWritable(target)) {
            // Renaming over it would succeed: a write-protected file is protected by its folder only.
            throw new ExportException(Words.text("protected", target.toString()));
        }
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null || Files.notExists(folder)) {
            throw new ExportException(Words.text("noFolder", target.toString(), String.valueOf(folder)));
        }
        if (!Files.isDirectory(folder)) {
            throw new ExportException(Words.text("notAFolder", target.toString(), folder.toString()));
        }
    }
}
