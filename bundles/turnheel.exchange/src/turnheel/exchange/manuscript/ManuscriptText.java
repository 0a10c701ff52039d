package turnheel.exchange.manuscript;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.StringJoiner;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.poi.xwpf.usermodel.IBodyElement;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.apache.poi.xwpf.usermodel.XWPFTableRow;

import turnheel.engine.wording.NoBreak;

/** The text of a manuscript, as its lines are counted in queries. */
public final class ManuscriptText {

    private static final char BYTE_ORDER_MARK = '\uFEFF';
    /** What old Western office programs write; every byte is a character there, so that nothing is lost. */
    private static final Charset WESTERN = Charset.forName("windows-1252");

    private ManuscriptText() {
    }

    /** The text of a plain or Markdown file: UTF-8, UTF-16 with its mark, or else the old Western encoding. */
    public static String plain(byte[] content) {
        if (startsWith(content, 0xFE, 0xFF)) {
            return withoutMark(new String(content, StandardCharsets.UTF_16BE));
        }
        if (startsWith(content, 0xFF, 0xFE)) {
            return withoutMark(new String(content, StandardCharsets.UTF_16LE));
        }
        try {
            return withoutMark(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(content)).toString());
        } catch (CharacterCodingException noUtf8) {
            return new String(content, WESTERN);
        }
    }

    private static boolean startsWith(byte[] content, int first, int second) {
        return content.length >= 2 && (content[0] & 0xFF) == first && (content[1] & 0xFF) == second;
    }

    private static String withoutMark(String text) {
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }

    /**
     * The paragraphs of a word-processor file, a line each; of a table a line each row.
     *
     * @throws IOException when it is no such file
     */
    public static String document(byte[] content) throws IOException {
        try (XWPFDocument document = new XWPFDocument(new ByteArrayInputStream(content))) {
            StringJoiner lines = new StringJoiner("\n");
            for (IBodyElement element : document.getBodyElements()) {
                switch (element) {
                    case XWPFParagraph paragraph -> lines.add(paragraph.getText());
                    case XWPFTable table -> table.getRows().forEach(row -> lines.add(cells(row)));
                    // what is neither holds no text of its own, such as a block with a picture
                    default -> lines.add("");
                }
            }
            return lines.toString();
        } catch (RuntimeException damaged) {
            // the library lets faults of the file through as faults of its own
            throw new IOException("it is damaged", damaged);
        }
    }

    private static String cells(XWPFTableRow row) {
        StringJoiner cells = new StringJoiner("\t");
        row.getTableCells().forEach(cell -> cells.add(cell.getText().replace('\n', ' ')));
        return cells.toString();
    }

    /**
     * The text of a PDF file, line by line as it stands on the pages; of a tagged one by paragraphs, without running heads
     * and figures. Blanks and hyphens that only kept a line from ending are ordinary ones.
     *
     * @throws IOException when it is no such file, or is locked by a password
     */
    public static String pdf(byte[] content) throws IOException {
        try (PDDocument document = Loader.loadPDF(content)) {
            return NoBreak.ordinary(new PageText(document).getText(document));
        } catch (InvalidPasswordException locked) {
            throw new IOException("it is locked by a password", locked);
        } catch (RuntimeException damaged) {
            throw new IOException("it is damaged", damaged);
        }
    }

    /** A text as bytes of a file: UTF-8. */
    public static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
