package turnheel.exchange;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.exchange.document.Document;

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
        check(graded, format, edition, target, force);
        write(out -> format.write(graded, edition, out), target, force);
    }

    /**
     * Writes an edition for each size, one file each, named after the target as {@link SizeFileNames} says. All of what
     * would stand in the way is found before the first file is written.
     *
     * @param edition what of the pattern, without a size of its own
     * @return the files by the label of their size, in the pattern's order
     * @throws ExportException as for one file; also when the format has no editions for one size
     */
    public static Map<String, Path> writeEach(Graded graded, Edition edition, Path target, boolean force)
            throws ExportException {
        ExportFormat format = ExportFormat.of(target);
        if (format.kind() == ExportFormat.Kind.WHOLE) {
            throw new ExportException(Words.text("noEditions", target.toString(), format.ending()));
        }
        Map<String, Path> files = SizeFileNames.of(target, graded.sizes().stream().map(GradedSize::label).toList());
        for (Map.Entry<String, Path> file : files.entrySet()) {
            check(graded, format, edition.onlySize(file.getKey()), file.getValue(), force);
        }
        for (Map.Entry<String, Path> file : files.entrySet()) {
            Edition its = edition.onlySize(file.getKey());
            write(out -> format.write(graded, its, out), file.getValue(), force);
        }
        return files;
    }

    private static void check(Graded graded, ExportFormat format, Edition edition, Path target, boolean force)
            throws ExportException {
        check(target, force);
        if (format.draws(edition) && !edition.drawing().showsSomething(graded)) {
            throw new ExportException(Words.text("nothingToDraw", target.toString(),
                    edition.drawing().what().name().toLowerCase(Locale.ROOT).replace('_', ' ')));
        }
    }

    /**
     * Writes a document of any kind in the format that the target's ending names. The file appears whole or not at all.
     *
     * @param force whether a file that exists is replaced
     * @throws ExportException when the ending names no format of documents, the file exists and {@code force} was not
     *     given, or it cannot be written; whatever was there before is unchanged
     */
    public static void write(Document document, Path target, boolean force) throws ExportException {
        ExportFormat format = ExportFormat.ofDocument(target);
        write(out -> format.write(document, out), target, force);
    }

    /** Writes what a file will hold. */
    interface Content {
        void write(OutputStream out) throws IOException;
    }

    /** Says early and clearly what would fail; then the file appears whole or not at all. */
    static void write(Content content, Path target, boolean force) throws ExportException {
        check(target, force);
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            content.write(bytes);
            WholeFile.write(target, bytes.toByteArray(), force);
        } catch (IOException e) {
            throw new ExportException(Words.text("failed", target.toString(), Words.reason(e)), e);
        }
    }

    /**
     * Writes a text in UTF-8. The file appears whole or not at all.
     *
     * @param force whether a file that exists is replaced
     * @throws ExportException when the file exists and {@code force} was not given, or it cannot be written; whatever
     *     was there before is unchanged
     */
    public static void writeText(String text, Path target, boolean force) throws ExportException {
        writeTexts(Map.of(target, text), force);
    }

    /**
     * Writes texts in UTF-8. What would stand in the way of one is found before the first is written.
     *
     * @throws ExportException as {@link #writeText}
     */
    public static void writeTexts(Map<Path, String> texts, boolean force) throws ExportException {
        for (Path target : texts.keySet()) {
            check(target, force);
        }
        for (Map.Entry<Path, String> text : texts.entrySet()) {
            write(out -> out.write(text.getValue().getBytes(StandardCharsets.UTF_8)), text.getKey(), force);
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
