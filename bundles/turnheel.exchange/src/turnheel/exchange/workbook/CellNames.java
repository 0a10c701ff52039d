package turnheel.exchange.workbook;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;

import turnheel.engine.term.Key;

/**
 * The defined names of a workbook: the key and the position of the size, counted from 1, joined by underscores, as
 * in {@code foot_stitches_size2}. Letters, digits and underscores are what every spreadsheet program allows in a
 * name; a dot is not, and some read {@code toe.tip} as a range of columns. No name looks like a cell, since no
 * column has an underscore. Labels of sizes are no part of a name: they can be anything ({@code 38/39}) and change.
 * Keys have no underscore of their own, so that a name can be taken apart again.
 */
final class CellNames {

    private static final String SIZE = "_size";
    private static final Pattern SHAPE = Pattern.compile("([A-Za-z0-9]+_[A-Za-z0-9]+)" + SIZE + "\\d+");

    private CellNames() {
    }

    /**
     * The name of a number of one size.
     *
     * @param size position of the size, from 0
     */
    static String of(Key key, int size) {
        return of(key) + SIZE + (size + 1);
    }

    /** The key in a name; empty when the name is none of these. */
    static Optional<Key> key(String name) {
        Matcher matcher = SHAPE.matcher(name);
        return matcher.matches() ? Optional.of(matcher.group(1).replace('_', '.')).filter(Key::isKey).map(Key::new)
                : Optional.empty();
    }

    /** Gives the cell of a number of one size its name. */
    static void define(XSSFSheet sheet, Key key, int size, int row, int column) {
        define(sheet, of(key, size), row, column);
    }

    /** The name of a number that belongs to whoever uses the workbook, not to a size. */
    static String of(Key key) {
        return key.name().replace('.', '_');
    }

    /** Gives the cell of such a number its name. */
    static void define(XSSFSheet sheet, Key key, int row, int column) {
        define(sheet, of(key), row, column);
    }

    private static void define(XSSFSheet sheet, String text, int row, int column) {
        XSSFName name = sheet.getWorkbook().createName();
        name.setNameName(text);
        name.setRefersToFormula(new CellReference(sheet.getSheetName(), row, column, true, true).formatAsString());
    }
}
