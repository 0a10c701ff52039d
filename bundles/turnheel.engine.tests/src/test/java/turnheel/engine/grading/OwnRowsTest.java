package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import turnheel.engine.checks.Checks;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.OwnRow;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Role;
import turnheel.engine.fixture.Designs;
import turnheel.engine.grading.Relaxation.Change;
import turnheel.engine.term.Key;
import turnheel.engine.yarn.Patterns;

/** Rows that a designer has computed, beside the 64 stitches of the plain sock. */
class OwnRowsTest {

    private static final Key HALF = new Key("own.half");

    private static OwnRow row(String name, String formula) {
        return new OwnRow(new Key("own." + name), "", formula);
    }

    private static Design sock(OwnRow... rows) {
        return Designs.toeUp64().design().withOwnRows(List.of(rows));
    }

    private static double value(Graded graded, Key key) {
        return graded.size(Designs.M).cell(key).orElseThrow().value();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
            foot.stitches/4,                    16
            =ROUND(foot.stitches/3;0)*2,        42
            'MAX(foot.instep,foot.sole)',       32
            25%*foot.stitches,                  16
            gauge.rounds-gauge.stitches,        12
            'IF(foot.stitches>60;1;2)',         1
            7,                                  7
            """)
    void areComputedFromTheOtherRows(String formula, double expected) {
        Graded graded = Patterns.grade(sock(row("half", formula)));
        assertEquals(expected, value(graded, HALF), 1e-9);
        assertEquals(Source.OWN, graded.size(Designs.M).cell(HALF).orElseThrow().source());
    }

    @Test
    void mayReadTheYarnAndEachOtherInAnyOrder() {
        Graded graded = Patterns.grade(sock(row("last", "own.first*2"), row("first", "yarn.sockMetres/10")));
        double metres = value(graded, Catalogue.YARN_SOCK_METRES.key());
        assertEquals(metres / 10, value(graded, new Key("own.first")), 1e-12);
        assertEquals(metres / 10 * 2, value(graded, new Key("own.last")), 1e-12);
    }

    @Test
    void standAfterAllOthersInTheDesignersOrder() {
        Graded graded = Patterns.grade(sock(row("zebra", "1"), row("ant", "2")));
        List<Parameter> own = graded.parameters().stream().filter(parameter -> parameter.part() == Part.OWN).toList();
        assertEquals(List.of("own.zebra", "own.ant"), own.stream().map(parameter -> parameter.key().name()).toList());
        assertEquals(own, graded.parameters().subList(graded.parameters().size() - 2, graded.parameters().size()));
        assertTrue(own.stream().allMatch(parameter -> parameter.role() == Role.OWN));
    }

    @Test
    void changeNothingElse() {
        Graded with = Patterns.grade(sock(row("half", "foot.stitches/2")));
        Graded without = Patterns.grade(sock());
        without.size(Designs.M).cells().forEach((key, cell) ->
                assertEquals(cell, with.size(Designs.M).cell(key).orElseThrow()));
        assertEquals(Checks.of(without), Checks.of(with));
    }

    @Test
    void areCalledByTheirLabelAndElseByTheirKey() {
        Graded graded = Patterns.grade(sock(new OwnRow(HALF, " Half the foot ", "foot.stitches/2"),
                row("plain", "=1")));
        assertEquals("Half the foot", graded.parameter(HALF).label());
        assertEquals("=foot.stitches/2", graded.parameter(HALF).description());
        assertEquals("own.plain", graded.parameter(new Key("own.plain")).label());
        assertEquals("=1", graded.parameter(new Key("own.plain")).description());
        assertThrows(IllegalArgumentException.class, () -> graded.parameter(new Key("own.none")));
    }

    @Test
    void giveTheirReasonAndAreNamedWhereTheyRead() {
        Graded graded = Patterns.grade(sock(new OwnRow(HALF, "Half the foot", "foot.stitches/2"),
                row("more", "own.half+1")));
        Why why = Why.of(graded, HALF, Designs.M);
        assertEquals(List.of("Half the foot in size M is 32 (own row).", "= Foot stitches ÷ 2", "= 64 ÷ 2"),
                why.lines());
        assertEquals(List.of(Catalogue.FOOT_STITCHES.key()), why.basis());
        assertEquals(List.of(new Key("own.more")), why.dependents());
        assertTrue(Why.of(graded, Catalogue.FOOT_STITCHES.key(), Designs.M).dependents().contains(HALF));
        assertEquals("= Half the foot + 1", Why.of(graded, new Key("own.more"), Designs.M).lines().get(1));
    }

    @Test
    void haveNoNumberWhereAMeasurementIsMissing() {
        Design design = Designs.toeUp64().withSize("S", "").design().withOwnRows(List.of(row("half", "foot.rounds/2")));
        Graded graded = Patterns.grade(design);
        assertTrue(graded.size("S").cell(HALF).isEmpty());
        assertTrue(graded.size(Designs.M).cell(HALF).isPresent());
        assertTrue(graded.queries().stream().noneMatch(query -> OwnRow.isOwn(query.key())), graded.queries()::toString);
    }

    @Test
    void stayWithADesignThatIsRelaxed() {
        Design design = sock(row("half", "foot.stitches/2"));
        assertEquals(design.ownRows(), Relaxed.with(design, new Change.CuffAdjusts()).ownRows());
    }

    @ParameterizedTest
    @ValueSource(strings = {"foot.stitches", "body.own", "owned.half"})
    void haveKeysOfTheirOwn(String key) {
        var refused = assertThrows(IllegalArgumentException.class, () -> new OwnRow(new Key(key), "", "1"));
        assertTrue(refused.getMessage().contains(key), refused::getMessage);
    }

    @Test
    void shareNoKeyNotEvenInOtherCapitals() {
        var refused = assertThrows(IllegalArgumentException.class, () -> sock(row("half", "1"), row("haLF", "2")));
        assertTrue(refused.getMessage().contains("own.haLF"), refused::getMessage);
        assertEquals(2, sock(row("half", "1"), row("half2", "2")).ownRows().size());
    }

    @Test
    void areNotWithoutEnd() {
        List<OwnRow> chain = new ArrayList<>();
        for (int i = 0; i < OwnRow.MOST; i++) {
            chain.add(row("n" + i, i == 0 ? "1" : "own.n%d+1".formatted(i - 1)));
        }
        Collections.reverse(chain);
        Design longest = Designs.toeUp64().design().withOwnRows(chain);
        assertEquals(200, value(Patterns.grade(longest), new Key("own.n199")));
        chain.add(row("more", "1"));
        assertThrows(IllegalArgumentException.class, () -> Designs.toeUp64().design().withOwnRows(chain));
    }

    @Test
    void refuseALabelThatFitsNoTable() {
        String label = "L".repeat(OwnRow.LONGEST_LABEL);
        assertEquals(label, new OwnRow(HALF, label, "1").label());
        assertThrows(IllegalArgumentException.class, () -> new OwnRow(HALF, label + "L", "1"));
    }

    @Test
    void takeNoNumberOfASize() {
        Parameter parameter = row("half", "1").parameter();
        Quantity number = Quantity.parse("3");
        for (Role role : Set.of(Role.INPUT, Role.RULE)) {
            var refused = assertThrows(IllegalArgumentException.class, () -> parameter.require(role, number));
            assertTrue(refused.getMessage().contains("own.half is an own row"), refused::getMessage);
        }
        assertFalse(parameter.unit().isWhole());
    }
}
