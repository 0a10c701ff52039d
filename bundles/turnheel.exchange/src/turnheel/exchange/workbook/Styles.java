package turnheel.exchange.workbook;

import java.util.HashMap;
import java.util.Map;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The cell styles of one workbook, each made once. */
final class Styles {

    private static final short TITLE_POINTS = 16;
    private static final byte OPAQUE = (byte) 0xFF;
    private static final byte[] LINE = {(byte) 0xC9, (byte) 0xCF, (byte) 0xD3};

    private final XSSFWorkbook workbook;
    private final Map<Kind, XSSFCellStyle> made = new HashMap<>();

    /** Formula lookalikes need a style of their own, since "stays text when edited" is a part of the style. */
    private record Kind(Look look, Digits digits, boolean staysText) {
    }

    Styles(XSSFWorkbook workbook) {
        this.workbook = workbook;
    }

    XSSFCellStyle of(Look look, Digits digits, boolean staysText) {
        return made.computeIfAbsent(new Kind(look, digits, staysText), this::make);
    }

    private XSSFCellStyle make(Kind kind) {
        Look look = kind.look();
        XSSFCellStyle style = workbook.createCellStyle();
        style.setFont(font(look));
        style.setAlignment(look.alignment());
        if (look.alignment() == HorizontalAlignment.LEFT) {
            // keeps text off the numbers on its left
            style.setIndention((short) 1);
        }
        style.setVerticalAlignment(VerticalAlignment.TOP);
        style.setQuotePrefixed(kind.staysText());
        switch (look) {
            case REFERENCE, ENTERED, DEFAULT, COMPUTED, CHOSEN, OVERRIDDEN ->
                style.setDataFormat(workbook.createDataFormat().getFormat(kind.digits().format(look)));
            case TITLE, NOTE, HEAD, HEAD_OF_NUMBERS, GROUP, KEY, LABEL, TEXT, WARNING ->
                style.setWrapText(look.wraps());
        }
        if (look.ground() != Look.Ground.NONE) {
            style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
            style.setFillForegroundColor(colour(look.ground().rgb()));
        }
        if (look != Look.TITLE && look != Look.NOTE) {
            style.setBorderBottom(BorderStyle.HAIR);
            style.setBottomBorderColor(colour(LINE));
        }
        return style;
    }

    private XSSFFont font(Look look) {
        XSSFFont font = workbook.createFont();
        font.setColor(colour(look.ink().rgb()));
        font.setBold(look.isBold());
        font.setItalic(look.isItalic());
        if (look == Look.TITLE) {
            font.setFontHeightInPoints(TITLE_POINTS);
        }
        return font;
    }

    /** The standard wants four bytes, the first of them for how opaque it is. */
    static XSSFColor colour(byte[] rgb) {
        return new XSSFColor(new byte[] {OPAQUE, rgb[0], rgb[1], rgb[2]});
    }
}
