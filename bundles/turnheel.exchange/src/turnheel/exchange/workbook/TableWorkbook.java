package turnheel.exchange.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import turnheel.exchange.table.CellContent;

/** A single table as a workbook, headings in its first row: what other programs and people fill in. */
public final class TableWorkbook {

    private static final int NARROWEST = 8;
    private static final int WIDEST = 40;

    private TableWorkbook() {
    }

    /**
     * Writes the workbook. The same table gives the same bytes; the stream is not closed.
     *
     * @param name of its sheet
     * @param head the headings
     * @param rows a cell for each heading
     * @throws IOException when the stream fails
     */
    public static void write(String name, List<String> head, List<List<CellContent>> rows, OutputStream out)
            throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            fill(new CellWriter(workbook.createSheet(name), new Styles(workbook), new Texts()), name, head, rows);
            PatternWorkbook.properties(workbook, name);
            PatternWorkbook.pack(workbook, out);
        }
    }

    private static void fill(CellWriter cells, String name, List<String> head, List<List<CellContent>> rows) {
        for (int column = 0; column < head.size(); column++) {
            cells.put(0, column, head.get(column), Look.HEAD);
        }
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < head.size(); column++) {
                CellContent content = rows.get(row).get(column);
                cells.put(row + 1, column, content, look(content), Digits.ALL);
            }
        }
        XSSFSheet sheet = cells.sheet();
        for (int column = 0; column < head.size(); column++) {
            cells.fit(column, NARROWEST, WIDEST);
        }
        sheet.createFreezePane(0, 1);
        sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
        PrintLayout.upright(sheet, name);
    }

    private static Look look(CellContent content) {
        return switch (content) {
            case CellContent.Text text -> Look.TEXT;
            case CellContent.Figure figure -> Look.COMPUTED;
            case CellContent.Formula formula -> Look.COMPUTED;
            case CellContent.TextFormula formula -> Look.COMPUTED;
            case CellContent.Empty empty -> Look.ENTERED;
        };
    }
}
