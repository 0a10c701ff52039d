package turnheel.exchange.imprint;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

import turnheel.engine.design.Design;

/** Tells whether two files were made from one and the same state of a design. */
public final class ContentHash {

    private ContentHash() {
    }

    /**
     * SHA-256 (FIPS 180-4) over the canonical text of the design in UTF-8: 64 hexadecimal digits. Equal for designs of
     * equal content, on every machine; where a file lies and when it was saved play no part.
     */
    public static String of(Design design) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(DesignText.of(design).getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
