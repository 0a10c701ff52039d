package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Design;
import turnheel.engine.design.OwnRow;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Role;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Graded;
import turnheel.engine.term.Key;
import turnheel.engine.term.Notation;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;

/**
 * Whoever types over any input of the Counts sheet gets, in every cell, what the engine gives for that input with its chosen
 * counts and its loops held: both are values, since no formula can choose or knit.
 */
class ChangedInputsTest {

    private static final int SIZE = 0;
    private static final Map<String, Design> DESIGNS = designsWithOwnRows();

    private static Map<String, Design> designsWithOwnRows() {
        Map<String, Design> designs = new LinkedHashMap<>(Designs.all());
        designs.put("own rows", Designs.cuffDown().withOwnRows(List.of(
                new OwnRow(new Key("own.share"), "", "foot.rounds/leg.rounds+gauge.rounds"),
                new OwnRow(new Key("own.twice"), "", "ROUND(own.share*2;1)+body.footLength/fit.easeAround"))));
        return designs;
    }

    static Set<String> designs() {
        return DESIGNS.keySet();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void everyInputCanBeTypedOver(String name) throws IOException {
        Graded before = Patterns.grade(DESIGNS.get(name));
        List<String> changed = new ArrayList<>();
        for (Parameter parameter : before.parameters()) {
            if (parameter.role() == Role.INPUT && before.sizes().get(SIZE).cell(parameter).isPresent()) {
                double value = changed(parameter, before.sizes().get(SIZE).cell(parameter).get().value());
                try (XSSFWorkbook workbook = Books.of(DESIGNS.get(name))) {
                    XSSFCell cell = Books.cell(workbook, parameter.key(), SIZE);
                    if (cell.getCellType() == CellType.FORMULA) {
                        // typing over a default replaces its formula, as in every program
                        cell.removeFormula();
                    }
                    cell.setCellValue(value);
                    assertEvaluatesTo(HeldCounts.grade(before, SIZE, parameter.key().name(), written(parameter, value)),
                            workbook, parameter);
                }
                changed.add(parameter.key().name());
            }
        }
        assertTrue(changed.containsAll(List.of("gauge.stitches", "gauge.rounds", "body.footLength",
                "body.footCircumference", "fit.easeAround", "fit.easeLength")), changed::toString);
    }

    /** A little more, so that counts move but nothing becomes impossible. */
    private static double changed(Parameter parameter, double value) {
        double other = value + switch (parameter.unit()) {
            case PERCENT -> -1.5;
            case PER_100_MM -> 0.5;
            default -> 4;
        };
        return Math.rint(10 * other) / 10;
    }

    private static String written(Parameter parameter, double value) {
        return switch (parameter.unit()) {
            case PERCENT -> Notation.number(value) + " %";
            case PER_100_MM -> Notation.number(value) + "/10 cm";
            default -> Notation.number(value) + " mm";
        };
    }

    private static void assertEvaluatesTo(Graded expected, XSSFWorkbook workbook, Parameter changed) {
        FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        Books.eachNumber(expected, (Cell number, Integer size) -> {
            CellValue value = evaluator.evaluate(Books.cell(workbook, number.key(), size));
            assertEquals(number.value(), value == null ? Double.NaN : value.getNumberValue(), 1e-9,
                    () -> "%s of size %d after a change of %s".formatted(number.key(), size + 1, changed.key()));
        });
    }
}
