package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.LengthMode;
import turnheel.engine.design.Lengths;
import turnheel.engine.design.Snap;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Fit;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.Numbers;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.term.Key;

/** The rows of stitch patterns, by hand and by laying row upon row. */
class PatternRowsTest {

    @ParameterizedTest(name = "{0} {1} on the {2}, {3} snapped: leg {4}–{5}, foot {6}–{7}, left {8} and {9}")
    @CsvSource(textBlock = """
            # 8 rows over a leg of 50 and a foot of 70 rounds; 0: no pattern there. 50 = 6 × 8 + 2, 70 = 8 × 8 + 6
            CUFF_DOWN, SHORT_ROW, ALL,    NONE,         1, 2, 3, 8, 0, 0
            CUFF_DOWN, SHORT_ROW, ALL,    LEG,          1, 8, 1, 6, 2, 0
            CUFF_DOWN, SHORT_ROW, ALL,    FOOT,         1, 2, 3, 8, 0, 0
            CUFF_DOWN, SHORT_ROW, ALL,    FOOT_AND_LEG, 1, 8, 1, 8, 2, 6
            # the pick-up round is row 3
            CUFF_DOWN, FLAP,      ALL,    NONE,         1, 2, 4, 1, 0, 0
            CUFF_DOWN, FLAP,      ALL,    FOOT,         1, 2, 4, 8, 0, 1
            CUFF_DOWN, FLAP,      INSTEP, NONE,         0, 0, 1, 6, 0, 0
            CUFF_DOWN, FLAP,      INSTEP, FOOT,         0, 0, 1, 8, 0, 6
            CUFF_DOWN, SHORT_ROW, LEG,    LEG,          1, 8, 0, 0, 2, 0
            TOE_UP,    SHORT_ROW, ALL,    NONE,         7, 8, 1, 6, 0, 0
            TOE_UP,    FLAP,      ALL,    NONE,         7, 8, 1, 6, 0, 0
            TOE_UP,    SHORT_ROW, ALL,    FOOT,         1, 2, 1, 8, 0, 6
            TOE_UP,    SHORT_ROW, LEG,    NONE,         1, 2, 0, 0, 0, 0
            """)
    void matchTheRowsCountedByHand(Direction direction, String heel, Zone zone, Snap snap, int legFirst, int legLast,
            int footFirst, int footLast, int leftOnLeg, int leftOnFoot) {
        Draft draft = Designs.toeUp64().with(direction).with(new StitchPattern(zone, 4, 0, 8, Fit.WHOLE_REPEATS, 1))
                .with(heel.equals("FLAP") ? Designs.FLAP_HEEL : Designs.ONE_HEEL_OF_EACH.getFirst())
                .with(new Lengths(LengthMode.BOTH, LengthMode.BOTH, LengthMode.ROUNDS, snap))
                .with("foot.rounds = 70; leg.rounds = 50");
        GradedSize size = draft.graded().sizes().getFirst();
        assertEquals(List.of(legFirst, legLast, footFirst, footLast, leftOnLeg, leftOnFoot),
                List.of(orNone(size, "leg.patternFirstRow"), orNone(size, "leg.patternLastRow"),
                        orNone(size, "foot.patternFirstRow"), orNone(size, "foot.patternLastRow"),
                        orNone(size, "leg.patternRemainder"), orNone(size, "foot.patternRemainder")));
        assertEquals(leftOnFoot * 100 / 44.0, orNone(size, "foot.patternRemainderLength", 0), 1e-9);
    }

    private static int orNone(GradedSize size, String key) {
        return (int) orNone(size, key, 0);
    }

    private static double orNone(GradedSize size, String key, double none) {
        return size.cell(new Key(key)).map(Cell::value).orElse(none);
    }

    @Repeatable
    void matchRowsLaidOneUponTheOther(@ForAll("usual") Draft draft) {
        for (GradedSize size : draft.graded().sizes()) {
            if (Numbers.of(size, "foot.rounds") > 0 && Numbers.of(size, "leg.rounds") > 0) {
                new Rows(draft, size).check();
            }
        }
    }

    /** Lays row upon row in the order of knitting. */
    private static final class Rows {
        private final Draft draft;
        private final GradedSize size;
        private final boolean toeUp;
        private Optional<StitchPattern> worked = Optional.empty();
        private int row;

        Rows(Draft draft, GradedSize size) {
            this.draft = draft;
            this.size = size;
            this.toeUp = draft.direction() == Direction.TOE_UP;
        }

        void check() {
            if (toeUp) {
                part("foot", Zone.INSTEP, draft.lengths().snap().foot());
                part("leg", Zone.LEG, draft.lengths().snap().leg());
            } else {
                part("leg", Zone.LEG, draft.lengths().snap().leg());
                if (draft.heel() instanceof FlapHeel && worked.isPresent()) {
                    next(); // the round that picks up
                }
                part("foot", Zone.INSTEP, draft.lengths().snap().foot());
            }
        }

        private void part(String part, Zone zone, boolean snapped) {
            Optional<StitchPattern> pattern = draft.design().stitchPattern(zone).filter(each -> each.rows() > 1);
            if (pattern.isEmpty()) {
                assertFalse(size.cells().keySet().stream().anyMatch(key -> key.name().startsWith(part + ".patternFirst")));
                return;
            }
            if (!pattern.equals(worked)) {
                row = 0;
                worked = pattern;
            }
            int rounds = (int) Numbers.of(size, part + ".rounds");
            int start = row;
            int inPattern = 0;
            for (int round = 1; round <= rounds; round++) {
                next();
                if (round == 1) {
                    assertEquals(row, Numbers.of(size, part + ".patternFirstRow"), size::toString);
                }
                if (!snapped || row == pattern.get().rows()) {
                    inPattern = round;
                }
            }
            row = start;
            for (int round = 0; round < inPattern; round++) {
                next();
            }
            assertEquals(row == 0 ? pattern.get().rows() : row, Numbers.of(size, part + ".patternLastRow"), size::toString);
            if (snapped) {
                assertEquals(rounds - inPattern, Numbers.of(size, part + ".patternRemainder"), size::toString);
            }
        }

        private void next() {
            row = row == worked.orElseThrow().rows() ? 1 : row + 1;
        }
    }

    @Provide
    Arbitrary<Draft> usual() {
        return RandomDesigns.usual();
    }
}
