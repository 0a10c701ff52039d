package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

import turnheel.engine.design.Cuff;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Heel;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Leg;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.Size;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Fit;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.design.Toe;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.grading.Graded;
import turnheel.engine.yarn.Patterns;
import turnheel.engine.term.Key;
import turnheel.exchange.Designs;

/** POI's own evaluator computes every formula; a second opinion beside LibreOffice, and a fast one. */
class PoiRecalculationTest {

    private static final Map<String, Design> DESIGNS = Designs.all();

    static Set<String> designs() {
        return DESIGNS.keySet();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void everyFormulaGivesTheStoredValue(String name) throws IOException {
        try (XSSFWorkbook workbook = Books.of(DESIGNS.get(name))) {
            assertEvaluatesToStored(workbook);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void everyNumberIsTheEngines(String name) throws IOException {
        try (XSSFWorkbook workbook = Books.of(DESIGNS.get(name))) {
            assertEvaluatesTo(Patterns.grade(DESIGNS.get(name)), workbook);
        }
    }

    @ParameterizedTest(name = "{0} {1} = {2}")
    @CsvSource(textBlock = """
            # design, key, as written, in the cell
            toe-up,    body.footLength,        262 mm,    262
            toe-up,    body.footCircumference, 228.5 mm,  228.5
            toe-up,    body.heelCircumference, 320 mm,    320
            toe-up,    gauge.stitches,         29/10 cm,  29
            toe-up,    gauge.rounds,           41.5/10 cm, 41.5
            toe-up,    body.legHeight,         180 mm,    180
            toe-up,    fit.easeAround,         -12.5 %,   -12.5
            cuff-down, body.footLength,        260 mm,    260
            cuff-down, fit.easeLength,         -3 mm,     -3
            overrides, body.footLength,        233 mm,    233
            six-lines, gauge.rounds,           33/10 cm,  33
            twelve,    body.footLength,        128 mm,    128
            """)
    void aChangedInputGivesWhatTheEngineGivesWithTheCountsHeld(String name, String key, String written, double inCell)
            throws IOException {
        int size = 1;
        Graded before = Patterns.grade(DESIGNS.get(name));
        try (XSSFWorkbook workbook = Books.of(DESIGNS.get(name))) {
            XSSFCell cell = Books.cell(workbook, new Key(key), size);
            if (cell.getCellType() == CellType.FORMULA) {
                // typing over a default replaces its formula, as in every program
                cell.removeFormula();
            }
            cell.setCellValue(inCell);
            assertEvaluatesTo(HeldCounts.grade(before, size, key, written), workbook);
        }
    }

    /** Every kind of toe with every heel, both ways; legs and cuffs take turns. */
    static List<Design> combinations() {
        List<Design> combinations = new ArrayList<>();
        int turn = 0;
        for (Direction direction : Direction.values()) {
            for (Toe toe : Designs.toes()) {
                for (Heel heel : Designs.heels()) {
                    combinations.add(Designs.of(toe + " " + heel, direction, toe, heel,
                            Designs.legs().get(turn % Designs.legs().size()),
                            Designs.cuffs().get(turn / Designs.legs().size() % Designs.cuffs().size()), List.of()));
                    turn++;
                }
            }
        }
        return combinations;
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("combinations")
    void everyKindEvaluatesToWhatTheEngineSays(Design design) throws IOException {
        try (XSSFWorkbook workbook = Books.of(design)) {
            assertEvaluatesToStored(workbook);
            assertEvaluatesTo(Patterns.grade(design), workbook);
        }
    }

    @Property(tries = 60)
    void anyDesignEvaluatesToWhatTheEngineSays(@ForAll("anyDesigns") Design design) throws IOException {
        try (XSSFWorkbook workbook = Books.of(design)) {
            assertEvaluatesTo(Patterns.grade(design), workbook);
        }
    }

    private record Parts(Toe toe, Heel heel, Leg leg, Cuff cuff, List<StitchPattern> patterns) {
    }

    @Provide
    Arbitrary<Design> anyDesigns() {
        Arbitrary<Toe> toes = Arbitraries.oneOf(
                Combinators.combine(Arbitraries.integers().between(2, 12), Arbitraries.of(Increase.class))
                        .as(RoundToe::new),
                Arbitraries.of(Increase.class).map(WedgeToe::new), Arbitraries.of(Designs.toes()));
        Arbitrary<List<StitchPattern>> patterns = Combinators.combine(Arbitraries.of(Zone.class),
                Arbitraries.integers().between(1, 12), Arbitraries.integers().between(0, 3), Arbitraries.of(Fit.class))
                .as((zone, repeat, edge, fit) -> new StitchPattern(zone, repeat, edge, 4, fit, 1)).list().ofMaxSize(1);
        Arbitrary<Cuff> ribs = Combinators.combine(Arbitraries.integers().between(1, 4),
                Arbitraries.integers().between(1, 3)).as((knit, purl) -> new RibCuff(knit, purl));
        Arbitrary<Cuff> cuffs = Arbitraries.oneOf(ribs, Arbitraries.of(Designs.cuffs()));
        Arbitrary<Heel> heels = Arbitraries.of(Designs.heels());
        Arbitrary<Leg> legs = Arbitraries.oneOf(Arbitraries.of(SockLength.class).map(StraightLeg::new),
                Arbitraries.of(Designs.legs()));
        Arbitrary<Parts> parts = Combinators.combine(toes, heels, legs, cuffs, patterns).as(Parts::new);
        Arbitrary<List<Size>> sizes = Combinators.combine(Arbitraries.integers().between(90, 330),
                Arbitraries.integers().between(90, 330), Arbitraries.integers().between(130, 450),
                Arbitraries.integers().between(16, 130)).as((length, around, heel, count) -> List.of(
                        Designs.size("1", length + " mm", around + " mm", heel + " mm"),
                        Designs.with(Designs.size("2", length + 7 + " mm", around + 11 + " mm", heel + 13 + " mm"),
                                Map.of(), Map.of("foot.stitches", Integer.toString(count)))));
        return Combinators.combine(Arbitraries.of(Direction.class), Arbitraries.integers().between(120, 600),
                Arbitraries.integers().between(160, 800), parts, sizes)
                .as((direction, stitches, rounds, all, run) -> new Design("", direction,
                        Designs.gauge(stitches / 10.0 + "/10 cm"), Designs.gauge(rounds / 10.0 + "/10 cm"),
                        all.toe(), all.heel(), all.leg(), all.cuff(), all.patterns(), run));
    }

    private static void assertEvaluatesToStored(XSSFWorkbook workbook) {
        FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        List<XSSFCell> formulas = Books.formulaCells(workbook);
        assertTrue(formulas.size() > 50, "there are formulas to compare");
        for (XSSFCell cell : formulas) {
            CellValue value = evaluator.evaluate(cell);
            assertEquals(cell.getCachedFormulaResultType(), value.getCellType(),
                    () -> Books.place(cell) + " = " + value.formatAsString());
            if (value.getCellType() == CellType.STRING) {
                assertEquals(cell.getStringCellValue(), value.getStringValue(), () -> Books.place(cell));
                continue;
            }
            assertEquals(CellType.NUMERIC, value.getCellType(), () -> Books.place(cell));
            assertEquals(cell.getNumericCellValue(), value.getNumberValue(), 1e-9, () -> Books.place(cell) + " ="
                    + cell.getCellFormula());
        }
    }

    private static void assertEvaluatesTo(Graded expected, XSSFWorkbook workbook) {
        FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        Books.eachNumber(expected, (number, size) -> {
            CellValue value = evaluator.evaluate(Books.cell(workbook, number.key(), size));
            assertEquals(number.value(), value.getNumberValue(), 1e-9,
                    () -> "%s of size %d".formatted(number.key(), size + 1));
        });
    }
}
