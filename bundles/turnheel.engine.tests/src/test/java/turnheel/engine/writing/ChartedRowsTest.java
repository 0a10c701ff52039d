package turnheel.engine.writing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import turnheel.engine.drawing.Chart;
import turnheel.engine.fixture.RandomRows;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.knitting.PatternRows;
import turnheel.engine.knitting.PatternRows.Worked;
import turnheel.engine.stitch.Step;

/** Rows charted, written out from the chart and knitted again. */
class ChartedRowsTest {

    @Property(seed = Repeatable.SEED, tries = 100, edgeCases = EdgeCasesMode.NONE)
    void knitAsTheyDidBefore(@ForAll("rows") RandomRows rows, @ForAll @IntRange(min = 1, max = 6) int repeats) {
        int stitches = rows.stitches(0, repeats);
        Worked first = worked(rows.texts(), stitches);
        List<String> writtenOut = Chart.ofRounds(first.rows(), 1).steps().stream().map(RoundText::of).toList();
        Worked again = worked(writtenOut, stitches);
        for (int row = 0; row < writtenOut.size(); row++) {
            assertEquals(rows.stitches(row, repeats), takes(again.rows().get(row)), writtenOut::toString);
            assertEquals(rows.stitches(row + 1, repeats), leaves(again.rows().get(row)), writtenOut::toString);
        }
        // the chart of what was written out from the chart is the same chart, sign for sign
        assertEquals(Chart.ofRounds(first.rows(), 1), Chart.ofRounds(again.rows(), 1), writtenOut::toString);
    }

    private static Worked worked(List<String> rows, int stitches) {
        return assertInstanceOf(Worked.class, PatternRows.read(rows).over(stitches), rows::toString);
    }

    private static int takes(List<Step> row) {
        return row.stream().mapToInt(Step::takes).sum();
    }

    private static int leaves(List<Step> row) {
        return row.stream().mapToInt(Step::leaves).sum();
    }

    @Provide
    Arbitrary<RandomRows> rows() {
        return RandomRows.any();
    }
}
