package turnheel.workbench.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.junit.jupiter.api.Test;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.OwnRow;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.query.Severity;
import turnheel.engine.term.Key;
import turnheel.workbench.document.Snapshot;
import turnheel.workbench.fixture.Patterns;

class GridContentTest {

    private static final int M = 2;

    private final GridContent content = new GridContent();

    private void show(Design design) {
        content.show(Optional.of(Snapshot.of(design)));
    }

    private int row(Parameter parameter) {
        return content.reveal(parameter.key()).orElseThrow();
    }

    @Test
    void everyParameterStandsUnderTheHeadingOfItsPart() {
        show(Patterns.toeUp());
        Part part = null;
        for (GridRow row : content.rows()) {
            if (row instanceof GridRow.Heading heading) {
                part = heading.part();
            } else {
                assertEquals(part, row.part(), row.label());
            }
        }
        List<Parameter> shown = content.rows().stream().filter(GridRow.Values.class::isInstance)
                .map(row -> ((GridRow.Values) row).parameter()).toList();
        assertEquals(Snapshot.of(Patterns.toeUp()).graded().parameters(), shown);
    }

    @Test
    void aClosedPartShowsItsHeadingOnlyAndStaysClosed() {
        show(Patterns.toeUp());
        int open = content.rows().size();
        content.toggle(Part.TOE);
        assertTrue(content.rows().contains(new GridRow.Heading(Part.TOE, true)));
        assertTrue(content.rows().stream().noneMatch(row -> row instanceof GridRow.Values && row.part() == Part.TOE));
        show(Patterns.wedgeToe());
        assertTrue(content.rows().contains(new GridRow.Heading(Part.TOE, true)), "closed in the next snapshot too");
        show(Patterns.toeUp());
        row(Catalogue.TOE_CAST_ON);
        assertEquals(open, content.rows().size(), "revealing one of its rows opens it");
    }

    @Test
    void anOwnRowStandsLastUnderAHeadingOfItsOwn() {
        show(Patterns.withOwnRow());
        assertEquals(new GridRow.Heading(Part.OWN, false), content.rows().get(content.rows().size() - 2));
        int row = content.rows().size() - 1;
        assertEquals("A quarter", content.rows().get(row).label());
        assertEquals(CellKind.OWN, content.kind(M, row).orElseThrow());
        assertEquals("16", CellText.shown(content.cell(M, row).orElseThrow()));
        assertEquals(List.of("A quarter in size M is 16 (own row).", "= Foot stitches ÷ 4", "= 64 ÷ 4"),
                content.reason(M, row));
        assertEquals("A quarter", content.label(new Key("own.quarter")));
    }

    @Test
    void aFormulaThatIsChangedChangesItsRow() {
        show(Patterns.withOwnRow());
        Design other = Patterns.toeUp().withOwnRows(
                List.of(new OwnRow(new Key("own.quarter"), "A quarter", "foot.stitches/")));
        assertTrue(content.show(Optional.of(Snapshot.of(other))), "its description is another");
        int row = content.rows().size() - 1;
        assertEquals(CellKind.MISSING, content.kind(M, row).orElseThrow());
        assertEquals(Severity.ERROR, content.severity(M, row).orElseThrow());
        List<String> reason = content.reason(M, row);
        assertEquals(1, reason.size(), reason::toString);
        assertTrue(reason.getFirst().contains("own.quarter"), reason::toString);
    }

    @Test
    void saysWhetherRowsOrColumnsChanged() {
        show(Patterns.toeUp());
        assertFalse(content.show(Optional.of(Snapshot.of(Patterns.withQuery()))), "other values only");
        assertTrue(content.show(Optional.of(Snapshot.of(Patterns.wedgeToe()))), "other rows");
        assertTrue(content.show(Optional.empty()), "no columns");
    }

    @Test
    void aCellKnowsWhatItIsAndWhatIsAskedAboutIt() {
        show(Patterns.withQuery());
        assertEquals(CellKind.OVERRIDE, content.kind(M, row(Catalogue.FOOT_STITCHES)).orElseThrow());
        assertEquals(CellKind.CHOSEN, content.kind(0, row(Catalogue.FOOT_STITCHES)).orElseThrow());
        assertEquals(CellKind.INPUT, content.kind(M, row(Catalogue.FOOT_LENGTH)).orElseThrow());
        assertEquals(CellKind.DEFAULT, content.kind(M, row(Catalogue.EASE_AROUND)).orElseThrow());
        assertEquals(CellKind.DEFAULT, content.kind(M, row(Catalogue.GAUGE_STITCHES)).orElseThrow(),
                "the pattern's gauge");
        assertEquals(CellKind.RULE, content.kind(M, row(Catalogue.FOOT_INSTEP)).orElseThrow());
        assertEquals(CellKind.RESULT, content.kind(M, row(Catalogue.FINISHED_LENGTH)).orElseThrow());
        assertEquals(CellKind.PREDICTED, content.kind(M, row(Catalogue.HEEL_CIRCUMFERENCE)).orElseThrow());
        assertEquals(CellKind.MISSING, content.kind(M, row(Catalogue.YARN_LOOPS)).orElseThrow(),
                "a toe that does not work out has no rounds to count");
        assertEquals(Severity.ERROR, content.severity(M, row(Catalogue.FOOT_STITCHES)).orElseThrow());
        assertEquals(Optional.empty(), content.severity(0, row(Catalogue.FOOT_STITCHES)));
        assertEquals(Optional.empty(), content.kind(M, 0), "a heading is no cell");
        assertEquals(Optional.empty(), content.kind(99, row(Catalogue.FOOT_STITCHES)));
    }

    @Test
    void theReasonBeginsWithTheQueries() {
        show(Patterns.withQuery());
        List<String> lines = content.reason(M, row(Catalogue.FOOT_STITCHES));
        assertTrue(lines.getFirst().startsWith("Error: "), lines.getFirst());
        assertTrue(lines.stream().anyMatch(line -> line.contains("66")), lines.toString());
        assertEquals(List.of(), content.reason(M, 0), "a heading has none");
        assertEquals(List.of("No value: a measurement that it needs is missing, or a part does not work out."),
                content.reason(M, row(Catalogue.YARN_LOOPS)));
    }

    @Test
    void kindsWithAMarkHaveOneOfTheirOwn() {
        Set<String> marks = new HashSet<>();
        Arrays.stream(CellKind.values()).map(CellKind::mark).filter(mark -> !mark.isEmpty())
                .forEach(mark -> assertTrue(marks.add(mark), mark));
        assertEquals(CellKind.values().length - 2, marks.size(), "a rule and a missing value are recognised without");
    }
}
