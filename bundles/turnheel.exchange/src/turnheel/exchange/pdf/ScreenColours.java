package turnheel.exchange.pdf;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The colours that the numbers of a file stand for: those of IEC 61966-2-1 (sRGB), as a profile after ICC.1:2004-10
 * (version 4.2). Made here, since the one of the Java platform differs from release to release and files must not.
 */
final class ScreenColours {

    /** How the colours are called in the file. */
    static final String NAME = "sRGB IEC61966-2.1";

    private static final int HEADER_LENGTH = 128;
    private static final int ENTRY_LENGTH = 12;
    private static final int VERSION = 0x04200000;
    private static final int FIXED_POINT = 0x10000;
    /** A curve of a power above a straight piece. */
    private static final short POWER_WITH_STRAIGHT = 3;
    /** The white of the space in which profiles meet (D50). */
    private static final double[] WHITE = {0.9642, 1.0, 0.8249};

    private ScreenColours() {
    }

    /** The profile as a file; the primaries are those of sRGB, adapted to that white as the standard asks. */
    static byte[] profile() {
        byte[] curve = tag("para", ByteBuffer.allocate(24).putShort(POWER_WITH_STRAIGHT).putShort((short) 0)
                .put(fixed(2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045)));
        Map<String, byte[]> tags = new LinkedHashMap<>();
        tags.put("desc", words(NAME));
        tags.put("cprt", words("No copyright, use freely"));
        tags.put("wtpt", place(WHITE));
        tags.put("rXYZ", place(0.436066, 0.222488, 0.013916));
        tags.put("gXYZ", place(0.385147, 0.716873, 0.097076));
        tags.put("bXYZ", place(0.143066, 0.060608, 0.714096));
        tags.put("rTRC", curve);
        tags.put("gTRC", curve);
        tags.put("bTRC", curve);
        return assembled(tags);
    }

    private static byte[] assembled(Map<String, byte[]> tags) {
        ByteBuffer table = ByteBuffer.allocate(Integer.BYTES + tags.size() * ENTRY_LENGTH).putInt(tags.size());
        ByteArrayOutputStream contents = new ByteArrayOutputStream();
        int start = HEADER_LENGTH + table.capacity();
        tags.forEach((name, content) -> {
            table.put(letters(name)).putInt(start + contents.size()).putInt(content.length);
            contents.writeBytes(content);
        });
        int length = start + contents.size();
        return ByteBuffer.allocate(length).put(header(length)).put(table.array()).put(contents.toByteArray()).array();
    }

    private static byte[] header(int length) {
        return ByteBuffer.allocate(HEADER_LENGTH).putInt(length).putInt(0).putInt(VERSION).put(letters("mntrRGB XYZ "))
                // a date is asked for; any will do, and it must stay
                .putShort((short) 2000).putShort((short) 1).putShort((short) 1).putShort((short) 0).putInt(0)
                .put(letters("acsp")).position(68).put(fixed(WHITE)).array();
    }

    private static byte[] place(double... coordinates) {
        return tag("XYZ ", ByteBuffer.allocate(coordinates.length * Integer.BYTES).put(fixed(coordinates)));
    }

    /** One record of United States English. */
    private static byte[] words(String text) {
        byte[] letters = text.getBytes(StandardCharsets.UTF_16BE);
        return tag("mluc", ByteBuffer.allocate(20 + letters.length).putInt(1).putInt(ENTRY_LENGTH).put(letters("enUS"))
                .putInt(letters.length).putInt(28).put(letters));
    }

    /** A tag's type, four bytes that are kept free, its content, and what fills the last four bytes. */
    private static byte[] tag(String type, ByteBuffer content) {
        int length = 2 * Integer.BYTES + content.capacity();
        return ByteBuffer.allocate((length + 3) / 4 * 4).put(letters(type)).putInt(0).put(content.array()).array();
    }

    private static byte[] letters(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    private static byte[] fixed(double... numbers) {
        ByteBuffer fixed = ByteBuffer.allocate(numbers.length * Integer.BYTES);
        for (double number : numbers) {
            fixed.putInt((int) Math.round(number * FIXED_POINT));
        }
        return fixed.array();
    }
}
