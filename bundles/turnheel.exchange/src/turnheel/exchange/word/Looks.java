package turnheel.exchange.word;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigInteger;
import java.util.Objects;

import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.xmlbeans.XmlException;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTNum;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTNumLvl;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTNumbering;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.NumberingDocument;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.StylesDocument;

/** The styles and kinds of list of one file. */
final class Looks {

    /** In {@code numbering.xml}: the list whose entries are counted. */
    private static final BigInteger COUNTED = BigInteger.ONE;

    private final CTNumbering numbering;

    /** Gives a file, which must be empty, its styles and kinds of list. */
    Looks(XWPFDocument file) throws IOException {
        try (InputStream styles = resource("styles.xml"); InputStream lists = resource("numbering.xml")) {
            file.createStyles().setStyles(StylesDocument.Factory.parse(styles).getStyles());
            numbering = NumberingDocument.Factory.parse(lists).getNumbering();
            file.createNumbering().setNumbering(numbering);
        } catch (XmlException broken) {
            throw new IllegalStateException("a resource of this package is no XML", broken);
        }
    }

    private static InputStream resource(String name) {
        return Objects.requireNonNull(Looks.class.getResourceAsStream(name), name);
    }

    /** The number of a list that starts at 1, whatever was counted before. */
    BigInteger newNumberedList() {
        BigInteger number = BigInteger.valueOf(numbering.sizeOfNumArray() + 1);
        CTNum list = numbering.addNewNum();
        list.setNumId(number);
        list.addNewAbstractNumId().setVal(COUNTED);
        CTNumLvl first = list.addNewLvlOverride();
        first.setIlvl(BigInteger.ZERO);
        first.addNewStartOverride().setVal(BigInteger.ONE);
        return number;
    }
}
