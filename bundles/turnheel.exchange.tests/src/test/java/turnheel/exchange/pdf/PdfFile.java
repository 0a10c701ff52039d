package turnheel.exchange.pdf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

import turnheel.exchange.document.Document;

/** A written file, read by two libraries that did not write it: as a whole, and against the standards. */
final class PdfFile {

    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private PdfFile() {
    }

    static byte[] of(Document document) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            PdfWriter.write(document, out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is wrong with it by a standard: rule and how often, or nothing. */
    static Map<String, Integer> faults(byte[] file, PDFAFlavour standard) throws Exception {
        Map<String, Integer> faults = new TreeMap<>();
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(file), standard);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(standard, false)) {
            validator.validate(parser).getTestAssertions().stream()
                    .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                    .forEach(failed -> faults.merge("%s at %s".formatted(failed.getMessage(),
                            failed.getLocation().getContext().replaceAll("\\[\\d+\\]|\\d+ \\d+ obj ", "")), 1,
                            Integer::sum));
        }
        return faults;
    }

    /** A letter where it stands, in points from the left and the top of its page. */
    record Letter(String text, int page, double left, double right, double top, double bottom, double pageWidth,
            double pageHeight) {
    }

    static List<Letter> letters(byte[] file) throws IOException {
        List<Letter> letters = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(file)) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition text) {
                    letters.add(new Letter(text.getUnicode(), getCurrentPageNo(), text.getXDirAdj(),
                            text.getXDirAdj() + text.getWidthDirAdj(), text.getYDirAdj() - text.getHeightDir(),
                            text.getYDirAdj(), text.getPageWidth(), text.getPageHeight()));
                    super.processTextPosition(text);
                }
            }.getText(document);
        }
        return letters;
    }

    /** Every element of the tree of tags, in reading order. */
    static List<PDStructureElement> elements(PDDocument document) {
        List<PDStructureElement> elements = new ArrayList<>();
        visit(document.getDocumentCatalog().getStructureTreeRoot(), elements::add);
        return elements;
    }

    private static void visit(PDStructureNode node, Consumer<PDStructureElement> visitor) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                visitor.accept(element);
                visit(element, visitor);
            }
        }
    }
}
