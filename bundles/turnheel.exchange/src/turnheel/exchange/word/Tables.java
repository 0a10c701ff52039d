package turnheel.exchange.word;

import java.util.List;

import org.apache.poi.xwpf.usermodel.TableRowAlign;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.apache.poi.xwpf.usermodel.XWPFTableCell;
import org.apache.poi.xwpf.usermodel.XWPFTableRow;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTTblGrid;

import turnheel.exchange.document.Block;
import turnheel.exchange.office.OneLine;

/** Writes tables: the head is repeated on every page, a row is never broken. */
final class Tables {

    /** How much wider the column of row headings is than another. */
    private static final double HEADINGS_SHARE = 1.8;

    private Tables() {
    }

    static void write(XWPFDocument document, Block.Table table) {
        int columns = table.head().size();
        XWPFTable made = document.createTable(table.rows().size() + 1, columns);
        made.setStyleID(WordStyle.TABLE.id());
        made.setWidth("100%");
        made.setTableAlignment(TableRowAlign.LEFT);
        // the borders that the library gives every table would hide those of the style
        made.getCTTbl().getTblPr().unsetTblBorders();
        grid(made, columns);
        XWPFTableRow head = made.getRow(0);
        head.setRepeatHeader(true);
        head.setCantSplitRow(true);
        for (int column = 0; column < columns; column++) {
            write(head.getCell(column), WordStyle.TABLE_HEAD, table.head().get(column));
        }
        for (int row = 0; row < table.rows().size(); row++) {
            XWPFTableRow its = made.getRow(row + 1);
            its.setCantSplitRow(true);
            List<Block.Cell> cells = table.rows().get(row).cells();
            for (int column = 0; column < columns; column++) {
                write(its.getCell(column), cells.get(column), column == 0);
            }
        }
    }

    private static void grid(XWPFTable made, int columns) {
        CTTblGrid grid = made.getCTTbl().getTblGrid() == null ? made.getCTTbl().addNewTblGrid()
                : made.getCTTbl().getTblGrid();
        while (grid.sizeOfGridColArray() > 0) {
            grid.removeGridCol(0);
        }
        double share = Page.TEXT_WIDTH / (columns - 1 + HEADINGS_SHARE);
        for (int column = 0; column < columns; column++) {
            grid.addNewGridCol().setW(Page.twips((int) (column == 0 ? share * HEADINGS_SHARE : share)));
        }
    }

    private static void write(XWPFTableCell cell, Block.Cell content, boolean heading) {
        switch (content) {
            case Block.Cell.Words(String text) ->
                write(cell, heading ? WordStyle.TABLE_ROW_HEAD : WordStyle.TABLE_TEXT, text);
            case Block.Cell.Figure(String text) ->
                write(cell, heading ? WordStyle.TABLE_ROW_HEAD : WordStyle.TABLE_FIGURE, text);
            case Block.Cell.Nothing nothing -> write(cell, WordStyle.TABLE_TEXT, "");
            case Block.Cell.Blank blank -> write(cell, WordStyle.TABLE_BLANK, "");
        }
    }

    private static void write(XWPFTableCell cell, WordStyle style, String text) {
        XWPFParagraph paragraph = cell.getParagraphs().isEmpty() ? cell.addParagraph() : cell.getParagraphs().getFirst();
        paragraph.setStyle(style.id());
        if (!text.isEmpty()) {
            paragraph.createRun().setText(OneLine.of(text));
        }
    }
}
