package turnheel.exchange.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

import turnheel.exchange.imprint.Product;
import turnheel.exchange.table.CellContent;
import turnheel.exchange.table.FormulaLookalikes;

/** Turns content into the cells of one sheet. Knows how a cell is written, not what stands in it. */
final class CellWriter {

    /** The most characters of a line in a comment, about the width of its box. */
    private static final int COMMENT_WIDTH = 46;
    private static final int COMMENT_COLUMNS = 4;
    private static final int UNITS_PER_CHARACTER = 256;
    /** The default height of a row in points. */
    private static final float LINE_POINTS = 15;
    private static final float TITLE_LINE_POINTS = 21;
    /** No row of a workbook is higher. */
    private static final float HIGHEST_ROW_POINTS = 409;
    /** Blank space of a cell, in characters: its indent and a little air. */
    private static final int AIR = 3;

    private final XSSFSheet sheet;
    private final Styles styles;
    private final Texts texts;
    private final Map<Integer, List<Wrapping>> wrapping = new HashMap<>();

    /** A text that makes its column wide or its row high. */
    private record Wrapping(int row, int characters) {
    }

    CellWriter(XSSFSheet sheet, Styles styles, Texts texts) {
        this.sheet = sheet;
        this.styles = styles;
        this.texts = texts;
    }

    XSSFSheet sheet() {
        return sheet;
    }

    void put(int row, int column, String text, Look look) {
        put(row, column, new CellContent.Text(text), look, Digits.ALL);
    }

    void put(int row, int column, CellContent content, Look look, Digits digits) {
        XSSFCell cell = row(row).createCell(column);
        switch (content) {
            case CellContent.Text(String value) -> {
                cell.setCellStyle(styles.of(look, digits, FormulaLookalikes.contains(value)));
                texts.write(cell, SafeText.ofCell(value));
                if (look.wraps()) {
                    wrapping.computeIfAbsent(column, any -> new ArrayList<>()).add(new Wrapping(row, value.length()));
                }
            }
            case CellContent.Figure(double value) -> {
                cell.setCellStyle(styles.of(look, digits, false));
                cell.setCellValue(value);
            }
            case CellContent.Formula(String expression, double cached) -> {
                cell.setCellStyle(styles.of(look, digits, false));
                cell.setCellFormula(expression);
                cell.setCellValue(cached);
            }
            case CellContent.TextFormula(String expression, String cached) -> {
                cell.setCellStyle(styles.of(look, digits, false));
                cell.setCellFormula(expression);
                cell.setCellValue(SafeText.ofCell(cached));
            }
            case CellContent.Empty() -> cell.setCellStyle(styles.of(look, digits, false));
        }
    }

    /** The title of the sheet over several columns, in a row as high as it needs. {@code characters} fit on a line. */
    void title(int lastColumn, int characters, String text) {
        across(0, 0, lastColumn, text, Look.TITLE);
        high(0, TITLE_LINE_POINTS * lines(text.length(), characters));
    }

    /** Text over several columns, in a row as high as it needs. {@code characters} fit on a line. */
    void text(int row, int firstColumn, int lastColumn, int characters, String text) {
        across(row, firstColumn, lastColumn, text, Look.TEXT);
        high(row, LINE_POINTS * lines(text.length(), characters));
    }

    private void across(int row, int firstColumn, int lastColumn, String text, Look look) {
        put(row, firstColumn, text, look);
        wrapping.get(firstColumn).removeLast();
        for (int column = firstColumn + 1; column <= lastColumn; column++) {
            put(row, column, new CellContent.Empty(), look, Digits.ALL);
        }
        if (firstColumn < lastColumn) {
            sheet.addMergedRegion(new CellRangeAddress(row, row, firstColumn, lastColumn));
        }
    }

    /** Makes a row so high, as far as a row can be. */
    void high(int row, float points) {
        row(row).setHeightInPoints(Math.min(HIGHEST_ROW_POINTS, points));
    }

    /** Heads the rows that follow, over all columns. */
    void group(int row, int lastColumn, String heading) {
        put(row, 0, heading, Look.GROUP);
        for (int column = 1; column <= lastColumn; column++) {
            put(row, column, new CellContent.Empty(), Look.GROUP, Digits.ALL);
        }
    }

    /** A comment that opens when the pointer rests on the cell. */
    void comment(int row, int column, String text) {
        int lines = text.lines().mapToInt(line -> lines(line.length(), COMMENT_WIDTH)).sum();
        ClientAnchor anchor = sheet.getWorkbook().getCreationHelper().createClientAnchor();
        anchor.setCol1(column + 1);
        anchor.setCol2(column + 1 + COMMENT_COLUMNS);
        anchor.setRow1(row);
        anchor.setRow2(row + 1 + lines);
        XSSFComment comment = sheet.createDrawingPatriarch().createCellComment(anchor);
        comment.setString(new XSSFRichTextString(SafeText.ofCell(text)));
        comment.setAuthor(Product.NAME);
        row(row).getCell(column).setCellComment(comment);
    }

    /**
     * Makes a column as wide as its longest text, within limits in characters; what is longer wraps in a higher row.
     * Widths are counted in digits, and text takes less room than digits: that pays for the ragged ends of lines.
     */
    void fit(int column, int narrowest, int widest) {
        List<Wrapping> texts = wrapping.getOrDefault(column, List.of());
        int longest = texts.stream().mapToInt(Wrapping::characters).max().orElse(0);
        int characters = Math.clamp((long) longest + AIR, narrowest, widest);
        sheet.setColumnWidth(column, characters * UNITS_PER_CHARACTER);
        for (Wrapping text : texts) {
            float points = Math.min(HIGHEST_ROW_POINTS, LINE_POINTS * lines(text.characters(), characters));
            if (points > LINE_POINTS && points > row(text.row()).getHeightInPoints()) {
                row(text.row()).setHeightInPoints(points);
            }
        }
    }

    private static int lines(int characters, int charactersPerLine) {
        return 1 + Math.max(0, characters - 1) / charactersPerLine;
    }

    private XSSFRow row(int row) {
        XSSFRow known = sheet.getRow(row);
        return known != null ? known : sheet.createRow(row);
    }
}
