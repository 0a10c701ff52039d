package turnheel.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import turnheel.exchange.manuscript.ManuscriptText;
import turnheel.exchange.manuscript.QueryList;

/** Reads manuscripts from files, and keeps the list of their queries beside them. */
public final class ManuscriptFiles {

    /** The endings of files that can hold a manuscript. */
    public static final List<String> ENDINGS = List.of(".txt", ".md", ".docx", ".pdf");

    private static final long LARGEST = 50_000_000;

    private ManuscriptFiles() {
    }

    /** Whether a name ends as a manuscript's does. */
    public static boolean isName(String name) {
        return ENDINGS.contains(ending(name));
    }

    private static String ending(String name) {
        int dot = name.lastIndexOf('.');
        return dot < 0 ? "" : name.substring(dot).toLowerCase(Locale.ROOT);
    }

    /**
     * The text in a file.
     *
     * @throws IOException when it is not there or cannot be read; the message is for a person
     */
    public static String read(Path file) throws IOException {
        byte[] content = content(file);
        try {
            return switch (ending(file.toString())) {
                case ".docx" -> ManuscriptText.document(content);
                case ".pdf" -> ManuscriptText.pdf(content);
                default -> ManuscriptText.plain(content);
            };
        } catch (IOException damaged) {
            throw new IOException(Words.text("manuscript.failed", file.toString(), Words.reason(damaged)), damaged);
        }
    }

    private static byte[] content(Path file) throws IOException {
        String name = file.toString();
        if (Files.isDirectory(file)) {
            throw new IOException(Words.text("manuscript.isFolder", name));
        }
        if (Files.notExists(file)) {
            throw new IOException(Words.text("manuscript.noFile", name));
        }
        try {
            if (Files.size(file) > LARGEST) {
                throw new IOException(Words.text("manuscript.tooLarge", name));
            }
            return Files.readAllBytes(file);
        } catch (IOException failure) {
            throw new IOException(Words.text("manuscript.failed", name, Words.reason(failure)), failure);
        }
    }

    /**
     * The list of queries in a file; an empty one where there is no file yet.
     *
     * @throws IOException when it is no such list; the message is for a person
     */
    public static QueryList list(Path file) throws IOException {
        if (Files.notExists(file)) {
            return QueryList.EMPTY;
        }
        try {
            return QueryList.read(ManuscriptText.plain(content(file)));
        } catch (QueryList.NoQueryListException other) {
            throw new IOException(Words.text("queryList.other", file.toString(), other.getMessage()), other);
        }
    }

    /**
     * Writes a list of queries over the one before, whole or not at all.
     *
     * @throws IOException when writing failed; the list before is as it was
     */
    public static void write(QueryList list, Path file) throws IOException {
        try {
            WholeFile.write(file, ManuscriptText.bytes(list.text()), true);
        } catch (IOException failure) {
            throw new IOException(Words.text("failed", file.toString(), Words.reason(failure)), failure);
        }
    }
}
