package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashMap;
import java.util.Map;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import turnheel.engine.fixture.Deep;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.fixture.Spreadsheet;
import turnheel.engine.term.Key;
import turnheel.engine.term.Notation;

/** Somebody else's evaluator, given the written formula and the values that it reads, comes to the engine's number. */
class RulesInASpreadsheetTest {

    private final Spreadsheet spreadsheet = new Spreadsheet();

    @Property(seed = Repeatable.SEED, tries = 60, edgeCases = EdgeCasesMode.NONE)
    void everyRuleComesToTheSameNumber(@ForAll("usual") Draft draft) {
        Graded graded = draft.graded();
        for (GradedSize size : graded.sizes()) {
            Map<Key, Double> values = new HashMap<>();
            size.cells().forEach((key, cell) -> values.put(key, cell.value()));
            size.cells().values().stream().filter(cell -> cell.reason() instanceof Reason.Derived).forEach(cell -> {
                var rule = graded.rules().rule(cell.key()).orElseThrow();
                assertEquals(cell.value(), spreadsheet.evaluate(rule, values), 1e-9,
                        () -> cell.key() + " = " + Notation.formula(rule, Key::name));
            });
        }
    }

    @Deep
    void everyRuleOfManyMoreComesToTheSameNumber(@ForAll("usual") Draft draft) {
        everyRuleComesToTheSameNumber(draft);
    }

    @Provide
    Arbitrary<Draft> usual() {
        return RandomDesigns.usual();
    }
}
