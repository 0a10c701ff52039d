package turnheel.engine.writing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Increase;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.wording.HouseStyles;

/** Texts that were read and counted through by hand. */
class PatternTextTest {

    /** Sizes of 64 and 72 stitches, the figures worked in domain § 3. */
    private static final Draft TWO_SIZES = Designs.toeUp64()
            .withSize("L", "body.footLength = 260 mm; body.footCircumference = 250 mm");

    private static PatternText text(Draft draft) {
        return Manuscripts.write(draft.graded(), HouseStyles.usual());
    }

    /** The paragraphs under one heading. */
    private static String under(String heading, PatternText text) {
        List<String> found = new ArrayList<>();
        boolean here = false;
        for (Paragraph paragraph : text.paragraphs()) {
            if (paragraph.role() == Role.HEADING) {
                here = text.text(paragraph).equals(heading);
            } else if (here) {
                found.add(text.text(paragraph));
            }
        }
        return String.join("\n", found) + "\n";
    }

    private static String of(Role role, PatternText text) {
        return String.join("\n", text.paragraphs().stream().filter(paragraph -> paragraph.role() == role)
                .map(text::text).toList());
    }

    @Test
    void writesARoundToeAsItIsWorkedByHand() {
        // 64: 8, 12, 16, 20, plain, then eleven times 4 more; 72: 8 to 24, plain, then twelve times
        assertEquals("""
                Cast on 8 sts with a closed cast-on, 4 on each half; place a marker after every 2 sts.
                Set-up rnd: K to end.
                Rnd 1: *Yo, k to marker, sm; rep from * to end. 12 sts.
                Rnd 2: *Yo, k1 tbl, k to marker, sm; rep from * to end. 16 sts.
                Rep rnd 2 1 (2) more times. 20 (24) sts.
                Closing rnd: *K1 tbl, k to marker, sm; rep from * to end.
                Inc rnd: *Yo, k to marker, sm; rep from * to end. 24 (28) sts.
                Closing rnd: *K1 tbl, k to marker, sm; rep from * to end.
                Rep inc rnd and closing rnd 10 (11) more times. 64 (72) sts.
                """, under("Toe", text(TWO_SIZES)));
    }

    @Test
    void saysWhichNeedleHoldsWhatWhereAStyleAsksForIt() {
        // half of 64 and of 72 is the instep
        assertEquals("""
                Note: on the foot the 64 (72) sts lie on two needles: 32 (36) instep sts on needle 1, \
                32 (36) sole sts on needle 2.
                """, footNote("two"));
        assertEquals("""
                Note: on the foot the 64 (72) sts lie on four needles: 16 (18) instep sts on needle 1, \
                16 (18) instep sts on needle 2, 16 (18) sole sts on needle 3, 16 (18) sole sts on needle 4.
                """, footNote("four"));
        assertEquals("", footNote("neutral"));
    }

    private static String footNote(String needles) {
        PatternText text = Manuscripts.write(TWO_SIZES.graded(), HouseStyles.read("own", Map.of("needles", needles)));
        return under("Foot", text).lines().filter(line -> line.contains("needle")).map(line -> line + "\n")
                .reduce("", String::concat);
    }

    @Test
    void writesAShortRowHeelAsItIsWorkedByHand() {
        // 32 stitches turn 11 a side around 10, 36 turn 12 around 12: the first and the last pair stand apart
        assertEquals("""
                K32 (36); work flat on the next 32 (36) sts; hold the other 32 (36) sts.
                Row 1 (RS): K to last st, w&t.
                Row 2 (WS): P to last st, w&t.
                Row 3 (RS): K to 1 st before gap, w&t.
                Row 4 (WS): P to 1 st before gap, w&t.
                Rep rows 3-4 9 (10) more times.
                Row 5 (RS): K to wrapped st, k1 with its wraps, w&t.
                Row 6 (WS): P to wrapped st, p1 with its wraps, w&t.
                Rep rows 5-6 9 (10) more times.
                Row 7 (RS): K to wrapped st, k1 with its wraps, turn.
                Row 8 (WS): P to wrapped st, p1 with its wraps, turn.
                K32 (36); join to work in the rnd. 64 (72) sts.
                """, under("Heel", text(TWO_SIZES)));
    }

    @Test
    void tellsLinesThatOnlySomeSizesHave() {
        // of 32 stitches 12 are left on each side after the first join, of 34 there are 13: these end with a pair
        // without k1
        PatternText text = text(Designs.cuffDown64().with(Designs.FLAP_HEEL).with("heel.flapRows = 32")
                .withSize("XL", "body.footLength = 240 mm; body.footCircumference = 250 mm; heel.stitches = 34; "
                        + "heel.flapRows = 34"));
        assertEquals("""
                Row 1 (RS): K17 (18), ssk, k1, turn. 31 (33) sts.
                Row 2 (WS): Sl1, p3, p2tog, p1, turn. 30 (32) sts.
                Row 3 (RS): Sl1, k to 1 st before gap, ssk, k1, turn. 29 (31) sts.
                Row 4 (WS): Sl1, p to 1 st before gap, p2tog, p1, turn. 28 (30) sts.
                Rep rows 3-4 5 more times. 18 (20) sts.
                Size XL only: Row 5 (RS): Sl1, k to 1 st before gap, ssk, turn. 19 sts.
                Size XL only: Row 6 (WS): Sl1, p to 1 st before gap, p2tog, turn. 18 sts.
                """, under("Heel turn", text));
    }

    @Test
    void picksUpAndNarrowsAGussetAsWorkedInTheDomain() {
        // 18 left, 17 a side, 84 around, ten pairs back to 64
        assertEquals("""
                Pick-up rnd: K18, pick up and knit 17 along the flap, pm, k the 32 held sts, pm, pick up and knit 17 \
                along the flap. 84 sts.
                K9; the rnd now begins here.
                Rnd 1: K to 3 sts before marker, k2tog, k1, sm, k to marker, sm, k1, ssk, k to end. 82 sts.
                Rnd 2: K to end.
                Rep rnds 1-2 9 more times. 64 sts.
                """, under("Gusset", text(Designs.cuffDown64().with(Designs.FLAP_HEEL).with("heel.flapRows = 32"))));
    }

    @Test
    void showsADashForWhatASizeOfSeveralDoesNotHave() {
        PatternText text = text(TWO_SIZES.withSize("XS", "body.footLength = 120 mm; body.footCircumference = 100 mm")
                .withSize("XXL", "body.footLength = 270 mm; body.footCircumference = 262 mm"));
        // 32 stitches alternate from 12 on, so that the smallest size works rnd 2 never
        assertTrue(under("Toe", text).contains("Sizes M, L and XXL only: Rnd 2: "), under("Toe", text));
        assertTrue(under("Toe", text).contains("more times. 20 (24, –, 24) sts."), under("Toe", text));
    }

    @Test
    void tellsOneSizeItsOwnNumbersAlone() {
        PatternText large = text(TWO_SIZES).onlySize("L");
        assertEquals(List.of("L"), large.sizes());
        assertEquals("Size: L", of(Role.SIZES, large));
        assertTrue(under("Toe", large).contains("Rep rnd 2 2 more times. 24 sts.\n"));
        String medium = under("Toe", text(TWO_SIZES).onlySize("M"));
        assertTrue(medium.contains("Rep rnd 2 once more. 20 sts.\n"), medium);
        String whole = Renderings.plain(large);
        assertFalse(whole.contains("(7") || whole.contains(" only:"), whole);
    }

    @Test
    void leavesOutOfOneSizeWhatOthersHave() {
        PatternText text = text(TWO_SIZES.with(new StarToe(Increase.MAKE_ONE)).with(Direction.CUFF_DOWN));
        for (String label : text.sizes()) {
            String one = Renderings.plain(text.onlySize(label));
            assertFalse(one.contains("–") || one.contains(" only:"), one);
        }
        assertThrows(IllegalArgumentException.class, () -> text.onlySize("XXL"));
    }

    @Test
    void listsExactlyTheAbbreviationsThatItUses() {
        String wrapped = of(Role.ABBREVIATION, text(TWO_SIZES));
        assertEquals("""
                k: knit
                p: purl
                rep: repeat
                rnd(s): round(s)
                RS: right side
                sm: slip marker
                st(s): stitch(es)
                tbl: through the back loop
                w&t: wrap the next st and turn
                WS: wrong side
                yo: yarn over""", wrapped);
        String german = of(Role.ABBREVIATION, text(TWO_SIZES.with(new ShortRowHeel(TurnMethod.GERMAN))));
        assertTrue(german.contains("\nds: ") || german.startsWith("ds: "), german);
        assertFalse(german.contains("w&t"), german);
    }

    @Test
    void writesWholeWordsWithoutAListOfAbbreviations() {
        PatternText text = Manuscripts.write(TWO_SIZES.graded(), HouseStyles.shipped("longhand"));
        assertTrue(under("Toe", text).contains(
                "Round 2: *Yarn over, knit 1 through back loop, knit to marker, slip marker; repeat from * to end. 16 stitches.\n"));
        assertTrue(under("Toe", text).contains("Repeat round 2 1 [2] more times. 20 [24] stitches.\n"));
        assertEquals("", of(Role.ABBREVIATION, text));
        assertTrue(under("Cuff", text).contains("Cast off all stitches with a stretchy cast-off."));
        assertEquals("Tension: 32 stitches and 44 rounds = 10 cm in stocking stitch", of(Role.GAUGE, text));
    }

    @Test
    void printsLengthsInTheUnitsOfTheStyle() {
        // 64 and 72 stitches at 32 over 10 cm: 200 and 225 mm
        String both = of(Role.MEASUREMENT, text(TWO_SIZES));
        assertTrue(both.contains("Finished measurements: foot circumference 20 (22.5) cm / 7 3/4 (8 3/4) in;"), both);
        String eighths = of(Role.MEASUREMENT, Manuscripts.write(TWO_SIZES.graded(),
                HouseStyles.read("own", Map.of("lengths", "in", "inch.denominator", "8"))));
        assertTrue(eighths.contains("foot circumference 7 7/8 (8 7/8) in;"), eighths);
        String comma = of(Role.MEASUREMENT, Manuscripts.write(TWO_SIZES.graded(),
                HouseStyles.read("own", Map.of("lengths", "cm", "decimal", ","))));
        assertTrue(comma.contains("foot circumference 20 (22,5) cm;"), comma);
    }

    @Test
    void saysWhichSizesCannotBeWritten() {
        PatternText text = text(TWO_SIZES.withSize("odd",
                "body.footLength = 240 mm; body.footCircumference = 222 mm; foot.stitches = 65"));
        String notes = under("Notes", text);
        assertTrue(notes.contains("size odd is not written"), notes);
        assertTrue(under("Toe", text).contains("20 (24, –) sts."), under("Toe", text));
    }

    @Test
    void tellsRightFromLeftOnlyWhereTheyDiffer() {
        assertTrue(under("Notes", text(TWO_SIZES)).contains("two socks alike"));
        PatternText asymmetric = text(TWO_SIZES.with(new AsymmetricToe(Increase.MAKE_ONE)));
        assertFalse(under("Notes", asymmetric).contains("two socks alike"));
        assertTrue(under("Toe", asymmetric).contains("Left sock: the first half is the sole"), under("Toe",
                asymmetric));
    }
}
