package turnheel.exchange.workbook;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.xssf.usermodel.XSSFOddFooter;
import org.apache.poi.xssf.usermodel.XSSFOddHeader;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;

import turnheel.exchange.imprint.Product;
import turnheel.exchange.office.OneLine;

/**
 * A sheet on paper: A4, with margins that leave the printed area inside of a Letter sheet as well. Letter is 6 mm
 * wider and 18 mm lower than A4 (ISO 216, ANSI/ASME Y14.1), so the margins along the longer side are the larger
 * ones.
 */
final class PrintLayout {

    private static final int UPRIGHT_SIZES = 6;
    private static final int SIZES_PER_PAGE = 14;
    private static final double SIDE_INCHES = 0.6;
    private static final double HEADED_INCHES = 0.9;
    private static final double HEADER_INCHES = 0.4;
    /** The header of a page holds 255 characters in all. */
    private static final int LONGEST_TITLE = 80;

    private PrintLayout() {
    }

    /** Upright pages, one page wide. */
    static void upright(XSSFSheet sheet, String title) {
        common(sheet, title);
        sheet.getPrintSetup().setFitWidth((short) 1);
    }

    /** Pages on their side, one page wide: rows with much to say. */
    static void onItsSide(XSSFSheet sheet, String title) {
        upright(sheet, title);
        sheet.getPrintSetup().setLandscape(true);
    }

    /** A table with a column for each size, which can be read however many there are. */
    static void table(XSSFSheet sheet, String title, int sizes) {
        common(sheet, title);
        sheet.getPrintSetup().setLandscape(sizes > UPRIGHT_SIZES);
        sheet.getPrintSetup().setFitWidth((short) (1 + (sizes - 1) / SIZES_PER_PAGE));
    }

    private static void common(XSSFSheet sheet, String title) {
        XSSFPrintSetup setup = sheet.getPrintSetup();
        setup.setPaperSize(PaperSize.A4_PAPER);
        sheet.setFitToPage(true);
        setup.setFitHeight((short) 0);
        sheet.setMargin(PageMargin.LEFT, SIDE_INCHES);
        sheet.setMargin(PageMargin.RIGHT, SIDE_INCHES);
        sheet.setMargin(PageMargin.TOP, HEADED_INCHES);
        sheet.setMargin(PageMargin.BOTTOM, HEADED_INCHES);
        sheet.setMargin(PageMargin.HEADER, HEADER_INCHES);
        sheet.setMargin(PageMargin.FOOTER, HEADER_INCHES);
        sheet.setDisplayGridlines(false);
        // The texts are set whole: the setters for left and right read back what is there, and trip over "&".
        ((XSSFOddHeader) sheet.getHeader()).setText("&L" + harmless(title) + "&R&A");
    }

    /**
     * Below every page of a sheet: who made it, of which state of the design it is, and the number of the page. A blank
     * ends the size of the letters, since the hash may begin with a digit.
     */
    static void imprint(XSSFSheet sheet, String hash) {
        ((XSSFOddFooter) sheet.getFooter()).setText("&L&8 " + Product.NAME + "&C&8 " + hash + "&R&8 "
                + Words.text("page", "&P", "&N"));
    }

    /** {@code &} starts a code in headers; doubled it is itself. */
    private static String harmless(String title) {
        String visible = OneLine.of(title);
        String shortened = visible.length() <= LONGEST_TITLE ? visible : visible.substring(0, LONGEST_TITLE - 1) + "…";
        return shortened.replace("&", "&&");
    }
}
