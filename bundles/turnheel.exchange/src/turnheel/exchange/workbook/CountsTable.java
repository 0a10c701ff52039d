package turnheel.exchange.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import turnheel.engine.term.Key;

/**
 * Where the numbers stand in a workbook that came back. The sheet is known by its headings, a row by its key or by the
 * names of its cells, a column by its size's label; rows and columns may have been moved, and others put between.
 */
final class CountsTable {

    /** Above the headings there are a title and a note, and perhaps what somebody put there. */
    private static final int LAST_HEAD_ROW = 30;
    private static final int MOST_COLUMNS = 256;
    private static final Pattern ONE_CELL = Pattern.compile("(?:(?<sheet>'(?:[^']|'')+'|[^'!:,]+)!)?\\$?(?<column>[A-Za-z]{1,3})"
            + "\\$?(?<row>\\d{1,7})");

    /** A row with a key, as it stands in the sheet: several may have one key. */
    record KeyedRow(String key, int row) {
    }

    /** A number of the table. */
    record Number(String key, String label) {
    }

    private final XSSFSheet sheet;
    private final int headRow;
    private final int keyColumn;
    private final int labelColumn;
    private final int firstSizeColumn;
    /** By name in small letters, to the place in this sheet. */
    private final Map<String, CellReference> names = new HashMap<>();
    private final List<KeyedRow> rows = new ArrayList<>();
    private final Map<Integer, String> headings = new LinkedHashMap<>();

    private CountsTable(XSSFSheet sheet, int headRow, Map<String, Integer> columns) {
        this.sheet = sheet;
        this.headRow = headRow;
        this.keyColumn = columns.get(Words.text("column.key"));
        this.labelColumn = columns.get(Words.text("column.label"));
        this.firstSizeColumn = columns.get(Words.text("column.unit")) + 1;
        readNames();
        readHeadings();
        readRows();
    }

    /** The table in a workbook; empty when no sheet has its headings. */
    static Optional<CountsTable> in(XSSFWorkbook workbook) {
        XSSFSheet usual = workbook.getSheet(CountsSheet.NAME);
        Optional<CountsTable> there = usual == null ? Optional.empty() : in(usual);
        for (int i = 0; i < workbook.getNumberOfSheets() && there.isEmpty(); i++) {
            there = in(workbook.getSheetAt(i));
        }
        return there;
    }

    private static Optional<CountsTable> in(XSSFSheet sheet) {
        for (int row = 0; row <= LAST_HEAD_ROW; row++) {
            Map<String, Integer> columns = new HashMap<>();
            XSSFRow cells = sheet.getRow(row);
            for (int column = 0; cells != null && column < Math.min(cells.getLastCellNum(), MOST_COLUMNS); column++) {
                columns.putIfAbsent(FoundCell.of(cells.getCell(column)).words(), column);
            }
            if (columns.keySet().containsAll(List.of(Words.text("column.key"), Words.text("column.label"),
                    Words.text("column.unit")))) {
                return Optional.of(new CountsTable(sheet, row, columns));
            }
        }
        return Optional.empty();
    }

    private void readNames() {
        for (XSSFName name : sheet.getWorkbook().getAllNames()) {
            String formula = name.getRefersToFormula();
            if (CellNames.key(name.getNameName()).isPresent() && formula != null) {
                reference(formula).ifPresent(place -> names.put(name.getNameName().toLowerCase(Locale.ROOT), place));
            }
        }
    }

    private void readHeadings() {
        XSSFRow head = sheet.getRow(headRow);
        for (int column = firstSizeColumn; column < Math.min(head.getLastCellNum(), MOST_COLUMNS); column++) {
            String words = FoundCell.of(head.getCell(column)).words().strip();
            if (!words.isEmpty()) {
                headings.put(column, words);
            }
        }
    }

    private void readRows() {
        for (Row row : sheet) {
            if (row.getRowNum() > headRow) {
                String words = cell(row.getRowNum(), keyColumn).words().strip();
                String key = Key.isKey(words) ? words : named(row.getRowNum());
                if (!key.isEmpty()) {
                    rows.add(new KeyedRow(key, row.getRowNum()));
                }
            }
        }
    }

    /** The key that the names of a row's cells have, for a row whose own key is lost. */
    private String named(int row) {
        return names.entrySet().stream().filter(name -> name.getValue().getRow() == row).map(Map.Entry::getKey).sorted()
                .findFirst().flatMap(this::nameWithCapitals).flatMap(CellNames::key).map(Key::name).orElse("");
    }

    private Optional<String> nameWithCapitals(String name) {
        return sheet.getWorkbook().getAllNames().stream().map(XSSFName::getNameName).filter(name::equalsIgnoreCase)
                .findFirst();
    }

    /** All rows that have a key, in the order of the sheet. */
    List<KeyedRow> rows() {
        return rows;
    }

    /** The headings of the columns for sizes and what somebody put among them, by column. */
    Map<Integer, String> headings() {
        return headings;
    }

    /** Whether a column holds figures or formulas in rows that have a key. */
    boolean holdsNumbers(int column) {
        return rows.stream().map(row -> cell(row.row(), column))
                .anyMatch(cell -> cell instanceof FoundCell.Figure || cell instanceof FoundCell.Formula);
    }

    FoundCell cell(int row, int column) {
        XSSFRow cells = sheet.getRow(row);
        return FoundCell.of(cells == null ? null : cells.getCell(column));
    }

    /** What people read in the row. */
    String label(int row) {
        return cell(row, labelColumn).words();
    }

    /** The cell as a person finds it. */
    String place(int row, int column) {
        return place(sheet, row, column);
    }

    static String place(XSSFSheet sheet, int row, int column) {
        return sheet.getSheetName() + "!" + new CellReference(row, column).formatAsString();
    }

    String place() {
        return sheet.getSheetName();
    }

    /**
     * The number that a word of a formula means.
     *
     * @param word a name, or the reference of a cell
     */
    Optional<Number> number(String word) {
        CellReference named = names.get(word.toLowerCase(Locale.ROOT));
        Optional<CellReference> place = named == null ? reference(word) : Optional.of(named);
        return place.flatMap(at -> rows.stream().filter(row -> row.row() == at.getRow()).findFirst()
                .filter(row -> headings.containsKey((int) at.getCol()))
                .map(row -> new Number(row.key(), headings.get((int) at.getCol()))));
    }

    /**
     * The key that a word of a formula means in the column of a size; one of another column has that size's label after
     * it, so that the two are not taken for each other.
     */
    Optional<String> word(String word, String label) {
        return number(word).map(number -> number.label().equals(label.strip()) ? number.key()
                : number.key() + "[" + number.label() + "]");
    }

    /** A word that is a key already. */
    static Optional<String> ofKey(String word) {
        return Optional.of(word).filter(Key::isKey);
    }

    /** The place in this sheet that a text refers to. */
    private Optional<CellReference> reference(String text) {
        Matcher matcher = ONE_CELL.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String of = matcher.group("sheet");
        String name = of != null && of.startsWith("'") ? of.substring(1, of.length() - 1).replace("''", "'") : of;
        return name == null || name.equalsIgnoreCase(sheet.getSheetName())
                ? Optional.of(new CellReference(matcher.group("column") + matcher.group("row"))) : Optional.empty();
    }
}
