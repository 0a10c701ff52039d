package turnheel.engine.writing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.checks.Checks;
import turnheel.engine.fixture.Deep;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.query.Query;
import turnheel.engine.query.Severity;
import turnheel.engine.shaping.Rounds;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.wording.Vocabulary;

/** The lines of every construction, followed loop by loop, give the rounds that shaping gives. */
class WrittenLinesTest {

    private static final Vocabulary VOCABULARY = Vocabulary.of(HouseStyles.usual());

    static Stream<Draft> everyKindInBothDirections() {
        return Designs.everyKindInBothDirections(Designs.toeUpInSixSizes()).stream();
    }

    @ParameterizedTest
    @MethodSource("everyKindInBothDirections")
    void everyKindGivesTheRoundsOfEverySize(Draft draft) {
        assertTrue(compared(draft) > 0, "no size of it is without errors");
    }

    @Property(seed = Repeatable.SEED, tries = 400, edgeCases = EdgeCasesMode.NONE)
    void everySockGivesTheRoundsOfEverySize(@ForAll("usual") Draft draft) {
        compared(draft);
    }

    @Deep
    void everySockOfManyMoreGivesTheRoundsOfEverySize(@ForAll("usual") Draft draft) {
        compared(draft);
    }

    /** Compares every size without errors; returns how many there are. */
    private static int compared(Draft draft) {
        Graded graded = draft.graded();
        List<Query> queries = Checks.of(graded);
        List<Chapter> chapters = Manuscripts.chapters(graded.design(), new Counts(graded), VOCABULARY,
                HouseStyle.Needles.NEUTRAL);
        int compared = 0;
        for (int size = 0; size < graded.sizes().size(); size++) {
            if (!hasError(queries, graded.sizes().get(size))) {
                compare(graded, size, chapters);
                compared++;
            }
        }
        return compared;
    }

    private static void compare(Graded graded, int size, List<Chapter> chapters) {
        Names names = Names.of(VOCABULARY);
        KnittedLines hands = new KnittedLines(size, List.of(names.setUp(), names.pickUp(), names.next()));
        try {
            chapters.forEach(chapter -> hands.knit(chapter.lines()));
        } catch (AssertionError misknit) {
            throw new AssertionError("%s in size %d of%n%s".formatted(misknit.getMessage(), size,
                    Renderings.plain(Manuscripts.write(graded, HouseStyles.usual()))), misknit);
        }
        List<KnittedLines.After> expected = new ArrayList<>();
        Rounds.of(graded, graded.sizes().get(size)).stream().flatMap(part -> part.rounds().stream())
                .filter(round -> round.number() > 0).forEach(round -> KnittedLines.After.add(expected,
                        new KnittedLines.After(1, false, round.stitches(), round.openYarnOvers())));
        boolean agree = expected.size() == hands.rounds().size();
        for (int i = 0; agree && i < expected.size(); i++) {
            agree = hands.rounds().get(i).agrees(expected.get(i));
        }
        assertTrue(agree, () -> "size %d: counted %s, followed %s in%n%s".formatted(size, expected, hands.rounds(),
                Renderings.plain(Manuscripts.write(graded, HouseStyles.usual()))));
    }

    private static boolean hasError(List<Query> queries, GradedSize size) {
        return queries.stream()
                .anyMatch(query -> query.severity() == Severity.ERROR && query.sizes().contains(size.label()));
    }

    @Provide
    Arbitrary<Draft> usual() {
        return RandomDesigns.usual();
    }
}
