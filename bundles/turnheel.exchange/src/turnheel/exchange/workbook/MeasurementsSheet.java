package turnheel.exchange.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.LengthUnit;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.design.Unit;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.Source;
import turnheel.engine.term.Notation;
import turnheel.exchange.edits.EditProblem;
import turnheel.exchange.table.CellContent;

/**
 * Body, ease and finished measurements in centimetres and inches. Every number is a live formula that converts the
 * cell of the Counts sheet, so that there is one place to change a measurement.
 */
final class MeasurementsSheet {

    static final String NAME = Words.text("measurements.sheet");
    static final int LABEL_COLUMN = 0;
    static final int UNIT_COLUMN = 1;
    static final int FIRST_SIZE_COLUMN = 2;

    private static final int HEAD_ROW = 2;
    private static final int CHARACTERS_PER_LINE = 80;

    private final Graded graded;
    private final CellWriter cells;
    private final int lastColumn;
    private int row = HEAD_ROW;

    private MeasurementsSheet(Graded graded, CellWriter cells) {
        this.graded = graded;
        this.cells = cells;
        this.lastColumn = FIRST_SIZE_COLUMN + graded.sizes().size() - 1;
    }

    static void write(Graded graded, CellWriter cells) {
        new MeasurementsSheet(graded, cells).write();
    }

    /** Numbers that somebody typed over the formulas here; they are not read, since the Counts sheet says otherwise. */
    static List<EditProblem> typedOver(XSSFWorkbook workbook) {
        List<EditProblem> typed = new ArrayList<>();
        XSSFSheet sheet = workbook.getSheet(NAME);
        if (sheet == null) {
            return typed;
        }
        for (Row row : sheet) {
            for (int column = FIRST_SIZE_COLUMN; row.getRowNum() > HEAD_ROW && column < row.getLastCellNum(); column++) {
                if (FoundCell.of((XSSFCell) row.getCell(column)) instanceof FoundCell.Figure(double value)) {
                    typed.add(new EditProblem(EditProblem.Kind.TYPED_ELSEWHERE,
                            CountsTable.place(sheet, row.getRowNum(), column), "", Notation.number(value),
                            CountsSheet.NAME));
                }
            }
        }
        return typed;
    }

    private void write() {
        head();
        group("body", parameters(Part.BODY));
        group("fit", parameters(Part.FIT));
        group("finished", graded.parameters().stream().filter(MeasurementsSheet::isOfTheSock).toList());
        layout();
    }

    private List<Parameter> parameters(Part part) {
        return graded.parameters().stream().filter(parameter -> parameter.part() == part).toList();
    }

    /**
     * Lengths of the parts that are knitted; what belongs to body and fit stands above, what is left over is no
     * part.
     */
    private static boolean isOfTheSock(Parameter parameter) {
        return parameter.unit() == Unit.MILLIMETRES && !parameter.equals(Catalogue.LENGTH_REST)
                && switch (parameter.part()) {
                    case GAUGE, BODY, FIT, YARN, OWN -> false;
                    case TOE, FOOT, HEEL, LEG, CUFF -> true;
                };
    }

    private void head() {
        cells.title(lastColumn, CHARACTERS_PER_LINE, PatternSheet.title(graded));
        cells.put(1, LABEL_COLUMN, Words.text("measurements.note"), Look.NOTE);
        cells.put(HEAD_ROW, LABEL_COLUMN, Words.text("column.measurement"), Look.HEAD);
        cells.put(HEAD_ROW, UNIT_COLUMN, Words.text("column.unit"), Look.HEAD);
        for (int size = 0; size < graded.sizes().size(); size++) {
            cells.put(HEAD_ROW, FIRST_SIZE_COLUMN + size, graded.sizes().get(size).label(), Look.HEAD_OF_NUMBERS);
        }
    }

    private void group(String name, List<Parameter> parameters) {
        row++;
        cells.group(row, lastColumn, Words.text("measurements.group." + name));
        parameters.forEach(this::measurement);
    }

    private void measurement(Parameter parameter) {
        if (parameter.unit() == Unit.MILLIMETRES) {
            length(parameter, LengthUnit.CENTIMETRE, parameter.label(), Digits.TENTHS);
            length(parameter, LengthUnit.INCH, "", Digits.HUNDREDTHS);
        } else {
            line(parameter, parameter.label(), parameter.unit().symbol(), Digits.of(parameter.unit()), "", 1);
        }
    }

    private void length(Parameter parameter, LengthUnit unit, String label, Digits digits) {
        double millimetres = unit.millimetres();
        String divisor = millimetres == Math.rint(millimetres) ? Long.toString((long) millimetres)
                : Double.toString(millimetres);
        line(parameter, label, unit.symbol(), digits, "/" + divisor, millimetres);
    }

    private void line(Parameter parameter, String label, String unit, Digits digits, String conversion,
            double divisor) {
        row++;
        CellContent first = label.isEmpty() ? new CellContent.Empty() : new CellContent.Text(label);
        cells.put(row, LABEL_COLUMN, first, Look.LABEL, Digits.ALL);
        cells.put(row, UNIT_COLUMN, unit, Look.KEY);
        for (int size = 0; size < graded.sizes().size(); size++) {
            Optional<Cell> cell = graded.sizes().get(size).cell(parameter);
            boolean isDefault = cell.filter(known -> known.source() == Source.DEFAULT).isPresent();
            Look look = isDefault ? Look.DEFAULT : Look.COMPUTED;
            String expression = CellNames.of(parameter.key(), size) + conversion;
            CellContent content = cell.isEmpty() ? new CellContent.Empty()
                    : new CellContent.Formula(expression, cell.get().value() / divisor);
            cells.put(row, FIRST_SIZE_COLUMN + size, content, look, digits);
        }
    }

    private void layout() {
        XSSFSheet sheet = cells.sheet();
        cells.fit(LABEL_COLUMN, 16, 34);
        cells.fit(UNIT_COLUMN, 7, 12);
        for (int column = FIRST_SIZE_COLUMN; column <= lastColumn; column++) {
            cells.fit(column, 9, 14);
        }
        sheet.createFreezePane(FIRST_SIZE_COLUMN, HEAD_ROW + 1);
        sheet.setRepeatingRows(new CellRangeAddress(HEAD_ROW, HEAD_ROW, -1, -1));
        sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, LABEL_COLUMN, UNIT_COLUMN));
        PrintLayout.table(sheet, PatternSheet.title(graded), graded.sizes().size());
        // the two rows of a length belong together
        sheet.getPrintSetup().setFitHeight((short) 1);
    }
}
