package turnheel.engine.writing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.checks.Checks;
import turnheel.engine.fixture.Deep;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.grading.Graded;
import turnheel.engine.instruction.Line;
import turnheel.engine.knitting.Knitted;
import turnheel.engine.knitting.Knitting;
import turnheel.engine.knitting.Manuscript;
import turnheel.engine.knitting.ReadLine;
import turnheel.engine.knitting.Traced;
import turnheel.engine.query.Check;
import turnheel.engine.query.Place;
import turnheel.engine.query.Query;
import turnheel.engine.query.Severity;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.wording.Vocabulary;

/**
 * The written text, read and knitted by who knows nothing but words, gives after every round what its lines give; and
 * those give the rounds of shaping ({@link WrittenLinesTest}).
 */
class WrittenTextKnitsTest {

    /** What lies on the needles after so many rounds alike. */
    private record After(int rounds, int stitches, int openYarnOvers, int onHold) {
        static After of(Traced traced) {
            return new After(traced.rounds(), traced.stitches(), traced.openYarnOvers(), traced.onHold());
        }
    }

    static Stream<Draft> everyKindInBothDirections() {
        return WrittenLinesTest.everyKindInBothDirections();
    }

    @ParameterizedTest
    @MethodSource("everyKindInBothDirections")
    void everyKindKnitsAsItsLinesSay(Draft draft) {
        for (String style : HouseStyles.SHIPPED) {
            knits(draft.graded(), HouseStyles.shipped(style));
        }
        knits(draft.graded(), HouseStyles.read("pair", Map.of("needles", "two")));
        knits(draft.graded(), HouseStyles.read("four", Map.of("needles", "four", "abbreviations", "no")));
    }

    @Property(seed = Repeatable.SEED, tries = 200, edgeCases = EdgeCasesMode.NONE)
    void everySockKnitsAsItsLinesSay(@ForAll("usual") Draft draft, @ForAll("styles") HouseStyle style) {
        knits(draft.graded(), style);
    }

    @Deep
    void everySockOfManyMoreKnitsAsItsLinesSay(@ForAll("usual") Draft draft, @ForAll("styles") HouseStyle style) {
        knits(draft.graded(), style);
    }

    private static void knits(Graded graded, HouseStyle style) {
        boolean sound = Checks.of(graded).stream().noneMatch(query -> query.severity() == Severity.ERROR);
        List<Chapter> chapters = Manuscripts.chapters(graded.design(), new Counts(graded), Vocabulary.of(style),
                style.needles());
        if (!sound || chapters.isEmpty()) {
            return;
        }
        List<String> labels = graded.sizes().stream().map(size -> size.label()).toList();
        List<Line> lines = new ArrayList<>();
        chapters.forEach(chapter -> {
            lines.add(new Line.Section(chapter.heading()));
            lines.addAll(chapter.lines());
        });
        Knitted values = Knitting.lines(lines, labels);
        assertEquals("", said(values.queries(), List.of()), () -> "of the lines of " + graded.design());

        PatternText written = Manuscripts.write(graded, style);
        knits(Renderings.plain(written), labels, values);
        knits(forLayout(written), labels, values);
    }

    /** As a layout gets it. */
    private static String forLayout(PatternText written) {
        StringBuilder text = new StringBuilder();
        for (Paragraph paragraph : written.paragraphs()) {
            text.append(paragraph.role() == Role.HEADING ? "\n" : "").append(written.unbroken(paragraph)).append("\n")
                    .append(paragraph.role() == Role.TITLE ? "\n" : "");
        }
        return text.toString();
    }

    private static void knits(String text, List<String> labels, Knitted values) {
        Manuscript manuscript = Manuscript.read(text);
        Knitted read = manuscript.knit();
        // the sizes of a random design grow in no order
        List<Query> found = read.queries().stream().filter(query -> query.check() != Check.TEXT_SIZES_ORDER).toList();
        assertEquals("", said(found, text.lines().toList()), text);
        assertEquals(labels, manuscript.sizes());
        assertTrue(manuscript.lines().stream().noneMatch(line -> line.kind() == ReadLine.Kind.UNREAD), text);
        for (int size = 0; size < labels.size(); size++) {
            assertEquals(rounds(values, size), rounds(read, size), text);
        }
    }

    private static List<After> rounds(Knitted knitted, int size) {
        return knitted.traces().get(size).stream().filter(traced -> traced.rounds() > 0).map(After::of).toList();
    }

    private static String said(List<Query> queries, List<String> lines) {
        StringBuilder said = new StringBuilder();
        for (Query query : queries) {
            String place = query.place() instanceof Place.Text text && !lines.isEmpty()
                    ? lines.get(text.line() - 1) : query.place().toString();
            said.append("%s %s, expected %s, found %s: %s%n".formatted(query.check(), query.sizes(), query.expected(),
                    query.found(), place));
        }
        return said.toString();
    }

    /** The styles that ship, and one with other marks, units and words. */
    @Provide
    Arbitrary<HouseStyle> styles() {
        HouseStyle slashes = HouseStyles.read("slashes", Map.of("sized.opening", "/", "sized.separator", "/",
                "sized.closing", "", "sized.dash", "-", "lengths", "cm", "english", "UK"));
        HouseStyle inches = HouseStyles.read("inches", Map.of("sized.opening", " [", "sized.closing", "]", "lengths",
                "in",
                "inch.denominator", "8", "word.stitch.SLIP_SLIP_KNIT.once", "skp", "word.marker.SLIP", "slip marker"));
        return Arbitraries.of(HouseStyles.usual(), HouseStyles.shipped("longhand"), slashes, inches);
    }

    @Provide
    Arbitrary<Draft> usual() {
        return RandomDesigns.usual();
    }
}
