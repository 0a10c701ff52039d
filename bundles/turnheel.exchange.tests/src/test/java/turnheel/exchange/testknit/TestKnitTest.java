package turnheel.exchange.testknit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Swatch;
import turnheel.engine.design.Yarn;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Document;
import turnheel.exchange.table.TextGrid;
import turnheel.exchange.workbook.TableWorkbook;
import turnheel.exchange.workbook.WorkbookGrid;

class TestKnitTest {

    /** 64 stitches in M, worked in an invented yarn. */
    private static final Graded QUAY = Patterns.grade(Designs.toeUp().withMaterials(
            Materials.of(Yarn.of("Tidal Four", 200, 50))));

    private static TestKnitResults read(String table) {
        return TestKnitResults.read(TextGrid.read(table.getBytes(StandardCharsets.UTF_8)), QUAY);
    }

    private static Comparison compared(String rows) {
        TestKnitResults read = read("size,key,actual,remark\n" + rows);
        assertEquals(List.of(), read.problems());
        return new Comparison(QUAY, read.answers());
    }

    private static String meaning(String rows) {
        Comparison comparison = compared(rows);
        return comparison.meaning(comparison.answers().getLast()).orElse("");
    }

    @Test
    void everySizeHasAPageThatPredictsWhatThePatternSays() {
        Document sheet = TestKnitSheet.of(QUAY, QUAY.sizes());
        assertEquals(4, sheet.blocks().stream().filter(Block.NewPage.class::isInstance).count());
        String m = TestKnitSheet.of(QUAY, List.of(QUAY.size("M"))).blocks().toString();
        // 220 mm less 10 % at 32 stitches over 10 cm are 63.4, and 64 divide by 4; 64 stitches are 20 cm, 7 7/8 in
        assertTrue(m.contains("Figure[text=64]"), m);
        assertTrue(m.contains("20 cm (7 7/8 in)"), m);
        assertTrue(m.contains("32 per 10 cm") && m.contains("44 per 10 cm"), m);
    }

    @Test
    void everythingAskedForHasRoomToWriteIn() {
        for (Design design : Designs.all().values()) {
            Graded graded = Patterns.grade(design);
            for (GradedSize size : graded.sizes()) {
                List<Item> items = Item.of(graded, size);
                long rows = 0;
                for (Block block : TestKnitSheet.of(graded, List.of(size)).blocks()) {
                    if (block instanceof Block.Table table) {
                        rows += table.rows().size();
                        table.rows().forEach(row -> assertEquals(new Block.Cell.Blank(), row.cells().get(2)));
                    }
                }
                assertEquals(items.size(), rows);
                assertEquals(items.size(), items.stream().map(Item::key).distinct().count());
            }
        }
    }

    @Test
    void whatIsWrittenIsReadBack() throws IOException {
        String csv = ResultTable.csv(QUAY, QUAY.sizes());
        assertTrue(csv.startsWith("size,key,what,unit,predicted,actual,remark\r\n"), csv);
        assertEquals(List.of(ResultProblem.Kind.NOTHING), kinds(read(csv)));
        String filled = csv.replace("M,foot.stitches,Foot stitches,,64,,",
                "M,foot.stitches,Foot stitches,,64,66,\"too wide, I thought\"");
        Answer answer = read(filled).answers().getFirst();
        assertEquals("M", answer.size());
        assertEquals(66, answer.actual().orElseThrow());
        assertEquals(Optional.of(2.0), answer.difference());
        assertEquals("too wide, I thought", answer.remark());

        ByteArrayOutputStream book = new ByteArrayOutputStream();
        TableWorkbook.write("Results", ResultTable.COLUMNS, ResultTable.rows(QUAY, QUAY.sizes()), book);
        ByteArrayOutputStream again = new ByteArrayOutputStream();
        TableWorkbook.write("Results", ResultTable.COLUMNS, ResultTable.rows(QUAY, QUAY.sizes()), again);
        assertArrayEquals(book.toByteArray(), again.toByteArray());
        assertEquals(TextGrid.read(csv.getBytes(StandardCharsets.UTF_8)).rows().stream()
                .map(row -> trimmed(row.cells())).toList(),
                WorkbookGrid.read(book.toByteArray()).rows().stream().map(row -> trimmed(row.cells())).toList());
    }

    private static List<String> trimmed(List<String> cells) {
        List<String> trimmed = new ArrayList<>(cells);
        while (trimmed.getLast().isEmpty()) {
            trimmed.removeLast();
        }
        return trimmed;
    }

    @Test
    void aSizeThatLooksLikeAFormulaIsReadBack() {
        Design design = Designs.with(Designs.toeUp(), "Plus",
                List.of(Designs.size("+1", "240 mm", "220 mm", "305 mm")));
        Graded graded = Patterns.grade(design);
        String csv = ResultTable.csv(graded, graded.sizes()).replace("foot.stitches,Foot stitches,,64,,",
                "foot.stitches,Foot stitches,,64,64,");
        assertFalse(csv.contains("\n+1,"), csv);
        TestKnitResults read = TestKnitResults.read(TextGrid.read(csv.getBytes(StandardCharsets.UTF_8)), graded);
        assertEquals(List.of("+1"), read.answers().stream().map(Answer::size).toList());
    }

    /** In cm whatever the unit was; 9 in are 22.86 cm. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(quoteCharacter = '"', textBlock = """
            22.5, 22.5
            "22,5 cm", 22.5
            225 mm, 22.5
            9 in, 22.86
            9 1/2 in, 24.13
            """)
    void lengthsAreReadInAnyUnit(String written, double centimetres) {
        Answer answer = compared("M,foot.length,\"%s\",".formatted(written)).answers().getFirst();
        assertEquals(centimetres, answer.actual().orElseThrow(), 1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            size,key~M,foot.stitches                                       | NO_COLUMN      | 1 | 0
            size,key,actual,size~M,foot.stitches,64,M                      | DUPLICATE_COLUMN | 1 | 4
            size,key,actual~Q,foot.stitches,64                             | UNKNOWN_SIZE   | 2 | 1
            key,actual,size~foot.stiches,64,M                              | UNKNOWN_KEY    | 2 | 1
            size,key,actual~M,foot.stitches,64~M,foot.stitches,66          | DUPLICATE_ROW  | 3 | 2
            size,key,actual~S,foot.rounds,50~M,foot.stitches,sixty         | NOT_A_FIGURE   | 3 | 3
            size,key,actual~M,foot.stitches,64.5                           | NOT_A_FIGURE   | 2 | 3
            size,key,actual~M,foot.length,9 furlongs                       | NOT_A_FIGURE   | 2 | 3
            size,key,actual~M,gauge.stitches,0                             | OUT_OF_RANGE   | 2 | 3
            size,key,actual~M,yarn.sockGrams,20000                         | OUT_OF_RANGE   | 2 | 3
            size,key,actual~M,foot.stitches,                               | NOTHING        | 0 | 0
            size,key,actual~"M                                             | UNREADABLE     | 0 | 0
            """)
    void whatCannotBeReadIsNamedWithItsPlace(String table, ResultProblem.Kind kind, int row, int column) {
        ResultProblem problem = read(table.replace('~', '\n')).problems().getFirst();
        assertEquals(kind, problem.kind());
        assertEquals(row, problem.row());
        assertEquals(column, problem.column());
        assertTrue(row == 0 || problem.sentence().startsWith("row " + row), problem.sentence());
    }

    private static List<ResultProblem.Kind> kinds(TestKnitResults results) {
        return results.problems().stream().map(ResultProblem::kind).toList();
    }

    @Test
    void aCountThatDiffersPointsAtTheText() {
        assertEquals("", meaning("M,foot.stitches,64,"));
        assertTrue(meaning("M,foot.stitches,66,").contains("look at this part of the text"));
    }

    /** 5 % of 32 is 1.6. At 34 stitches 64 are 18.8 cm around, at 30 they are 21.3 cm. */
    @ParameterizedTest(name = "{0} stitches")
    @CsvSource({"32, ''", "33.6, ''", "30.4, ''", "34, 18.8 cm (7 3/8 in)", "30, 21.3 cm (8 3/8 in)"})
    void anotherGaugeIsAnotherSock(String stitches, String around) {
        String meaning = meaning("M,gauge.stitches," + stitches + ",");
        assertEquals(around.isEmpty(), meaning.isEmpty(), meaning);
        assertTrue(meaning.contains(around), meaning);
    }

    /** The foot of M is predicted at 22.9 cm; at 40 rounds instead of 44 it is 25.2 cm. */
    @Test
    void aLengthIsHeldAgainstTheGaugeThatWasGot() {
        double predicted = QUAY.size("M").value(Catalogue.FINISHED_LENGTH) / 10;
        assertEquals("", meaning("M,foot.length,%s,".formatted(predicted + 0.49)));
        assertTrue(meaning("M,foot.length,25.2,").startsWith("Without the gauge"));
        String longer = "\nM,foot.length,%s,".formatted(predicted * 1.1);
        assertTrue(meaning("M,gauge.rounds,40," + longer).startsWith("The gauge explains"));
        assertTrue(meaning("M,gauge.rounds,44," + longer).startsWith("The gauge does not"));
    }

    @Test
    void gramsCorrectTheFormulaOnlyAtTheGaugeOfThePattern() {
        double predicted = QUAY.size("M").value(Catalogue.YARN_SOCK_GRAMS);
        String more = "M,yarn.sockGrams,%s,".formatted(predicted * 1.08);
        assertEquals("", meaning("M,yarn.sockGrams,%s,".formatted(predicted * 1.04)));
        assertTrue(meaning(more).contains("multiplied by 1.08 for"), meaning(more));
        assertTrue(meaning("M,yarn.sockGrams,%s,".formatted(predicted * 1.2)).contains("more than the margin"));
        assertTrue(meaning("M,gauge.stitches,36,\n" + more).contains("at another gauge"));
        assertEquals(Optional.empty(), compared("M,gauge.stitches,36,\n" + more).yarnFactor());
        // the mean of 1.08 and 1.00
        Comparison two = compared(more + "\nS,yarn.sockGrams,%s,".formatted(
                QUAY.size("S").value(Catalogue.YARN_SOCK_GRAMS)));
        assertEquals(1.04, two.yarnFactor().orElseThrow(), 1e-9);
    }

    /** A sock given as the swatch it is counted as predicts its own weight again, but for the ends of the yarn. */
    @Test
    void theSwatchThatASockIsReplacesTheFormula() {
        double loops = QUAY.size("M").value(Catalogue.YARN_PLAIN_LOOPS);
        String meaning = meaning("M,yarn.sockGrams,45,");
        int rows = Math.toIntExact(Math.round(loops / 100));
        assertTrue(meaning.contains(rows + " x 100"), meaning);
        Design weighed = Designs.toeUp().withMaterials(Materials.of(Yarn.of("Tidal Four", 200, 50))
                .with(Swatch.weighed(rows, 100, 45)));
        assertEquals(45, Patterns.grade(weighed).size("M").value(Catalogue.YARN_SOCK_GRAMS), 0.5);
    }

    @Test
    void theComparisonShowsEveryAnswerInThePatternsOrder() {
        Comparison comparison = compared(
                "M,testKnit.remarks,lovely to knit,\nS,foot.stitches,60,\nM,foot.stitches,64,fine\n");
        assertEquals(List.of("S", "M", "M"), comparison.answers().stream().map(Answer::size).toList());
        String told = comparison.document().blocks().toString();
        assertTrue(told.contains("lovely to knit") && told.contains("fine"), told);
        assertEquals(Map.of("S", 1L, "M", 2L), comparison.answers().stream()
                .collect(Collectors.groupingBy(Answer::size, Collectors.counting())));
    }
}
