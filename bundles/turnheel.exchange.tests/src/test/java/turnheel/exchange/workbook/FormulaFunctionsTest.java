package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.ptg.AbstractFunctionPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

import turnheel.engine.design.Design;
import turnheel.engine.design.OwnRow;
import turnheel.engine.term.Key;
import turnheel.exchange.Designs;

/** Formulas call nothing but functions of the standard (ECMA-376 part 1, § 18.17.7), which every program has. */
class FormulaFunctionsTest {

    private static final Set<String> OF_THE_STANDARD = Set.of("IF", "INT", "MAX", "MIN", "MOD", "ROUND",
            "ROUNDDOWN", "ROUNDUP", "SQRT");
    private static final Pattern CALL = Pattern.compile("([A-Za-z._]+)\\(");

    private static final List<String> OWN_FORMULAS = List.of("ROUND(foot.rounds/7;1)", "ROUNDUP(foot.rounds/7;0)",
            "ROUNDDOWN(foot.rounds/7;0)", "INT(-foot.rounds/7)", "CEILING(foot.rounds;4)", "FLOOR(foot.rounds;4)",
            "EVEN(foot.rounds)", "ODD(foot.rounds)", "MOD(foot.rounds;7)", "QUOTIENT(foot.rounds;7)", "ABS(fit.easeAround)",
            "SUM(foot.instep;foot.sole)", "MIN(foot.rounds;5)", "MAX(foot.rounds;5)",
            "IF(AND(foot.rounds>5;NOT(foot.sole=3));1;IF(OR(foot.sole<3;foot.sole>4);2;3))", "foot.sole^2", "SQRT(foot.sole)");

    private static List<Design> designs() {
        List<Design> designs = new ArrayList<>(Designs.all().values());
        designs.addAll(Designs.combinations(Designs.toeUp().sizes().subList(1, 3)));
        List<OwnRow> rows = new ArrayList<>();
        for (int i = 0; i < OWN_FORMULAS.size(); i++) {
            rows.add(new OwnRow(new Key("own.row" + (char) ('A' + i)), "", OWN_FORMULAS.get(i)));
        }
        designs.add(Designs.toeUp().withOwnRows(rows));
        return designs;
    }

    @Test
    void areOfTheStandardAndParsedWhole() throws IOException {
        Set<String> called = new TreeSet<>();
        for (Design design : designs()) {
            try (XSSFWorkbook workbook = Books.of(design)) {
                XSSFEvaluationWorkbook names = XSSFEvaluationWorkbook.create(workbook);
                for (XSSFCell cell : Books.formulaCells(workbook)) {
                    Set<String> written = CALL.matcher(cell.getCellFormula()).results().map(match -> match.group(1))
                            .collect(Collectors.toSet());
                    Set<String> parsed = new TreeSet<>();
                    for (Ptg token : FormulaParser.parse(cell.getCellFormula(), names, FormulaType.CELL, 0)) {
                        if (token instanceof AbstractFunctionPtg function) {
                            parsed.add(function.getName());
                        }
                    }
                    assertEquals(written, parsed, cell.getCellFormula());
                    called.addAll(written);
                }
            }
        }
        assertEquals(OF_THE_STANDARD, called);
    }
}
