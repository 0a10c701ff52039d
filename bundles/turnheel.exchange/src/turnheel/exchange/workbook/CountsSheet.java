package turnheel.exchange.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFDataValidationHelper;
import org.apache.poi.xssf.usermodel.XSSFSheet;

import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.design.Role;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.Source;
import turnheel.engine.grading.Why;
import turnheel.engine.term.Notation;
import turnheel.engine.term.Term;
import turnheel.exchange.table.CellContent;

/**
 * The grading table: a row for every number, a column for every size. What a rule gives is a live formula, defaults
 * of empty inputs included; inputs, overrides and chosen counts are values.
 */
final class CountsSheet {

    static final String NAME = Words.text("counts.sheet");
    static final int KEY_COLUMN = 0;
    static final int LABEL_COLUMN = 1;
    static final int UNIT_COLUMN = 2;
    static final int FIRST_SIZE_COLUMN = 3;

    private static final int HEAD_ROW = 2;
    private static final int CHARACTERS_PER_LINE = 90;

    private final Graded graded;
    private final CellWriter cells;
    private final int lastColumn;
    private int row = HEAD_ROW;

    private CountsSheet(Graded graded, CellWriter cells) {
        this.graded = graded;
        this.cells = cells;
        this.lastColumn = FIRST_SIZE_COLUMN + graded.sizes().size() - 1;
    }

    static void write(Graded graded, CellWriter cells) {
        new CountsSheet(graded, cells).write();
    }

    private void write() {
        head();
        for (Part part : Part.values()) {
            List<Parameter> ofPart = graded.parameters().stream()
                    .filter(parameter -> parameter.part() == part).toList();
            if (!ofPart.isEmpty()) {
                row++;
                cells.group(row, lastColumn, Words.text("part." + part.name()));
                ofPart.forEach(this::parameter);
            }
        }
        legend();
        layout();
    }

    private void head() {
        cells.title(lastColumn, CHARACTERS_PER_LINE, PatternSheet.title(graded));
        cells.put(1, 0, Words.text("counts.note"), Look.NOTE);
        cells.put(HEAD_ROW, KEY_COLUMN, Words.text("column.key"), Look.HEAD);
        cells.put(HEAD_ROW, LABEL_COLUMN, Words.text("column.label"), Look.HEAD);
        cells.put(HEAD_ROW, UNIT_COLUMN, Words.text("column.unit"), Look.HEAD);
        for (int size = 0; size < graded.sizes().size(); size++) {
            cells.put(HEAD_ROW, FIRST_SIZE_COLUMN + size, graded.sizes().get(size).label(), Look.HEAD_OF_NUMBERS);
        }
    }

    private void parameter(Parameter parameter) {
        row++;
        cells.put(row, KEY_COLUMN, parameter.key().name(), Look.KEY);
        cells.put(row, LABEL_COLUMN, parameter.label(), Look.LABEL);
        cells.put(row, UNIT_COLUMN, parameter.unit().symbol(), Look.KEY);
        for (int size = 0; size < graded.sizes().size(); size++) {
            number(parameter, size, graded.sizes().get(size).cell(parameter));
        }
        if (parameter.role() == Role.INPUT || parameter.role() == Role.RULE) {
            validate(parameter);
        }
    }

    private void number(Parameter parameter, int size, Optional<Cell> graduated) {
        int column = FIRST_SIZE_COLUMN + size;
        Digits digits = Digits.of(parameter.unit());
        if (graduated.isEmpty()) {
            Look look = parameter.role() == Role.INPUT ? Look.ENTERED : Look.COMPUTED;
            cells.put(row, column, new CellContent.Empty(), look, digits);
        } else {
            Cell cell = graduated.get();
            cells.put(row, column, content(cell, size), look(cell.source()), digits);
            if (cell.source() == Source.OVERRIDE || cell.source() == Source.CHOSEN) {
                cells.comment(row, column,
                        String.join("\n", Why.lines(graded, cell.key(), graded.sizes().get(size).label())));
            }
        }
        CellNames.define(cells.sheet(), parameter.key(), size, row, column);
    }

    private CellContent content(Cell cell, int size) {
        return switch (cell.source()) {
            case INPUT, CHOSEN, OVERRIDE -> new CellContent.Figure(cell.value());
            case DEFAULT, PREDICTED, RULE, OWN -> {
                Term rule = graded.rules().rule(cell.key()).orElseThrow(() -> new IllegalStateException(
                        "%s comes from %s but has no rule".formatted(cell.key(), cell.source())));
                yield new CellContent.Formula(Notation.formula(rule, key -> CellNames.of(key, size)), cell.value());
            }
        };
    }

    static Look look(Source source) {
        return switch (source) {
            case INPUT -> Look.ENTERED;
            case DEFAULT, PREDICTED -> Look.DEFAULT;
            case RULE, OWN -> Look.COMPUTED;
            case CHOSEN -> Look.CHOSEN;
            case OVERRIDE -> Look.OVERRIDDEN;
        };
    }

    /** What can be set has a range; whoever types outside of it is asked, in the program's own way. */
    private void validate(Parameter parameter) {
        XSSFSheet sheet = cells.sheet();
        XSSFDataValidationHelper helper = new XSSFDataValidationHelper(sheet);
        String least = Double.toString(parameter.least());
        String most = Double.toString(parameter.most());
        DataValidationConstraint range = parameter.unit().isWhole()
                ? helper.createIntegerConstraint(OperatorType.BETWEEN, whole(parameter.least()),
                        whole(parameter.most()))
                : helper.createDecimalConstraint(OperatorType.BETWEEN, least, most);
        DataValidation validation = helper.createValidation(range,
                new CellRangeAddressList(row, row, FIRST_SIZE_COLUMN, lastColumn));
        validation.setEmptyCellAllowed(true);
        validation.setShowErrorBox(true);
        validation.createErrorBox(parameter.label(), Words.text("counts.range", parameter.label(),
                Notation.number(parameter.least()), Notation.number(parameter.most()), parameter.unit().symbol()));
        sheet.addValidationData(validation);
    }

    private static String whole(double bound) {
        return Long.toString(Math.round(bound));
    }

    private void legend() {
        row++;
        List<Source> sources = new ArrayList<>(
                List.of(Source.INPUT, Source.DEFAULT, Source.RULE, Source.CHOSEN, Source.OVERRIDE));
        if (!graded.design().ownRows().isEmpty()) {
            sources.add(Source.OWN);
        }
        for (Source source : sources) {
            row++;
            cells.put(row, KEY_COLUMN, Words.text("source." + source.name()), look(source));
            cells.put(row, LABEL_COLUMN, Words.text("source." + source.name() + ".meaning"), Look.NOTE);
        }
    }

    private void layout() {
        XSSFSheet sheet = cells.sheet();
        cells.fit(KEY_COLUMN, 12, 24);
        cells.fit(LABEL_COLUMN, 12, 30);
        cells.fit(UNIT_COLUMN, 8, 20);
        for (int column = FIRST_SIZE_COLUMN; column <= lastColumn; column++) {
            cells.fit(column, 9, 14);
        }
        sheet.createFreezePane(FIRST_SIZE_COLUMN, HEAD_ROW + 1);
        sheet.setRepeatingRows(new CellRangeAddress(HEAD_ROW, HEAD_ROW, -1, -1));
        sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, KEY_COLUMN, UNIT_COLUMN));
        PrintLayout.table(sheet, PatternSheet.title(graded), graded.sizes().size());
    }
}
