package turnheel.model;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

import turnheel.model.DocumentProblem.Kind;
import turnheel.model.pattern.Pattern;

/**
 * Pattern files, in and out. A file holds inputs and overrides only, in UTF-8; what cannot be read in full is
 * refused in full, so that saving never loses anything. Works with and without OSGi.
 */
public final class PatternFiles {

    /** How the names of pattern files end, without the dot. */
    public static final String EXTENSION = "turnheel";
    /**
     * The version of the file format that this class writes, and the newest that it reads. There was none before it.
     */
    public static final int FORMAT = 1;

    private static final int MOST_MEGABYTES = 8;

    private PatternFiles() {
    }

    /**
     * Reads a file.
     *
     * @return the document, in an EMF resource of its own
     * @throws DocumentException when it is not there, cannot be read or is not a pattern file of this format
     */
    public static Pattern load(Path file) throws DocumentException {
        try (InputStream content = Files.newInputStream(file)) {
            return load(content, file.toString());
        } catch (NoSuchFileException missing) {
            throw failed(file.toString(), Kind.NOT_THERE);
        } catch (IOException unreadable) {
            throw failed(file.toString(), Kind.UNREADABLE, ProblemWords.reason(unreadable));
        }
    }

    /**
     * Reads a file's content.
     *
     * @param name the file's name for messages
     * @return the document, in an EMF resource of its own
     * @throws DocumentException when it cannot be read or is not a pattern file of this format
     */
    public static Pattern load(InputStream content, String name) throws DocumentException {
        Pattern pattern = read(content, name);
        new PatternResource(URI.createFileURI(name)).getContents().add(pattern);
        return pattern;
    }

    /**
     * Writes the document, whole or not at all, in place of what the file held.
     *
     * @throws DocumentException when that failed; the file is then as before
     */
    public static void save(Pattern pattern, Path file) throws DocumentException {
        byte[] content = bytes(pattern, file.toString());
        try {
            WholeFile.write(file, content);
        } catch (IOException unwritable) {
            throw failed(file.toString(), Kind.UNWRITABLE, ProblemWords.reason(unwritable));
        }
    }

    /**
     * The content of the document's file; the same document gives the same bytes.
     *
     * @param name the file's name for messages
     * @throws DocumentException when a text holds a character that no file can keep
     */
    public static byte[] bytes(Pattern pattern, String name) throws DocumentException {
        requireWritableTexts(pattern, name);
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        try {
            PatternResource.write(pattern, content);
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return content.toByteArray();
    }

    static Pattern read(InputStream content, String name) throws DocumentException {
        int most = MOST_MEGABYTES << 20;
        byte[] bytes;
        try {
            bytes = content.readNBytes(most + 1);
        } catch (IOException unreadable) {
            throw failed(name, Kind.UNREADABLE, ProblemWords.reason(unreadable));
        }
        if (bytes.length > most) {
            throw failed(name, Kind.TOO_LARGE, Integer.toString(MOST_MEGABYTES));
        }
        return PatternReader.read(decode(bytes, name), name);
    }

    private static String decode(byte[] bytes, String name) throws DocumentException {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        CharBuffer characters = CharBuffer.allocate(bytes.length);
        boolean broken = decoder.decode(ByteBuffer.wrap(bytes), characters, true).isError();
        String text = characters.flip().toString();
        if (broken) {
            Position position = new SourceText(text).position(text.length());
            throw new DocumentException(name, List.of(DocumentProblem.at(position, Kind.NOT_UTF8)));
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static void requireWritableTexts(Pattern pattern, String name) throws DocumentException {
        requireWritableTexts((EObject) pattern, name);
        TreeIterator<EObject> inside = pattern.eAllContents();
        while (inside.hasNext()) {
            requireWritableTexts(inside.next(), name);
        }
    }

    private static void requireWritableTexts(EObject object, String name) throws DocumentException {
        for (EAttribute attribute : object.eClass().getEAllAttributes()) {
            if (object.eGet(attribute) instanceof String text) {
                var unwritable = text.codePoints().filter(character -> !isXml(character)).findFirst();
                if (unwritable.isPresent()) {
                    throw failed(name, Kind.UNWRITABLE_TEXT, FileNames.of(attribute),
                            "%04X".formatted(unwritable.getAsInt()));
                }
            }
        }
    }

    /** XML 1.0, production 2: all but most control characters, half surrogate pairs and two non-characters. */
    private static boolean isXml(int character) {
        return character == '\t' || character == '\n' || character == '\r' || character >= 0x20 && character <= 0xD7FF
                || character >= 0xE000 && character <= 0xFFFD || character >= 0x10000;
    }

    private static DocumentException failed(String name, Kind kind, String... values) {
        return new DocumentException(name, List.of(DocumentProblem.at(Position.NONE, kind, values)));
    }
}
