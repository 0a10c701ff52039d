package turnheel.exchange.manuscript;

import java.io.IOException;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/**
 * The text of pages. What a tagged file marks as no part of it is left out: running heads, and the words in figures. What
 * it marks as one paragraph is one line, also across pages; elsewhere a line of a page is one.
 */
final class PageText extends PDFTextStripper {

    private static final Set<COSName> NO_TEXT = Set.of(COSName.ARTIFACT, COSName.getPDFName("Figure"));

    private final TaggedBlocks blocks;
    private final Map<TextPosition, COSBase> blockOf = new IdentityHashMap<>();
    private Optional<COSBase> last = Optional.empty();
    private boolean lineEnded;
    private boolean blankEnded;
    private OptionalInt mark = OptionalInt.empty();
    private int depth;
    /** How deep the outermost mark lies of what is left out; 0 for none. */
    private int leftOut;

    PageText(PDDocument document) throws IOException {
        blocks = TaggedBlocks.of(document);
        setSortByPosition(true);
        setLineSeparator("\n");
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
        super.beginMarkedContentSequence(tag, properties);
        depth++;
        if (leftOut == 0 && NO_TEXT.contains(tag)) {
            leftOut = depth;
        }
        if (properties != null && properties.containsKey(COSName.MCID)) {
            mark = OptionalInt.of(properties.getInt(COSName.MCID));
        }
    }

    @Override
    public void endMarkedContentSequence() {
        super.endMarkedContentSequence();
        if (leftOut == depth) {
            leftOut = 0;
        }
        depth--;
        mark = OptionalInt.empty();
    }

    @Override
    protected void processTextPosition(TextPosition text) {
        if (leftOut == 0) {
            if (mark.isPresent()) {
                blocks.block(getCurrentPage(), mark.getAsInt()).ifPresent(block -> blockOf.put(text, block));
            }
            super.processTextPosition(text);
        }
    }

    @Override
    protected void writeString(String text, List<TextPosition> positions) throws IOException {
        Optional<COSBase> block = positions.isEmpty() ? Optional.empty()
                : Optional.ofNullable(blockOf.get(positions.getFirst()));
        if (lineEnded) {
            boolean goesOn = block.isPresent() && last.isPresent() && block.get() == last.get();
            output.write(goesOn ? blankEnded ? "" : " " : getLineSeparator());
            lineEnded = false;
        }
        last = block;
        blankEnded = text.endsWith(" ");
        super.writeString(text, positions);
    }

    @Override
    protected void writeLineSeparator() {
        lineEnded = true;
    }

    @Override
    protected void writePageEnd() {
        lineEnded = true;
    }

    @Override
    protected void endDocument(PDDocument document) throws IOException {
        output.write(getLineSeparator());
    }
}
