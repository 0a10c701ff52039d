package turnheel.engine.comparing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.comparing.InputChange.Aspect;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Size;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.term.Key;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.writing.Manuscripts;
import turnheel.engine.writing.Renderings;

class ComparisonTest {

    private static final Draft SIX = Designs.toeUpInSixSizes();
    private static final Pattern NUMBER = Pattern.compile("\\d+(?: \\d+/\\d+|/\\d+|\\.\\d+)?");

    private static Comparison compared(Draft before, Draft after) {
        return Comparison.of(before.graded(), after.graded(), HouseStyles.usual());
    }

    private static Draft overriding(Draft draft, String label, String numbers) {
        return draft.withEachSize(size -> size.label().equals(label) ? numbers : "");
    }

    private static List<String> said(Comparison comparison) {
        return comparison.errata().stream().map(erratum -> switch (erratum) {
            case Erratum.Value value -> "%s, %s: %s[%s > %s]%s".formatted(value.place().chapter(), value.size(),
                    value.lead(), value.reads(), value.shouldRead(), value.trail());
            case Erratum.Passage passage -> "%s: %s > %s".formatted(passage.place().chapter(),
                    passage.reads().orElse(""), passage.shouldRead().orElse(""));
        }).toList();
    }

    @Test
    void theSameVersionTwiceReadsTheSame() {
        Comparison same = compared(SIX, Designs.toeUpInSixSizes());
        assertTrue(same.readsTheSame());
        assertEquals(List.of(), same.inputs());
    }

    /**
     * By hand, domain § 5: picking up 18 a side in place of 17 gives 86 around in place of 84, and 11 decreases. One more
     * pair of gusset rounds leaves two fewer for the foot.
     */
    @Test
    void onePickedUpStitchChangesWhatTheGussetCountsAndNothingElse() {
        Draft before = Designs.cuffDown64().with(Designs.FLAP_HEEL)
                .with("heel.flapRows = 32; heel.pickUp = 17; foot.stitches = 64; heel.stitches = 32");
        Comparison comparison = compared(before, before.with("heel.pickUp = 18"));
        assertEquals(List.of("Gusset, M: knit [17 > 18] along", "Gusset, M: knit [17 > 18] along",
                "Gusset, M: flap. [84 > 86] sts.", "Gusset, M: end. [82 > 84] sts.", "Gusset, M: 1-2 [9 > 10] more",
                "Foot, M: K [47 > 45] rnds,"),
                said(comparison));
        assertEquals(List.of(new InputChange.OfSize(before.graded().parameter(new Key("heel.pickUp")), "M",
                Optional.of(Quantity.parse("17")), Optional.of(Quantity.parse("18")))), comparison.inputs());
        assertEquals("Rep rnds 1-2 9 more times. 64 sts.", comparison.errata().get(4).place().line());
    }

    static Stream<Arguments> changes() {
        Draft flap = Designs.cuffDown64().with(Designs.FLAP_HEEL);
        List<Arguments> changes = new ArrayList<>();
        for (Draft draft : List.of(SIX, SIX.with(Direction.CUFF_DOWN), SIX.with(Designs.WEDGE_TOE).with(Designs.FLAP_HEEL),
                flap, Designs.toeUpInTwelveSizes())) {
            List<Size> sizes = draft.sizes();
            String label = sizes.get(sizes.size() / 2).label();
            for (String numbers : List.of("foot.rounds = 61", "body.footLength = 251 mm", "cuff.height = 33 mm",
                    "heel.centre = 12", "body.legHeight = 231 mm", "fit.easeLength = -9 mm")) {
                changes.add(Arguments.of(draft, overriding(draft, label, numbers), numbers));
                changes.add(Arguments.of(draft, draft.with(numbers), numbers + " in every size"));
            }
        }
        return changes.stream();
    }

    /** The second way knows no lines: what the edition of one size prints, as a bag of numbers. */
    @ParameterizedTest(name = "[{index}] {2}")
    @MethodSource("changes")
    void correctingTheNumbersOfASizeGivesThoseThatItsNewEditionPrints(Draft before, Draft after, String numbers) {
        Comparison comparison = compared(before, after);
        if (comparison.errata().stream().anyMatch(Erratum.Passage.class::isInstance)) {
            // whole lines are corrected for all sizes at once; their numbers are not told one by one
            return;
        }
        for (Size size : before.sizes()) {
            Map<String, Integer> bag = numbers(before.graded(), size.label());
            comparison.errata().stream().map(Erratum.Value.class::cast)
                    .filter(value -> value.size().equals(size.label())).forEach(value -> {
                        count(value.reads(), bag, -1);
                        count(value.shouldRead(), bag, 1);
                    });
            bag.values().removeIf(times -> times == 0);
            assertEquals(numbers(after.graded(), size.label()), bag, numbers + ", " + size.label());
        }
    }

    private static Map<String, Integer> numbers(Graded graded, String size) {
        Map<String, Integer> bag = new TreeMap<>();
        count(Renderings.plain(Manuscripts.write(graded, HouseStyles.usual()).onlySize(size)), bag, 1);
        return bag;
    }

    private static void count(String text, Map<String, Integer> bag, int times) {
        Matcher numbers = NUMBER.matcher(text);
        while (numbers.find()) {
            bag.merge(numbers.group(), times, Integer::sum);
        }
    }

    /** The graph of the terms says which sizes a change reaches. */
    @ParameterizedTest(name = "[{index}] {2}")
    @MethodSource("changes")
    void aSizeWhoseNumbersStayedIsNeverCorrected(Draft before, Draft after, String numbers) {
        Comparison comparison = compared(before, after);
        for (Erratum erratum : comparison.errata()) {
            if (erratum instanceof Erratum.Value value) {
                assertFalse(values(before.graded().size(value.size())).equals(values(after.graded().size(value.size()))),
                        value.toString());
            }
        }
        assertFalse(comparison.inputs().isEmpty(), numbers);
    }

    private static Map<Key, Double> values(GradedSize size) {
        Map<Key, Double> values = new TreeMap<>();
        for (Cell cell : size.cells().values()) {
            values.put(cell.key(), cell.value());
        }
        return values;
    }

    @Test
    void aSizeThatWasAddedIsSaidOnceAndItsNumbersAreNot() {
        Draft more = SIX.withSize("Giant", "body.footLength = 310 mm; body.footCircumference = 300 mm; "
                + "body.ankleCircumference = 290 mm; body.heelCircumference = 400 mm; foot.stitches = 104");
        Comparison grown = compared(SIX, more);
        assertEquals(List.of("Giant"), grown.sizes().added());
        assertFalse(grown.readsTheSame());
        assertTrue(grown.errata().stream().noneMatch(Erratum.Value.class::isInstance), said(grown).toString());
        Comparison shrunk = compared(more, SIX);
        assertEquals(List.of("Giant"), shrunk.sizes().dropped());
        assertTrue(shrunk.errata().stream().noneMatch(Erratum.Value.class::isInstance), said(shrunk).toString());
    }

    @Test
    void aSizeThatMovedIsStillItself() {
        List<Size> turned = new ArrayList<>(SIX.sizes());
        turned.add(turned.removeFirst());
        Draft moved = SIX.withoutSizes();
        for (Size size : turned) {
            moved = new Draft(moved.direction(), moved.stitches(), moved.rounds(), moved.toe(), moved.heel(), moved.leg(),
                    moved.cuff(), moved.patterns(), moved.lengths(),
                    Stream.concat(moved.sizes().stream(), Stream.of(size)).toList());
        }
        SizePairs sizes = SizePairs.of(SIX.sizes(), moved.sizes());
        assertTrue(sizes.areReordered());
        assertFalse(sizes.areTheSame());
        assertEquals(SIX.sizes().size(), sizes.pairs().size());
        sizes.pairs().forEach(pair -> assertEquals(pair.label(), pair.newLabel()));
    }

    @Test
    void aSizeThatWasRenamedKeepsItsNumbers() {
        Size first = SIX.sizes().getFirst();
        List<Size> sizes = new ArrayList<>(SIX.sizes());
        sizes.set(0, new Size(first.id(), "Tiny", first.inputs(), first.overrides()));
        Draft renamed = new Draft(SIX.direction(), SIX.stitches(), SIX.rounds(), SIX.toe(), SIX.heel(), SIX.leg(),
                SIX.cuff(), SIX.patterns(), SIX.lengths(), sizes);
        Comparison comparison = compared(SIX, renamed);
        assertTrue(comparison.sizes().areTheSame());
        List<Erratum.Value> values = comparison.errata().stream().filter(Erratum.Value.class::isInstance)
                .map(Erratum.Value.class::cast).toList();
        assertEquals(1, values.size(), said(comparison).toString());
        assertEquals(first.label(), values.getFirst().reads());
        assertEquals("Tiny", values.getFirst().shouldRead());
    }

    @Test
    void anotherHeelIsToldInWholeLinesOfItsChaptersAlone() {
        Draft other = SIX.with(Designs.FLAP_HEEL).with("foot.rounds = 60");
        Comparison comparison = compared(SIX.with("foot.rounds = 60"), other);
        assertEquals(List.of(new InputChange.OfPattern(Aspect.HEEL)), comparison.inputs());
        assertTrue(said(comparison).stream().anyMatch(line -> line.startsWith("Heel")), said(comparison).toString());
        assertTrue(said(comparison).stream().noneMatch(line -> line.startsWith("Toe") || line.startsWith("Cuff")),
                said(comparison).toString());
        Comparison back = compared(other, SIX.with("foot.rounds = 60"));
        assertEquals(passages(comparison, true), passages(back, false));
        assertEquals(passages(comparison, false), passages(back, true));
    }

    private static List<String> passages(Comparison comparison, boolean reads) {
        return comparison.errata().stream().filter(Erratum.Passage.class::isInstance).map(Erratum.Passage.class::cast)
                .flatMap(passage -> (reads ? passage.reads() : passage.shouldRead()).stream()).sorted().toList();
    }

    @ParameterizedTest
    @CsvSource({"toe-up", "cuff-down"})
    void theOtherDirectionIsComparedToo(String direction) {
        Draft one = direction.equals("toe-up") ? SIX : SIX.with(Direction.CUFF_DOWN);
        Draft other = direction.equals("toe-up") ? SIX.with(Direction.CUFF_DOWN) : SIX;
        Comparison comparison = compared(one, other);
        assertEquals(List.of(new InputChange.OfPattern(Aspect.DIRECTION)), comparison.inputs());
        List<String> old = Renderings.plain(Manuscripts.write(one.graded(), HouseStyles.usual())).lines().toList();
        comparison.errata().stream().filter(Erratum.Passage.class::isInstance).map(Erratum.Passage.class::cast)
                .forEach(passage -> passage.reads().ifPresent(line -> assertTrue(old.contains(line), line)));
    }
}
