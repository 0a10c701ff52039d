package turnheel.exchange.word;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigInteger;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.List;
import java.util.Optional;

import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.wp.usermodel.HeaderFooterType;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;

import turnheel.exchange.document.Block;
import turnheel.exchange.document.Document;
import turnheel.exchange.imprint.Product;
import turnheel.exchange.office.FixedZip;
import turnheel.exchange.office.OneLine;

/** Writes a document as a word-processor file. */
public final class DocxWriter {

    private final Document source;
    private final XWPFDocument file;
    private final Looks looks;
    private final Figures figures = new Figures();
    private boolean newPage;

    private DocxWriter(Document source, XWPFDocument file) throws IOException {
        this.source = source;
        this.file = file;
        this.looks = new Looks(file);
    }

    /**
     * Writes one file. The same document gives the same bytes; the stream is not closed.
     *
     * @throws IOException when the stream fails
     */
    public static void write(Document document, OutputStream out) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (XWPFDocument file = new XWPFDocument()) {
            new DocxWriter(document, file).fill();
            file.write(packed);
        }
        FixedZip.copy(packed.toByteArray(), out);
    }

    private void fill() throws IOException {
        paragraph(WordStyle.TITLE, source.title());
        paragraph(WordStyle.SUBTITLE, source.subject());
        for (Block block : source.blocks()) {
            write(block);
        }
        source.imprint().forEach(line -> paragraph(WordStyle.IMPRINT, line));
        footer();
        Page.setUp(file);
        properties();
    }

    private void write(Block block) throws IOException {
        switch (block) {
            case Block.Heading(int level, String text) -> paragraph(WordStyle.ofHeading(level), text);
            case Block.Paragraph(var purpose, String text) -> paragraph(WordStyle.of(purpose), text);
            case Block.Entries(boolean numbered, List<String> texts) -> entries(numbered, texts);
            case Block.Terms(List<Block.Term> terms) -> terms.forEach(this::term);
            case Block.Table table -> {
                paragraph(WordStyle.TABLE_CAPTION, table.caption());
                Tables.write(file, table);
            }
            case Block.Drawn(var picture) -> {
                figures.write(paragraph(WordStyle.FIGURE), picture);
                paragraph(WordStyle.CAPTION, picture.title());
            }
            case Block.NewPage page -> newPage = true;
        }
    }

    private void entries(boolean numbered, List<String> texts) {
        if (!numbered) {
            texts.forEach(text -> paragraph(WordStyle.LIST_BULLET, text));
            return;
        }
        BigInteger list = looks.newNumberedList();
        for (String text : texts) {
            XWPFParagraph entry = paragraph(WordStyle.LIST_NUMBER, text);
            entry.setNumID(list);
            entry.setNumILvl(BigInteger.ZERO);
        }
    }

    private void term(Block.Term term) {
        XWPFParagraph paragraph = paragraph(WordStyle.TERM);
        XWPFRun word = paragraph.createRun();
        word.setStyle(WordStyle.TERM_WORD.id());
        word.setText(OneLine.of(term.word()));
        paragraph.createRun().setText(OneLine.of(": " + term.meaning()));
    }

    private XWPFParagraph paragraph(WordStyle style) {
        XWPFParagraph paragraph = file.createParagraph();
        paragraph.setStyle(style.id());
        if (newPage) {
            paragraph.setPageBreak(true);
            newPage = false;
        }
        return paragraph;
    }

    private XWPFParagraph paragraph(WordStyle style, String text) {
        XWPFParagraph paragraph = paragraph(style);
        // a run's text is text: what looks like a field or a link in it is neither
        paragraph.createRun().setText(OneLine.of(text));
        return paragraph;
    }

    private void footer() {
        XWPFParagraph footer = file.createFooter(HeaderFooterType.DEFAULT).createParagraph();
        footer.setStyle(WordStyle.FOOTER.id());
        XWPFRun title = footer.createRun();
        title.setText(OneLine.of(source.title()));
        title.addTab();
        field(footer, "PAGE");
        footer.createRun().setText("/");
        field(footer, "NUMPAGES");
    }

    private static void field(XWPFParagraph paragraph, String instruction) {
        paragraph.getCTP().addNewFldSimple().setInstr(instruction);
    }

    private void properties() {
        Optional<Date> time = Optional.of(Date.from(FixedZip.TIME.toInstant(ZoneOffset.UTC)));
        POIXMLProperties.CoreProperties core = file.getProperties().getCoreProperties();
        core.setTitle(OneLine.of(source.title()));
        core.setSubjectProperty(OneLine.of(source.subject()));
        core.setCreator(Product.NAME);
        core.setCreated(time);
        core.setModified(time);
        core.getUnderlyingProperties().setLanguageProperty(Document.LANGUAGE);
        file.getProperties().getExtendedProperties().setApplication(Product.NAME);
    }
}
