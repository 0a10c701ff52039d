package turnheel.engine.knitting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.fixture.RandomRows;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Line;
import turnheel.engine.instruction.Sized;
import turnheel.engine.knitting.PatternRows.Misfit;
import turnheel.engine.knitting.PatternRows.NotReturning;
import turnheel.engine.knitting.PatternRows.Unread;
import turnheel.engine.knitting.PatternRows.Worked;
import turnheel.engine.query.Severity;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

class PatternRowsTest {

    @Test
    void areWorkedStitchForStitch() {
        PatternRows rows = PatternRows.read(List.of("*K1, yo, ssk, k3; rep from * to last st, k1", "K to end."));
        // two repeats of six and one stitch at the edge
        assertEquals(new Worked(List.of(
                List.of(new Step.Repeat(List.of(new Step.Work(Stitch.KNIT, 1), new Step.Work(Stitch.YARN_OVER, 1),
                        new Step.Work(Stitch.SLIP_SLIP_KNIT, 1), new Step.Work(Stitch.KNIT, 3)), 2),
                        new Step.Work(Stitch.KNIT, 1)),
                List.of(new Step.Work(Stitch.KNIT, 13)))), rows.over(13));
    }

    /** Rows parted by slashes, worked by hand. */
    @ParameterizedTest(name = "{0} over {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # rows                                      | stitches | row | there | worked
            *K1, p1; rep from * to end                  | 13       | 1   | 13    | 12
            *K2, p1; rep from * to last st, k1          | 12       | 1   | 12    | 10
            K12                                         | 13       | 1   | 13    | 12
            K14                                         | 13       | 1   | 13    | 14
            *K4; rep from * to last 2 sts, k2           | 5        | 1   | 5     | 6
            K to last 3 sts, k2tog                      | 13       | 1   | 13    | 12
            *Yo, k2; rep from * to end / *K2; rep from * to end | 6 | 2  | 9     | 8
            """)
    void thatDoNotComeOutAreTold(String rows, int stitches, int row, int there, int worked) {
        assertEquals(new Misfit(row, there, worked), PatternRows.read(List.of(rows.split(" / "))).over(stitches));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            *Yo, k2; rep from * to end                          | 6 | 9
            *K2tog, k1; rep from * to end / K to end            | 6 | 4
            [Kfb] 6 times                                       | 6 | 12
            """)
    void thatDoNotReturnAreTold(String rows, int before, int after) {
        assertEquals(new NotReturning(before, after), PatternRows.read(List.of(rows.split(" / "))).over(before));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Knot the yarn
            Cast on 6 sts
            K3, turn
            K to marker, sm, k to end
            *K to last st; rep from * to end
            *Yo; rep from * to end
            K6. 6 sts.
            Rnd 2: K6
            K99999999
            [[k9999] 9999 times] 9999 times
            Note: nothing is worked
            6
            """)
    void thatAreNoRowsOfStitchesAreTold(String row) {
        assertEquals(new Unread(2), PatternRows.read(List.of("K to end", row)).over(6));
    }

    /** The needle, which counts loops and knows nothing of steps, finds the same. */
    @Property(seed = Repeatable.SEED, tries = 100, edgeCases = EdgeCasesMode.NONE)
    void leaveWhatTheNeedleFinds(@ForAll("rows") RandomRows rows, @ForAll @IntRange(min = 1, max = 6) int repeats) {
        PatternRows read = PatternRows.read(rows.texts());
        int stitches = rows.stitches(0, repeats);
        Worked worked = assertInstanceOf(Worked.class, read.over(stitches), rows::toString);
        List<Line> lines = new ArrayList<>(List.of(line(List.of(new Instruction.CastOn(Instruction.CastOnManner.PLAIN,
                Sized.all(stitches)), new Instruction.JoinInRound()), Optional.empty())));
        for (int row = 0; row < rows.texts().size(); row++) {
            assertEquals(rows.stitches(row + 1, repeats), leaves(worked.rows().get(row)), rows::toString);
            lines.add(line(read.instructions().get(row).orElseThrow(), Optional.of(row + 1)));
        }
        Knitted knitted = Knitting.lines(lines, List.of("M"));
        // two yarn-overs worked together are worth a look to a reader of texts, and no slip
        assertEquals(List.of(), knitted.queries().stream().filter(query -> query.severity() == Severity.ERROR).toList(),
                rows::toString);
        assertEquals(worked.rows().stream().map(PatternRowsTest::leaves).toList(),
                knitted.traces().getFirst().stream().filter(traced -> traced.line() > 0).map(Traced::stitches).toList(),
                rows::toString);
    }

    private static int leaves(List<Step> row) {
        return row.stream().mapToInt(Step::leaves).sum();
    }

    private static Line line(List<Instruction> instructions, Optional<Integer> number) {
        return new Line.Worked(number.map(Sized::all).map(label -> new Line.Label(Line.Fabric.ROUND, Optional.of(label),
                Optional.of(label), Optional.empty(), Optional.empty())), instructions, Optional.empty(), Set.of());
    }

    @Provide
    Arbitrary<RandomRows> rows() {
        return RandomRows.any();
    }
}
