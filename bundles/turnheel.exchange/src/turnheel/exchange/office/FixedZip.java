package turnheel.exchange.office;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * Packs a zip file anew so that nothing in it depends on when it was made: the parts in the order of their names,
 * all with one fixed time. The same parts give the same bytes on one Java platform; another platform's deflate may
 * pack them differently, the parts themselves are the same everywhere.
 */
public final class FixedZip {

    /** Must be read first (ECMA-376 part 2 lets it stand anywhere, but some readers expect it here). */
    private static final String FIRST = "[Content_Types].xml";

    /** The time of every document and of every part in it: an export has no clock, so that it can be compared. */
    public static final LocalDateTime TIME = LocalDateTime.of(2000, 1, 1, 0, 0);

    private FixedZip() {
    }

    /** Writes the parts of {@code zip} anew; the stream is not closed. */
    public static void copy(byte[] zip, OutputStream out) throws IOException {
        Map<String, byte[]> parts = new TreeMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                parts.put(entry.getName(), in.readAllBytes());
            }
        }
        ZipOutputStream packed = new ZipOutputStream(out);
        byte[] first = parts.remove(FIRST);
        if (first != null) {
            write(packed, FIRST, first);
        }
        for (Map.Entry<String, byte[]> part : parts.entrySet()) {
            write(packed, part.getKey(), part.getValue());
        }
        packed.finish();
    }

    private static void write(ZipOutputStream packed, String name, byte[] content) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(TIME);
        packed.putNextEntry(entry);
        packed.write(content);
        packed.closeEntry();
    }
}
