package turnheel.exchange.word;

import java.util.Arrays;
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

    /** A column is as wide as its longest text, in characters within these bounds; longer texts are broken. */
    private static final int NARROWEST = 6;
    private static final int WIDEST = 36;
    /** Room to write in by hand, in characters. */
    private static final int BY_HAND = 10;

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
        grid(made, table);
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

    private static void grid(XWPFTable made, Block.Table table) {
        CTTblGrid grid = made.getCTTbl().getTblGrid() == null ? made.getCTTbl().addNewTblGrid()
                : made.getCTTbl().getTblGrid();
        while (grid.sizeOfGridColArray() > 0) {
            grid.removeGridCol(0);
        }
        int[] widths = new int[table.head().size()];
        for (int column = 0; column < widths.length; column++) {
            int its = column;
            int longest = table.rows().stream().mapToInt(row -> characters(row.cells().get(its))).max().orElse(0);
            widths[column] = Math.clamp(Math.max(longest, table.head().get(column).length()), NARROWEST, WIDEST);
        }
        int all = Arrays.stream(widths).sum();
        for (int width : widths) {
            grid.addNewGridCol().setW(Page.twips(Page.TEXT_WIDTH * width / all));
        }
    }

    private static int characters(Block.Cell cell) {
        return switch (cell) {
            case Block.Cell.Words(String text) -> text.length();
            case Block.Cell.Figure(String text) -> text.length();
            case Block.Cell.Nothing nothing -> 0;
            case Block.Cell.Blank blank -> BY_HAND;
        };
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
