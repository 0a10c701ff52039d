package turnheel.exchange.workbook;

import java.util.Optional;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.shaping.Place;
import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.RoundFinder;
import turnheel.engine.shaping.Rounds;
import turnheel.engine.writing.PlaceText;
import turnheel.engine.writing.RoundText;
import turnheel.exchange.table.CellContent;

/**
 * For a knitter who lost the place: count the stitches on the needles, filter size and count, and read which round was
 * just worked and what comes next. Rounds that look alike stand in one row.
 */
final class RoundFinderSheet {

    static final String NAME = Words.text("finder.sheet");
    static final int SIZE_COLUMN = 0;
    static final int STITCHES_COLUMN = 1;
    static final int YARN_OVERS_COLUMN = 2;
    static final int LOOK_FOR_COLUMN = 3;
    static final int PART_COLUMN = 4;
    static final int KIND_COLUMN = 5;
    static final int FROM_COLUMN = 6;
    static final int TO_COLUMN = 7;
    static final int NEXT_PART_COLUMN = 8;
    static final int NEXT_ROUND_COLUMN = 9;
    static final int NEXT_WORK_COLUMN = 10;

    private static final int HEAD_ROW = 2;
    private static final int CHARACTERS_PER_LINE = 100;

    private final Graded graded;
    private final CellWriter cells;
    private int row = HEAD_ROW;

    private RoundFinderSheet(Graded graded, CellWriter cells) {
        this.graded = graded;
        this.cells = cells;
    }

    static void write(Graded graded, CellWriter cells) {
        new RoundFinderSheet(graded, cells).write();
    }

    private void write() {
        cells.title(NEXT_WORK_COLUMN, CHARACTERS_PER_LINE, PatternSheet.title(graded));
        cells.put(1, 0, Words.text("finder.note"), Look.NOTE);
        head(SIZE_COLUMN, "size", Look.HEAD);
        head(STITCHES_COLUMN, "stitches", Look.HEAD_OF_NUMBERS);
        head(YARN_OVERS_COLUMN, "yarnOvers", Look.HEAD_OF_NUMBERS);
        head(LOOK_FOR_COLUMN, "lookFor", Look.HEAD);
        head(PART_COLUMN, "part", Look.HEAD);
        head(KIND_COLUMN, "kind", Look.HEAD);
        head(FROM_COLUMN, "fromRound", Look.HEAD_OF_NUMBERS);
        head(TO_COLUMN, "toRound", Look.HEAD_OF_NUMBERS);
        head(NEXT_PART_COLUMN, "nextPart", Look.HEAD);
        head(NEXT_ROUND_COLUMN, "nextRound", Look.HEAD_OF_NUMBERS);
        head(NEXT_WORK_COLUMN, "nextWork", Look.HEAD);
        for (GradedSize size : graded.sizes()) {
            RoundFinder.of(Rounds.of(graded, size)).table().forEach(place -> place(size.label(), place));
            if (size != graded.sizes().getLast()) {
                cells.sheet().setRowBreak(row);
            }
        }
        layout();
    }

    private void head(int column, String name, Look look) {
        cells.put(HEAD_ROW, column, Words.text("column." + name), look);
    }

    private void place(String size, Place place) {
        row++;
        cells.put(row, SIZE_COLUMN, size, Look.LABEL);
        number(STITCHES_COLUMN, new CellContent.Figure(place.stitches()));
        number(YARN_OVERS_COLUMN, new CellContent.Figure(place.openYarnOvers()));
        cells.put(row, LOOK_FOR_COLUMN, PlaceText.of(place.sign()), Look.TEXT);
        cells.put(row, PART_COLUMN, Words.text("part." + place.part().name()), Look.LABEL);
        cells.put(row, KIND_COLUMN, Words.text("kind." + place.first().kind().name()), Look.LABEL);
        number(FROM_COLUMN, number(place.first()));
        number(TO_COLUMN, number(place.last()));
        Optional<Place.Next> next = place.next();
        cells.put(row, NEXT_PART_COLUMN, next.map(other -> Words.text("part." + other.part().name()))
                .orElseGet(() -> Words.text("finder.end")), Look.LABEL);
        number(NEXT_ROUND_COLUMN, next.map(other -> number(other.round())).orElseGet(CellContent.Empty::new));
        cells.put(row, NEXT_WORK_COLUMN, next.map(other -> RoundText.of(other.round())).orElse(""), Look.TEXT);
    }

    private void number(int column, CellContent content) {
        cells.put(row, column, content, Look.COMPUTED, Digits.ALL);
    }

    /** A cast-on or graft carries no number: patterns do not count it. */
    private static CellContent number(Round round) {
        return round.number() == 0 ? new CellContent.Empty() : new CellContent.Figure(round.number());
    }

    private void layout() {
        XSSFSheet sheet = cells.sheet();
        cells.fit(SIZE_COLUMN, 8, 16);
        cells.fit(STITCHES_COLUMN, 10, 10);
        cells.fit(YARN_OVERS_COLUMN, 12, 12);
        cells.fit(LOOK_FOR_COLUMN, 20, 36);
        cells.fit(PART_COLUMN, 8, 12);
        cells.fit(KIND_COLUMN, 10, 12);
        cells.fit(FROM_COLUMN, 8, 8);
        cells.fit(TO_COLUMN, 8, 8);
        cells.fit(NEXT_PART_COLUMN, 10, 12);
        cells.fit(NEXT_ROUND_COLUMN, 8, 8);
        cells.fit(NEXT_WORK_COLUMN, 30, 52);
        sheet.createFreezePane(LOOK_FOR_COLUMN, HEAD_ROW + 1);
        sheet.setAutoFilter(new CellRangeAddress(HEAD_ROW, Math.max(row, HEAD_ROW + 1), SIZE_COLUMN, NEXT_WORK_COLUMN));
        sheet.setRepeatingRows(new CellRangeAddress(HEAD_ROW, HEAD_ROW, -1, -1));
        PrintLayout.onItsSide(sheet, PatternSheet.title(graded));
    }
}
