package turnheel.exchange.workbook;

import java.util.List;
import java.util.Optional;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

import turnheel.engine.grading.Graded;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.writing.Manuscripts;
import turnheel.engine.writing.PatternText;
import turnheel.engine.writing.Role;
import turnheel.engine.writing.SizedText;
import turnheel.exchange.table.CellContent;

/**
 * The written pattern in the usual house style, a paragraph a row. Beside the text for all sizes stands that of each
 * size alone, so that a column copied without its empty cells is the edition of that size, or the texts of a data
 * merge. What a size reads as it is printed for all is grey; on paper there are only the first two columns.
 */
final class InstructionsSheet {

    static final String NAME = Words.text("instructions.sheet");
    static final int ROLE_COLUMN = 0;
    static final int TEXT_COLUMN = 1;
    static final int FIRST_SIZE_COLUMN = 2;

    private static final int HEAD_ROW = 2;
    private static final int CHARACTERS_PER_LINE = 56;
    private static final int TEXT_CHARACTERS = 66;
    private static final int SIZE_CHARACTERS = 60;

    private final Graded graded;
    private final CellWriter cells;
    private final PatternText text;
    private int row = HEAD_ROW;

    private InstructionsSheet(Graded graded, CellWriter cells) {
        this.graded = graded;
        this.cells = cells;
        this.text = Manuscripts.write(graded, HouseStyles.usual());
    }

    static void write(Graded graded, CellWriter cells) {
        new InstructionsSheet(graded, cells).write();
    }

    private void write() {
        cells.title(TEXT_COLUMN, CHARACTERS_PER_LINE, PatternSheet.title(graded));
        cells.put(1, 0, Words.text(isOfOneSize() ? "instructions.note.one" : "instructions.note"), Look.NOTE);
        cells.put(HEAD_ROW, ROLE_COLUMN, Words.text("column.role"), Look.HEAD);
        cells.put(HEAD_ROW, TEXT_COLUMN, Words.text(isOfOneSize() ? "column.printed.one" : "column.printed"),
                Look.HEAD);
        if (!isOfOneSize()) {
            for (int size = 0; size < text.sizes().size(); size++) {
                cells.put(HEAD_ROW, FIRST_SIZE_COLUMN + size, text.sizes().get(size), Look.HEAD);
            }
        }
        text.sizedTexts().forEach(this::paragraph);
        layout();
    }

    private boolean isOfOneSize() {
        return text.sizes().size() == 1;
    }

    private void paragraph(SizedText paragraph) {
        row++;
        boolean isHeading = paragraph.role() == Role.TITLE || paragraph.role() == Role.HEADING;
        cells.put(row, ROLE_COLUMN, Words.text("role." + paragraph.role().name()), Look.KEY);
        cells.put(row, TEXT_COLUMN, paragraph.text(), isHeading ? Look.GROUP : Look.TEXT);
        if (isOfOneSize()) {
            return;
        }
        List<Optional<String>> each = paragraph.each();
        for (int size = 0; size < each.size(); size++) {
            String own = each.get(size).orElse("");
            CellContent content = own.isEmpty() ? new CellContent.Empty() : new CellContent.Text(own);
            cells.put(row, FIRST_SIZE_COLUMN + size, content, own.equals(paragraph.text()) ? Look.KEY : Look.TEXT,
                    Digits.ALL);
        }
    }

    private void layout() {
        XSSFSheet sheet = cells.sheet();
        cells.fit(ROLE_COLUMN, 12, 14);
        cells.fit(TEXT_COLUMN, TEXT_CHARACTERS, TEXT_CHARACTERS);
        if (!isOfOneSize()) {
            for (int size = 0; size < text.sizes().size(); size++) {
                cells.fit(FIRST_SIZE_COLUMN + size, SIZE_CHARACTERS, SIZE_CHARACTERS);
            }
        }
        sheet.createFreezePane(FIRST_SIZE_COLUMN, HEAD_ROW + 1);
        sheet.setRepeatingRows(new CellRangeAddress(HEAD_ROW, HEAD_ROW, -1, -1));
        sheet.getWorkbook().setPrintArea(sheet.getWorkbook().getSheetIndex(sheet), ROLE_COLUMN, TEXT_COLUMN, 0, row);
        PrintLayout.upright(sheet, PatternSheet.title(graded));
    }
}
