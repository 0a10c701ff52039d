package turnheel.exchange.drawing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;

import javax.imageio.ImageIO;

import turnheel.engine.drawing.Picture;

/** A PNG file, taken apart by hand as the standard describes it: a signature, then chunks. */
record Png(BufferedImage image, List<Chunk> chunks) {

    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

    record Chunk(String type, byte[] content) {
    }

    static Png of(Picture picture) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PngWriter.write(picture, out);
        return read(out.toByteArray());
    }

    static Png read(byte[] file) throws IOException {
        assertArrayEquals(SIGNATURE, Arrays.copyOf(file, SIGNATURE.length));
        ByteBuffer rest = ByteBuffer.wrap(file).position(SIGNATURE.length);
        List<Chunk> chunks = new ArrayList<>();
        while (rest.hasRemaining()) {
            byte[] content = new byte[rest.getInt()];
            byte[] type = new byte[4];
            rest.get(type).get(content);
            CRC32 sum = new CRC32();
            sum.update(type);
            sum.update(content);
            assertEquals((int) sum.getValue(), rest.getInt());
            chunks.add(new Chunk(new String(type, StandardCharsets.US_ASCII), content));
        }
        return new Png(ImageIO.read(new ByteArrayInputStream(file)), chunks);
    }

    private ByteBuffer chunk(String type) {
        return ByteBuffer.wrap(chunks.stream().filter(chunk -> chunk.type().equals(type)).findFirst().orElseThrow()
                .content());
    }

    /** Dots of a metre, the same both ways. */
    int dotsPerMetre() {
        ByteBuffer scale = chunk("pHYs");
        int across = scale.getInt();
        assertEquals(across, scale.getInt());
        assertEquals(1, scale.get(), "the unit is the metre");
        return across;
    }

    /** An international text: keyword, two flags, language and translated keyword before it. */
    String text(String keyword) {
        return chunks.stream().filter(chunk -> chunk.type().equals("iTXt"))
                .map(chunk -> new String(chunk.content(), StandardCharsets.UTF_8))
                .filter(text -> text.startsWith(keyword + "\0\0\0en\0\0"))
                .map(text -> text.substring(keyword.length() + 7)).findFirst().orElseThrow();
    }

    /** The colour at a place of the picture, as style sheets write it. */
    String colour(double xMm, double yMm) {
        double perMm = dotsPerMetre() / 1000.0;
        return "#%06x".formatted(image.getRGB((int) (xMm * perMm), (int) (yMm * perMm)) & 0xFFFFFF);
    }
}
