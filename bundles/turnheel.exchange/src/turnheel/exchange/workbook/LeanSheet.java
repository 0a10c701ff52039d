package turnheel.exchange.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

import org.apache.poi.ooxml.POIXMLDocumentPart;
import org.apache.poi.ooxml.POIXMLRelation;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFFactory;
import org.apache.poi.xssf.usermodel.XSSFRelation;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * A sheet whose cells are kept as the text that the file will hold (ECMA-376 part 1, § 18.3.1.4). POI keeps a tree of
 * objects for each cell and writes the tree: three quarters of the time of an export. All else of the sheet is POI's.
 */
final class LeanSheet extends XSSFSheet {

    /** Makes every sheet of a workbook a lean one. */
    static final XSSFFactory FACTORY = new XSSFFactory() {
        @Override
        public POIXMLDocumentPart newDocumentPart(POIXMLRelation kind) {
            return kind == XSSFRelation.WORKSHEET ? new LeanSheet() : super.newDocumentPart(kind);
        }
    };

    private static final String NO_CELLS = "<sheetData/>";

    private final TreeMap<Integer, Row> rows = new TreeMap<>();
    private int lastColumn;

    private static final class Row {
        private final Map<Integer, String> cells = new TreeMap<>();
        /** In points; 0 for a row of the usual height. */
        private float height;
    }

    private LeanSheet() {
    }

    private Row row(int row) {
        return rows.computeIfAbsent(row, any -> new Row());
    }

    /** A cell that is empty but for its style. */
    void empty(int row, int column, int style) {
        put(row, column, style, "/>");
    }

    /** A number, as exact as it is. */
    void number(int row, int column, int style, double value) {
        put(row, column, style, "><v>" + value + "</v></c>");
    }

    /** @param text its number among the texts of the workbook */
    void text(int row, int column, int style, int text) {
        put(row, column, style, " t=\"s\"><v>" + text + "</v></c>");
    }

    /** A formula without its equals sign, and the result that programs show until they compute it. */
    void formula(int row, int column, int style, String expression, double result) {
        put(row, column, style, "><f>" + escaped(expression) + "</f><v>" + result + "</v></c>");
    }

    /** A formula whose result is a text. */
    void formula(int row, int column, int style, String expression, String result) {
        put(row, column, style, " t=\"str\"><f>" + escaped(expression) + "</f><v>" + escaped(result) + "</v></c>");
    }

    private void put(int row, int column, int style, String rest) {
        lastColumn = Math.max(lastColumn, column);
        row(row).cells.put(column, "<c r=\"" + CellReference.convertNumToColString(column) + (row + 1) + "\" s=\"" + style
                + "\"" + rest);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** Makes a row so high. */
    void height(int row, float points) {
        row(row).height = points;
    }

    /** The height of a row, 0 where nobody has said. */
    float height(int row) {
        Row known = rows.get(row);
        return known == null ? 0 : known.height;
    }

    @Override
    protected void write(OutputStream out) throws IOException {
        rows.values().removeIf(row -> row.cells.isEmpty() && row.height == 0);
        if (!rows.isEmpty()) {
            getCTWorksheet().getDimension().setRef(
                    new CellRangeAddress(rows.firstKey(), rows.lastKey(), 0, lastColumn).formatAsString());
        }
        ByteArrayOutputStream frame = new ByteArrayOutputStream();
        super.write(frame);
        String text = frame.toString(StandardCharsets.UTF_8);
        int place = text.indexOf(NO_CELLS);
        if (place < 0) {
            throw new IllegalStateException("the sheet %s has cells that were not written here".formatted(getSheetName()));
        }
        StringBuilder whole = new StringBuilder(text.length()).append(text, 0, place).append("<sheetData>");
        rows.forEach((number, row) -> append(whole, number, row));
        whole.append("</sheetData>").append(text, place + NO_CELLS.length(), text.length());
        out.write(whole.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static void append(StringBuilder whole, int number, Row row) {
        whole.append("<row r=\"").append(number + 1).append('"');
        if (row.height > 0) {
            whole.append(" ht=\"").append(row.height).append("\" customHeight=\"1\"");
        }
        whole.append('>');
        row.cells.values().forEach(whole::append);
        whole.append("</row>");
    }
}
