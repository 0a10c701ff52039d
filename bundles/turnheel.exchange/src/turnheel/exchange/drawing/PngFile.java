package turnheel.exchange.drawing;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;

/**
 * The parts of a PNG file as the standard (ISO/IEC 15948) orders them. The platform's own writer tries five filters on each
 * line, which pays for photographs; a drawing of few colours is smaller and several times faster without any.
 */
final class PngFile {

    private static final long SIGNATURE = 0x89504E470D0A1A0AL;
    private static final int DEPTH = 8;
    private static final int NUMBERED = 3;
    private static final byte[] DEFLATED_UNFILTERED_NOT_INTERLACED = {0, 0, 0};
    private static final byte[] END_OF_WORD_NOT_PACKED = {0, 0, 0};
    private static final byte[] END_OF_LANGUAGE_AND_NO_OTHER_WORD = {0, 0};
    private static final int NO_FILTER = 0;
    private static final int PER_METRE = 1;
    private static final String LANGUAGE = "en";

    private final DataOutputStream out;

    /** What one part holds, before its length and its checksum are known. */
    private interface Content {
        void write(DataOutputStream part) throws IOException;
    }

    private PngFile(OutputStream out) {
        this.out = new DataOutputStream(out);
    }

    /**
     * Writes one file; the stream is not closed.
     *
     * @param dotsPerMetre the same both ways
     */
    static void write(NumberedImage image, int dotsPerMetre, String title, String description, OutputStream out)
            throws IOException {
        PngFile file = new PngFile(out);
        file.out.writeLong(SIGNATURE);
        file.part("IHDR", header -> {
            header.writeInt(image.width());
            header.writeInt(image.height());
            header.writeByte(DEPTH);
            header.writeByte(NUMBERED);
            header.write(DEFLATED_UNFILTERED_NOT_INTERLACED);
        });
        file.part("PLTE", palette -> {
            for (int colour : image.colours()) {
                palette.writeByte(colour >> 2 * Byte.SIZE);
                palette.writeByte(colour >> Byte.SIZE);
                palette.writeByte(colour);
            }
        });
        file.part("pHYs", scale -> {
            scale.writeInt(dotsPerMetre);
            scale.writeInt(dotsPerMetre);
            scale.writeByte(PER_METRE);
        });
        file.text("Title", title);
        file.text("Description", description);
        file.part("IDAT", dots -> {
            try (DeflaterOutputStream packed = new DeflaterOutputStream(dots)) {
                for (int line = 0; line < image.height(); line++) {
                    packed.write(NO_FILTER);
                    packed.write(image.numbers(), line * image.width(), image.width());
                }
            }
        });
        file.part("IEND", end -> { });
        file.out.flush();
    }

    /** International text, not packed. */
    private void text(String keyword, String text) throws IOException {
        part("iTXt", part -> {
            part.write(keyword.getBytes(StandardCharsets.ISO_8859_1));
            part.write(END_OF_WORD_NOT_PACKED);
            part.write(LANGUAGE.getBytes(StandardCharsets.ISO_8859_1));
            part.write(END_OF_LANGUAGE_AND_NO_OTHER_WORD);
            // NUL would end the text; other control characters mean nothing in a line.
            part.write(text.replaceAll("\\p{Cntrl}", " ").getBytes(StandardCharsets.UTF_8));
        });
    }

    private void part(String name, Content content) throws IOException {
        ByteArrayOutputStream part = new ByteArrayOutputStream();
        part.write(name.getBytes(StandardCharsets.US_ASCII));
        content.write(new DataOutputStream(part));
        byte[] bytes = part.toByteArray();
        CRC32 sum = new CRC32();
        sum.update(bytes);
        out.writeInt(bytes.length - name.length());
        out.write(bytes);
        out.writeInt((int) sum.getValue());
    }
}
