package turnheel.exchange.manuscript;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/** Which paragraph, entry or cell a marked piece of a tagged file belongs to; none in a file without tags. */
final class TaggedBlocks {

    /** What stands within a line, so that a block may hold several. */
    private static final Set<String> WITHIN_A_LINE = Set.of("Span", "Link", "Quote", "Code", "Reference", "Note");
    private static final int DEEPEST = 20;

    /** Arrays of elements, by the number of their page. */
    private final Map<Integer, COSArray> pieces = new HashMap<>();

    private TaggedBlocks() {
    }

    static TaggedBlocks of(PDDocument document) {
        TaggedBlocks blocks = new TaggedBlocks();
        PDStructureTreeRoot root = document.getDocumentCatalog().getStructureTreeRoot();
        if (root != null
                && root.getCOSObject().getDictionaryObject(COSName.PARENT_TREE) instanceof COSDictionary tree) {
            blocks.add(tree, 0);
        }
        return blocks;
    }

    private void add(COSDictionary node, int depth) {
        if (node.getDictionaryObject(COSName.NUMS) instanceof COSArray numbers) {
            for (int at = 0; at + 1 < numbers.size(); at += 2) {
                if (numbers.getObject(at) instanceof COSInteger number
                        && numbers.getObject(at + 1) instanceof COSArray page) {
                    pieces.put(number.intValue(), page);
                }
            }
        }
        if (depth < DEEPEST && node.getDictionaryObject(COSName.KIDS) instanceof COSArray kids) {
            for (int at = 0; at < kids.size(); at++) {
                if (kids.getObject(at) instanceof COSDictionary kid) {
                    add(kid, depth + 1);
                }
            }
        }
    }

    /** The block of the marked piece of this number on a page; the same object for all pieces of a block. */
    Optional<COSBase> block(PDPage page, int mark) {
        COSArray marked = pieces.get(page.getCOSObject().getInt(COSName.STRUCT_PARENTS));
        if (marked == null || mark < 0 || mark >= marked.size()
                || !(marked.getObject(mark) instanceof COSDictionary element)) {
            return Optional.empty();
        }
        COSDictionary block = element;
        for (int step = 0; step < DEEPEST && WITHIN_A_LINE.contains(block.getNameAsString(COSName.S, "")); step++) {
            COSDictionary above = block.getCOSDictionary(COSName.P);
            if (above == null) {
                break;
            }
            block = above;
        }
        return Optional.of(block);
    }
}
