package turnheel.exchange.word;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigInteger;
import java.util.Objects;

import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFNumbering;
import org.apache.xmlbeans.XmlException;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.NumberingDocument;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.StylesDocument;

/** The styles and kinds of list of one file. */
final class Looks {

    /** In {@code numbering.xml}: the list whose entries are counted. */
    private static final BigInteger COUNTED = BigInteger.ONE;

    private final XWPFNumbering numbering;

    /** Gives a file, which must be empty, its styles and kinds of list. */
    Looks(XWPFDocument file) throws IOException {
        try (InputStream styles = resource("styles.xml"); InputStream lists = resource("numbering.xml")) {
            file.createStyles().setStyles(StylesDocument.Factory.parse(styles).getStyles());
            numbering = file.createNumbering();
            numbering.setNumbering(NumberingDocument.Factory.parse(lists).getNumbering());
        } catch (XmlException broken) {
            throw new IllegalStateException("a resource of this package is no XML", broken);
        }
    }

    private static InputStream resource(String name) {
        return Objects.requireNonNull(Looks.class.getResourceAsStream(name), name);
    }

    /** The number of a list that starts at 1, whatever was counted before. */
    BigInteger newNumberedList() {
        BigInteger list = numbering.addNum(COUNTED);
        numbering.getNum(list).getCTNum().addNewLvlOverride().addNewStartOverride().setVal(BigInteger.ONE);
        numbering.getNum(list).getCTNum().getLvlOverrideArray(0).setIlvl(BigInteger.ZERO);
        return list;
    }
}
