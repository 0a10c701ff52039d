package turnheel.engine.shaping;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.design.Part;
import turnheel.engine.fixture.Designs;
import turnheel.engine.hands.Hands;
import turnheel.engine.hands.Loop;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;
import turnheel.engine.writing.RoundText;

class ShortRowHeelRowsTest {

    /** Eight stitches, two in the middle, three a side: written out by hand. */
    @Test
    void goesOutToTheCentreAndBack() {
        assertEquals(List.of(
                "k7, w&t", "p6, w&t", "k5, w&t", "p4, w&t", "k3, w&t", "p2, w&t",
                "k2, k1 with its wraps, w&t", "p3, p1 with its wraps, w&t",
                "k4, k1 with its wraps, w&t", "p5, p1 with its wraps, w&t",
                "k6, k1 with its wraps, turn", "p7, p1 with its wraps, turn"),
                heel(8).stream().map(RoundText::of).toList());
    }

    static IntStream everyHeelUpTo60() {
        return IntStream.rangeClosed(4, 60);
    }

    /**
     * What lies on the needle after every row says where each turn must be: one loop further in, then one further out.
     */
    @ParameterizedTest(name = "{0} stitches")
    @MethodSource("everyHeelUpTo60")
    void turnsWhereTheWrapsSay(int stitches) {
        List<Round> rows = heel(stitches);
        int eachSide = rows.size() / 4;
        Hands hands = Hands.holding(stitches);
        for (int row = 1; row <= 2 * eachSide; row++) {
            hands.row(rows.get(row - 1).steps());
            assertEquals(wrapsOnTheWayOut(stitches, row), wraps(hands), "wraps after row " + row);
        }
        for (int row = 1; row <= 2 * eachSide; row++) {
            hands.row(rows.get(2 * eachSide + row - 1).steps());
            assertEquals(wrapsOnTheWayBack(stitches, eachSide, row), wraps(hands), "wraps after row " + row + " back");
        }
    }

    /** Right-side rows wrap from the last stitch inwards, wrong-side rows from the first. */
    private static List<Integer> wrapsOnTheWayOut(int stitches, int row) {
        int atTheEnd = (row + 1) / 2;
        int atTheBeginning = row / 2;
        List<Integer> wraps = new ArrayList<>();
        for (int i = 0; i < stitches; i++) {
            wraps.add(i < atTheBeginning || i >= stitches - atTheEnd ? 1 : 0);
        }
        return wraps;
    }

    /**
     * Each row works the innermost wrapped stitch with its wraps and puts a second wrap on the next, if there is one.
     */
    private static List<Integer> wrapsOnTheWayBack(int stitches, int eachSide, int row) {
        int doneAtTheEnd = (row + 1) / 2;
        int doneAtTheBeginning = row / 2;
        List<Integer> wraps = new ArrayList<>();
        for (int i = 0; i < stitches; i++) {
            int fromTheBeginning = eachSide - doneAtTheBeginning;
            int fromTheEnd = eachSide - doneAtTheEnd;
            boolean wrapped = i < fromTheBeginning || i >= stitches - fromTheEnd;
            boolean twice = doneAtTheBeginning > 0 && i == fromTheBeginning - 1
                    || doneAtTheEnd > 0 && i == stitches - fromTheEnd;
            wraps.add(wrapped ? twice ? 2 : 1 : 0);
        }
        return wraps;
    }

    /** A row on the right side is knitted, one on the wrong side purled, so that the heel is smooth outside. */
    @Test
    void isKnittedOnTheRightSideAndPurledOnTheWrongSide() {
        List<Round> rows = heel(32);
        assertEquals(44, rows.size());
        for (Round row : rows) {
            boolean rightSide = row.number() % 2 == 1;
            row.steps().forEach(step -> {
                Stitch stitch = ((Step.Work) step).stitch();
                switch (stitch) {
                    case KNIT, KNIT_WITH_WRAPS -> assertEquals(true, rightSide, row::toString);
                    case PURL, PURL_WITH_WRAPS -> assertEquals(false, rightSide, row::toString);
                    case WRAP_AND_TURN, TURN -> { }
                    default -> throw new AssertionError(stitch + " in a heel");
                }
            });
        }
    }

    private static List<Integer> wraps(Hands hands) {
        return hands.loops().stream().map(Loop::wraps).toList();
    }

    private static List<Round> heel(int stitches) {
        return Parts.rounds(Designs.toeUp64().with("heel.stitches = " + stitches), Part.HEEL);
    }
}
