package turnheel.exchange.workbook;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import turnheel.engine.design.Design;
import turnheel.exchange.edits.EditProblem;
import turnheel.exchange.edits.EditProblem.Kind;
import turnheel.exchange.imprint.ContentHash;

/** Which state of which pattern a workbook was made from, as its title page says. */
final class WorkbookOrigin {

    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    private WorkbookOrigin() {
    }

    /** Why the workbook may not belong to this state of the design; empty when it does. */
    static List<EditProblem> problems(XSSFWorkbook workbook, Design design) {
        for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
            XSSFSheet sheet = workbook.getSheetAt(i);
            Optional<String> hash = hash(sheet);
            if (hash.isPresent()) {
                return problems(hash.get(), words(sheet.getRow(0), 0), design);
            }
        }
        return List.of(new EditProblem(Kind.NO_HASH, "", "", "", ""));
    }

    private static List<EditProblem> problems(String hash, String title, Design design) {
        if (hash.equals(ContentHash.of(design))) {
            return List.of();
        }
        String now = PatternSheet.title(design);
        boolean isOther = !title.equals(now.strip());
        return List.of(new EditProblem(isOther ? Kind.OTHER_PATTERN : Kind.CHANGED_SINCE, "", now, title, ""));
    }

    private static Optional<String> hash(XSSFSheet sheet) {
        for (Row row : sheet) {
            for (int column = row.getFirstCellNum(); column >= 0 && column < row.getLastCellNum() - 1; column++) {
                String beside = words(row, column + 1);
                if (HASH.matcher(beside).matches() && words(row, column).equals(Words.text("pattern.hash"))) {
                    return Optional.of(beside);
                }
            }
        }
        return Optional.empty();
    }

    private static String words(Row row, int column) {
        return row == null ? "" : FoundCell.of(((XSSFRow) row).getCell(column)).words();
    }
}
