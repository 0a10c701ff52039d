package turnheel.exchange.workbook;

import java.util.List;

import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFDataValidationHelper;
import org.apache.poi.xssf.usermodel.XSSFSheet;

import turnheel.engine.checks.Checks;
import turnheel.engine.design.Parameter;
import turnheel.engine.grading.Graded;
import turnheel.engine.query.Place;
import turnheel.engine.query.Query;
import turnheel.engine.query.Sentences;
import turnheel.engine.query.Severity;
import turnheel.exchange.imprint.ContentHash;
import turnheel.exchange.table.CellContent;
import turnheel.exchange.table.QueryColumn;

/**
 * What the checks ask of this state of the design, with room for answers, and the lines on which it is signed. The
 * columns are those of {@link QueryColumn}.
 */
final class QueriesSheet {

    static final String NAME = Words.text("queries.sheet");

    private static final List<QueryColumn> COLUMNS = QueryColumn.ofDesigns();
    private static final int HEAD_ROW = 4;
    private static final int CHARACTERS_PER_LINE = 110;

    private final Graded graded;
    private final CellWriter cells;
    private final List<Query> queries;
    private int row = HEAD_ROW;

    private QueriesSheet(Graded graded, CellWriter cells) {
        this.graded = graded;
        this.cells = cells;
        this.queries = Checks.of(graded);
    }

    static void write(Graded graded, CellWriter cells) {
        new QueriesSheet(graded, cells).write();
    }

    private void write() {
        cells.title(COLUMNS.size() - 1, CHARACTERS_PER_LINE, PatternSheet.title(graded));
        cells.put(1, 0, Words.text("queries.hash", ContentHash.of(graded.design())), Look.NOTE);
        cells.put(2, 0, summary(), Look.NOTE);
        for (QueryColumn column : COLUMNS) {
            cells.put(HEAD_ROW, column(column), Words.text("query." + column.name()),
                    column == QueryColumn.NUMBER ? Look.HEAD_OF_NUMBERS : Look.HEAD);
        }
        queries.forEach(this::query);
        if (queries.isEmpty()) {
            row++;
            cells.put(row, column(QueryColumn.QUERY), Words.text("queries.none"), Look.TEXT);
        } else {
            offerMarks();
        }
        signOff();
        layout();
    }

    private static int column(QueryColumn column) {
        return COLUMNS.indexOf(column);
    }

    private String summary() {
        return queries.isEmpty() ? Words.text("queries.summary.none")
                : Words.text("queries.summary", number(Severity.ERROR), number(Severity.WARNING));
    }

    private String number(Severity severity) {
        return Long.toString(queries.stream().filter(query -> query.severity() == severity).count());
    }

    private void query(Query query) {
        row++;
        for (QueryColumn column : COLUMNS) {
            switch (column) {
                case NUMBER -> cells.put(row, column(column), new CellContent.Figure(row - HEAD_ROW), Look.COMPUTED,
                        Digits.ALL);
                case SEVERITY -> cells.put(row, column(column), Words.text("severity." + query.severity().name()),
                        query.severity() == Severity.ERROR ? Look.WARNING : Look.TEXT);
                case PLACE -> put(column, place(query));
                case SIZES -> put(column, String.join(", ", query.sizes()));
                case CHECK -> cells.put(row, column(column), query.check().id(), Look.KEY);
                case QUERY -> put(column, Sentences.of(query));
                case EXPECTED -> put(column, query.expected());
                case FOUND -> put(column, query.found());
                case CORRECTION -> put(column, query.correction());
                case ANSWER, DONE -> cells.put(row, column(column), new CellContent.Empty(), Look.TEXT, Digits.ALL);
                case STATE, LINE, TEXT -> throw new IllegalStateException(column + " is of manuscripts");
            }
        }
    }

    private void put(QueryColumn column, String text) {
        cells.put(row, column(column), text, Look.TEXT);
    }

    private String place(Query query) {
        return switch (query.place()) {
            case Place.Row(var key) -> graded.parameters().stream().filter(parameter -> parameter.key().equals(key))
                    .map(Parameter::label).findFirst().orElseGet(key::name);
            case Place.Text(int line, int from, int to) -> Integer.toString(line);
        };
    }

    /** What an editor can choose for a query that was dealt with. */
    private void offerMarks() {
        XSSFSheet sheet = cells.sheet();
        XSSFDataValidationHelper helper = new XSSFDataValidationHelper(sheet);
        DataValidation marks = helper.createValidation(
                helper.createExplicitListConstraint(new String[] {Words.text("done.yes"), Words.text("done.no")}),
                new CellRangeAddressList(HEAD_ROW + 1, row, column(QueryColumn.DONE), column(QueryColumn.DONE)));
        marks.setEmptyCellAllowed(true);
        marks.setShowErrorBox(true);
        marks.createErrorBox(Words.text("query." + QueryColumn.DONE.name()), Words.text("done.choose"));
        sheet.addValidationData(marks);
    }

    private void signOff() {
        row += 2;
        cells.put(row, 0, Words.text("signOff"), Look.GROUP);
        for (int column = 1; column < COLUMNS.size(); column++) {
            cells.put(row, column, new CellContent.Empty(), Look.GROUP, Digits.ALL);
        }
        for (String who : List.of("signOff.checked", "signOff.approved")) {
            row += 2;
            line(who, 0, column(QueryColumn.PLACE), column(QueryColumn.QUERY));
            line("signOff.date", column(QueryColumn.EXPECTED), column(QueryColumn.FOUND), column(QueryColumn.CORRECTION));
        }
        row += 2;
        cells.put(row, 0, Words.text("signOff.note"), Look.NOTE);
    }

    /** Words and, some columns on, room to write. */
    private void line(String key, int column, int from, int to) {
        cells.put(row, column, Words.text(key), Look.NOTE);
        for (int room = from; room <= to; room++) {
            cells.put(row, room, new CellContent.Empty(), Look.TEXT, Digits.ALL);
        }
    }

    private void layout() {
        XSSFSheet sheet = cells.sheet();
        for (QueryColumn column : COLUMNS) {
            switch (column) {
                case NUMBER -> cells.fit(column(column), 7, 7);
                case SEVERITY, DONE -> cells.fit(column(column), 11, 11);
                case PLACE, SIZES, EXPECTED, FOUND, CORRECTION -> cells.fit(column(column), 12, 18);
                case CHECK -> cells.fit(column(column), 12, 22);
                case QUERY -> cells.fit(column(column), 44, 56);
                case ANSWER -> cells.fit(column(column), 30, 30);
                case STATE, LINE, TEXT -> throw new IllegalStateException(column + " is of manuscripts");
            }
        }
        sheet.createFreezePane(0, HEAD_ROW + 1);
        sheet.setRepeatingRows(new CellRangeAddress(HEAD_ROW, HEAD_ROW, -1, -1));
        PrintLayout.onItsSide(sheet, PatternSheet.title(graded));
    }
}
