package turnheel.exchange.errata;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.comparing.Comparison;
import turnheel.engine.comparing.InputChange.Aspect;
import turnheel.engine.design.Design;
import turnheel.engine.design.Size;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;
import turnheel.exchange.NastyTexts;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Document;
import turnheel.exchange.markdown.MarkdownWriter;

class ErrataDocumentTest {

    private static Comparison compared(Design before, Design after) {
        return Comparison.of(Patterns.grade(before), Patterns.grade(after), HouseStyles.usual());
    }

    private static Design overriding(String label, String key, String value) {
        Design design = Designs.toeUp();
        return Designs.with(design, design.title(), design.sizes().stream().map(size -> size.label().equals(label)
                ? Designs.with(size, Map.of(), Map.of(key, value)) : size).toList());
    }

    private static List<List<String>> rows(Document document, int table) {
        List<Block.Table> tables = document.blocks().stream().filter(Block.Table.class::isInstance)
                .map(Block.Table.class::cast).toList();
        return tables.get(table).rows().stream()
                .map(row -> row.cells().stream().map(cell -> ((Block.Cell.Words) cell).text()).toList()).toList();
    }

    /** The rib of size M has 17 rounds, a repeat of 16 more; 20 rounds are 19 more. */
    @Test
    void aChangedCuffIsTheOneLineOfItsRounds() {
        Document sheet = ErrataDocument.of(compared(Designs.toeUp(), overriding("M", "cuff.rounds", "20")));
        List<List<String>> cuff = rows(sheet, 0).stream().filter(row -> row.getFirst().startsWith("Cuff: ")).toList();
        assertEquals(List.of(List.of("Cuff: Rep rnd 1 14 (15, 16, 17, 18) more times.", "M", "1 16 more", "1 19 more")),
                cuff);
        assertEquals(List.of("M", "by default or rule", "20"), rows(sheet, 1).getFirst().subList(1, 4));
        assertTrue(rows(sheet, 0).stream().allMatch(row -> row.get(1).equals("M")), rows(sheet, 0).toString());
    }

    @Test
    void whatReadsOtherwiseInOneLineAndSizeStandsInOneRow() {
        Document sheet = ErrataDocument.of(compared(Designs.toeUp(), overriding("M", "foot.rounds", "60")));
        List<List<String>> rows = rows(sheet, 0);
        assertEquals(rows.stream().map(row -> row.subList(0, 2)).distinct().count(), rows.size());
    }

    @Test
    void whereNothingReadsOtherwiseTheSheetSaysSo() {
        Document sheet = ErrataDocument.of(compared(Designs.toeUp(), Designs.toeUp()));
        String text = MarkdownWriter.text(sheet);
        assertTrue(text.contains("Nothing in print reads otherwise.") && text.contains("No input was changed."), text);
        assertTrue(sheet.blocks().stream().noneMatch(Block.Table.class::isInstance));
    }

    @Test
    void theRecordsHoldEveryValueAlone() {
        Comparison comparison = compared(Designs.toeUp(), overriding("M", "cuff.rounds", "20"));
        List<String> records = ErrataTable.csv(comparison).lines().toList();
        assertEquals("chapter,line,size,reads,should read", records.getFirst());
        assertEquals(comparison.errata().size(), records.size() - 1);
        assertTrue(records.contains("Cuff,\"Rep rnd 1 14 (15, 16, 17, 18) more times.\",M,1 16 more,1 19 more"),
                records.toString());
    }

    @ParameterizedTest
    @EnumSource(Aspect.class)
    void everythingThatADesignerDecidesHasItsWords(Aspect aspect) {
        assertTrue(!Words.text("key." + aspect).isBlank() && !Words.text("aspect." + aspect).isBlank());
    }

    @Test
    void anotherPatternIsComparedInEveryAspect() {
        List<Design> designs = new ArrayList<>(Designs.all().values());
        for (int next = 1; next < designs.size(); next++) {
            Comparison comparison = compared(designs.get(next - 1), designs.get(next));
            InputRow.of(comparison).forEach(row -> assertTrue(!row.before().equals(row.after()), row.toString()));
            assertEquals(comparison.inputs().size(), InputRow.of(comparison).size());
        }
    }

    static List<String> labels() {
        return NastyTexts.labels();
    }

    @ParameterizedTest(name = "[{index}]")
    @MethodSource("labels")
    void aFormulaInALabelIsNotRun(String label) {
        Size size = Designs.toeUp().sizes().getFirst();
        Design named = Designs.with(Designs.toeUp(), "Labels", List.of(new Size("id", label, size.inputs(), Map.of())));
        Design changed = Designs.with(named, "Labels", List.of(Designs.with(named.sizes().getFirst(), Map.of(),
                Map.of("cuff.rounds", "20"))));
        String table = ErrataTable.csv(compared(named, changed));
        assertTrue(table.lines().noneMatch(line -> line.contains(",=") || line.contains(",\"=") || line.contains(",@")),
                table);
    }
}
