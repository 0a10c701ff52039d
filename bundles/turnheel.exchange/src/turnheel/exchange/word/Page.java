package turnheel.exchange.word;

import java.math.BigInteger;

import org.apache.poi.util.Units;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTPageMar;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTPageSz;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTSectPr;

/** The page, in twips (1/20 pt): A4 with margins that leave the text room on US Letter too. */
final class Page {

    /** A4, 210 mm by 297 mm. */
    private static final int WIDTH = 11906;
    private static final int HEIGHT = 16838;
    /** 20 mm: Letter is wider, so that nothing moves. */
    private static final int MARGIN_SIDE = 1134;
    /** 25 mm: on Letter, which is 18 mm shorter, a page breaks somewhat earlier. */
    private static final int MARGIN_TOP = 1417;
    private static final int EDGE = 709;

    /** The width of the text. */
    static final int TEXT_WIDTH = WIDTH - 2 * MARGIN_SIDE;

    /** What a picture with its caption may take of a page's height, so that it fits a Letter page, in millimetres. */
    private static final double TALLEST_MM = 205;

    private Page() {
    }

    /** Sets the page up for the whole document. */
    static void setUp(XWPFDocument document) {
        CTSectPr section = document.getDocument().getBody().isSetSectPr() ? document.getDocument().getBody().getSectPr()
                : document.getDocument().getBody().addNewSectPr();
        CTPageSz size = section.addNewPgSz();
        size.setW(twips(WIDTH));
        size.setH(twips(HEIGHT));
        CTPageMar margins = section.addNewPgMar();
        margins.setLeft(twips(MARGIN_SIDE));
        margins.setRight(twips(MARGIN_SIDE));
        margins.setTop(twips(MARGIN_TOP));
        margins.setBottom(twips(MARGIN_TOP));
        margins.setHeader(twips(EDGE));
        margins.setFooter(twips(EDGE));
        margins.setGutter(twips(0));
    }

    static BigInteger twips(int twips) {
        return BigInteger.valueOf(twips);
    }

    /** By how much a picture of this size must be scaled to stand on a page; never made larger. */
    static double scale(double widthMm, double heightMm) {
        double room = TEXT_WIDTH / 20.0 / Units.POINT_DPI * 25.4;
        return Math.min(1, Math.min(room / widthMm, TALLEST_MM / heightMm));
    }
}
