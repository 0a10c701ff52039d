package turnheel.exchange.manuscript;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ManuscriptTextTest {

    private static final List<String> LINES = List.of("Rnd 1: *K2, p2; rep from * to end. 64 (72) sts.",
            "Rep rnd 1 9 more times.");

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252"})
    void readsATextInItsEncoding(String encoding) {
        String text = "Rnds 1–3: K ½ of the sts.\r\nPurée";
        boolean marked = encoding.startsWith("UTF-16");
        byte[] content = ((marked ? "\uFEFF" : "") + text).getBytes(Charset.forName(encoding));
        assertEquals(text, ManuscriptText.plain(content));
    }

    @Test
    void leavesTheByteOrderMarkOfUtf8Out() {
        assertEquals("K2", ManuscriptText.plain("\uFEFFK2".getBytes(StandardCharsets.UTF_8)));
        assertEquals("", ManuscriptText.plain(new byte[0]));
    }

    @Test
    void givesAParagraphOfAWordProcessorFileALineAndATableALineARow() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (XWPFDocument document = new XWPFDocument()) {
            LINES.forEach(line -> document.createParagraph().createRun().setText(line));
            XWPFTable table = document.createTable(1, 2);
            table.getRow(0).getCell(0).setText("S");
            table.getRow(0).getCell(1).setText("64");
            document.write(out);
        }
        assertEquals(String.join("\n", LINES) + "\nS\t64", ManuscriptText.document(out.toByteArray()));
    }

    @Test
    void readsAPdfLineByLine() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage();
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.beginText();
                content.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 11);
                content.newLineAtOffset(50, 700);
                content.setLeading(14);
                for (String line : LINES) {
                    content.showText(line);
                    content.newLine();
                }
                content.endText();
            }
            document.save(out);
        }
        assertEquals(LINES, ManuscriptText.pdf(out.toByteArray()).lines().map(String::strip)
                .filter(line -> !line.isEmpty()).toList());
    }

    @Test
    void refusesWhatIsNoSuchFileWithoutAFaultOfTheLibrary() throws IOException {
        byte[] text = "no archive, no pages".getBytes(StandardCharsets.UTF_8);
        assertThrows(IOException.class, () -> ManuscriptText.document(text));
        assertThrows(IOException.class, () -> ManuscriptText.pdf(text));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (XWPFDocument document = new XWPFDocument()) {
            document.createParagraph().createRun().setText("K2");
            document.write(out);
        }
        byte[] half = Arrays.copyOf(out.toByteArray(), out.size() / 2);
        IOException refused = assertThrows(IOException.class, () -> ManuscriptText.document(half));
        assertTrue(refused.getMessage() != null && !refused.getMessage().isBlank());
    }
}
