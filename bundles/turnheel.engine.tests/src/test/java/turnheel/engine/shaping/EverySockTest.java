package turnheel.engine.shaping;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsReport;
import turnheel.engine.checks.Checks;
import turnheel.engine.design.Part;
import turnheel.engine.fixture.Deep;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.Numbers;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.query.Query;
import turnheel.engine.query.Sentences;
import turnheel.engine.query.Severity;

/** Every combination of parts, knitted loop by loop. */
class EverySockTest {

    @Property(seed = Repeatable.SEED, tries = 2000, edgeCases = EdgeCasesMode.NONE)
    @StatisticsReport(onFailureOnly = true)
    void everySizeWithoutErrorsKnits(@ForAll("usual") Draft draft) {
        Graded graded = draft.graded();
        List<Query> queries = Checks.of(graded);
        for (GradedSize size : graded.sizes()) {
            boolean sound = !hasError(queries, size);
            if (sound) {
                KnittedSock.knit(graded, size);
            }
            Statistics.label("sizes").collect(sound ? "knitted" : "with an error")
                    .coverage(coverage -> coverage.check("knitted").percentage(share -> share > 70));
        }
    }

    @Deep
    @StatisticsReport(onFailureOnly = true)
    void everySizeOfManyMoreKnits(@ForAll("usual") Draft draft) {
        everySizeWithoutErrorsKnits(draft);
    }

    @Property(seed = Repeatable.SEED, tries = 2000, edgeCases = EdgeCasesMode.NONE)
    void whateverIsOverriddenKnitsOrIsAskedAbout(@ForAll("unusual") Draft draft) {
        Graded graded = draft.graded();
        List<Query> queries = Checks.of(graded);
        queries.forEach(query -> assertFalse(Sentences.of(query).isBlank()));
        for (GradedSize size : graded.sizes()) {
            boolean sound = !hasError(queries, size);
            for (PartRounds part : Rounds.of(graded, size)) {
                assertTrue(!sound || !part.rounds().isEmpty() || mayBeEmpty(part.part(), size),
                        () -> "no rounds and no query: " + part.part() + " of " + size.size());
                if (sound && !part.rounds().isEmpty()) {
                    assertDoesNotThrow(() -> KnittedSock.knitAlone(graded, size, part),
                            () -> part.part() + " of " + size.size());
                }
            }
        }
    }

    @Deep
    void whateverIsOverriddenInManyMoreKnitsOrIsAskedAbout(@ForAll("unusual") Draft draft) {
        whateverIsOverriddenKnitsOrIsAskedAbout(draft);
    }

    /** A leg can be so short that the cuff follows the heel. */
    private static boolean mayBeEmpty(Part part, GradedSize size) {
        return part == Part.LEG && Numbers.of(size, "leg.rounds") == 0;
    }

    private static boolean hasError(List<Query> queries, GradedSize size) {
        return queries.stream()
                .anyMatch(query -> query.severity() == Severity.ERROR && query.sizes().contains(size.label()));
    }

    @Provide
    Arbitrary<Draft> usual() {
        return RandomDesigns.usual();
    }

    @Provide
    Arbitrary<Draft> unusual() {
        return RandomDesigns.unusual();
    }
}
