package turnheel.exchange.workbook;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.shaping.PartRounds;
import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.Rounds;
import turnheel.engine.writing.RoundText;
import turnheel.exchange.table.CellContent;

/**
 * Every round of every part, one size after the other, in the order of knitting. Size and part stand in every row,
 * so that the list can be filtered and sorted.
 */
final class RoundsSheet {

    static final String NAME = Words.text("rounds.sheet");
    static final int SIZE_COLUMN = 0;
    static final int PART_COLUMN = 1;
    static final int ROUND_COLUMN = 2;
    static final int KIND_COLUMN = 3;
    static final int WORK_COLUMN = 4;
    static final int STITCHES_COLUMN = 5;
    static final int YARN_OVERS_COLUMN = 6;

    private static final int HEAD_ROW = 2;
    private static final int CHARACTERS_PER_LINE = 72;

    private final Graded graded;
    private final CellWriter cells;
    private int row = HEAD_ROW;

    private RoundsSheet(Graded graded, CellWriter cells) {
        this.graded = graded;
        this.cells = cells;
    }

    static void write(Graded graded, CellWriter cells) {
        new RoundsSheet(graded, cells).write();
    }

    private void write() {
        cells.title(YARN_OVERS_COLUMN, CHARACTERS_PER_LINE, PatternSheet.title(graded));
        cells.put(1, 0, Words.text("rounds.note"), Look.NOTE);
        head(SIZE_COLUMN, "size", Look.HEAD);
        head(PART_COLUMN, "part", Look.HEAD);
        head(ROUND_COLUMN, "round", Look.HEAD_OF_NUMBERS);
        head(KIND_COLUMN, "kind", Look.HEAD);
        head(WORK_COLUMN, "work", Look.HEAD);
        head(STITCHES_COLUMN, "stitches", Look.HEAD_OF_NUMBERS);
        head(YARN_OVERS_COLUMN, "yarnOvers", Look.HEAD_OF_NUMBERS);
        for (GradedSize size : graded.sizes()) {
            Rounds.of(graded, size).forEach(part -> part(size.label(), part));
            if (size != graded.sizes().getLast()) {
                cells.sheet().setRowBreak(row);
            }
        }
        layout();
    }

    private void head(int column, String name, Look look) {
        cells.put(HEAD_ROW, column, Words.text("column." + name), look);
    }

    private void part(String size, PartRounds part) {
        String name = Words.text("part." + part.part().name());
        if (part.rounds().isEmpty()) {
            start(size, name);
            cells.put(row, WORK_COLUMN, Words.text("rounds.none"), Look.WARNING);
        }
        for (Round round : part.rounds()) {
            start(size, name);
            round(round);
        }
    }

    private void start(String size, String part) {
        row++;
        cells.put(row, SIZE_COLUMN, size, Look.LABEL);
        cells.put(row, PART_COLUMN, part, Look.LABEL);
    }

    private void round(Round round) {
        // a cast-on or graft carries no number: patterns do not count it
        CellContent number = round.number() == 0 ? new CellContent.Empty() : new CellContent.Figure(round.number());
        cells.put(row, ROUND_COLUMN, number, Look.COMPUTED, Digits.ALL);
        cells.put(row, KIND_COLUMN, Words.text("kind." + round.kind().name()), Look.LABEL);
        cells.put(row, WORK_COLUMN, RoundText.of(round), Look.TEXT);
        cells.put(row, STITCHES_COLUMN, new CellContent.Figure(round.stitches()), Look.COMPUTED, Digits.ALL);
        cells.put(row, YARN_OVERS_COLUMN, new CellContent.Figure(round.openYarnOvers()), Look.COMPUTED, Digits.ALL);
    }

    private void layout() {
        XSSFSheet sheet = cells.sheet();
        cells.fit(SIZE_COLUMN, 8, 16);
        cells.fit(PART_COLUMN, 8, 12);
        cells.fit(ROUND_COLUMN, 8, 8);
        cells.fit(KIND_COLUMN, 10, 12);
        cells.fit(WORK_COLUMN, 30, 52);
        cells.fit(STITCHES_COLUMN, 10, 10);
        cells.fit(YARN_OVERS_COLUMN, 12, 12);
        sheet.createFreezePane(KIND_COLUMN, HEAD_ROW + 1);
        sheet.setAutoFilter(new CellRangeAddress(HEAD_ROW, row, SIZE_COLUMN, YARN_OVERS_COLUMN));
        sheet.setRepeatingRows(new CellRangeAddress(HEAD_ROW, HEAD_ROW, -1, -1));
        PrintLayout.upright(sheet, PatternSheet.title(graded));
    }
}
