package turnheel.engine.knitting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.knitting.Corpus.Slip;
import turnheel.engine.knitting.Corpus.Told;
import turnheel.engine.query.Check;

/** The reader against manuscripts whose counts were proved by another program, and against slips planted in them. */
class CorpusTest {

    private static final double READ_AT_LEAST = 0.95;

    @ParameterizedTest(name = "{0}")
    @MethodSource("turnheel.engine.knitting.Corpus#correctFiles")
    void raisesNothingAgainstACorrectManuscript(String file) {
        assertEquals(List.of(), Corpus.queries(Corpus.correct(file)));
    }

    /** A remark counts as not read: a line that was taken for one might be an instruction that was not understood. */
    @Test
    void readsNearlyEveryLineThatTellsWhatToDo() {
        List<ReadLine> lines = Corpus.correctFiles().stream().flatMap(file -> Manuscript.read(Corpus.correct(file)).lines().stream())
                .toList();
        long read = count(lines, ReadLine.Kind.INSTRUCTION);
        long notRead = count(lines, ReadLine.Kind.UNREAD) + count(lines, ReadLine.Kind.REMARK);
        assertTrue(read >= READ_AT_LEAST * (read + notRead), "%d read, %d not".formatted(read, notRead));
    }

    private static long count(List<ReadLine> lines, ReadLine.Kind kind) {
        return lines.stream().filter(line -> line.kind() == kind).count();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("turnheel.engine.knitting.Corpus#slips")
    void raisesOneQueryForOneSlip(Slip slip) {
        assertEquals(List.of(slip.query()), Corpus.queries(List.of(slip)));
    }

    static List<String> filesWithLongLists() {
        return Corpus.correctFiles().stream().filter(file -> !Corpus.correct(file).equals(Corpus.inGroups(Corpus.correct(file))))
                .toList();
    }

    static List<Slip> slipsBesideLongLists() {
        return Corpus.slips().stream().filter(slip -> filesWithLongLists().contains(slip.file())).toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("filesWithLongLists")
    void readsListsInSeveralBracketsAsInOne(String file) {
        assertEquals(List.of(), Corpus.queries(Corpus.inGroups(Corpus.correct(file))));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("slipsBesideLongLists")
    void findsASlipInListsInSeveralBrackets(Slip slip) {
        assertEquals(List.of(slip.query()), Corpus.queries(List.of(slip), Corpus::inGroups));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("turnheel.engine.knitting.Corpus#pairs")
    void raisesTwoQueriesForTwoSlips(List<Slip> pair) {
        assertEquals(inOrder(pair.stream().map(Slip::query).toList()), inOrder(Corpus.queries(pair)));
    }

    private static List<String> inOrder(List<Told> queries) {
        // values belong to one slip of its kind, and both slips of a pair may be of the same kind
        return queries.stream().sorted(Comparator.comparingInt(Told::line)).map(Told::toString).toList();
    }

    @Test
    void hasManuscriptsAndSlipsEnough() {
        Set<String> files = Set.copyOf(Corpus.correctFiles());
        assertTrue(files.size() >= 40, () -> files.size() + " manuscripts");
        assertTrue(Corpus.slips().size() >= 60, () -> Corpus.slips().size() + " slips");
        assertTrue(filesWithLongLists().size() >= 8, () -> filesWithLongLists().size() + " with long lists");
        assertTrue(slipsBesideLongLists().size() >= 12, () -> slipsBesideLongLists().size() + " beside long lists");
        assertTrue(Corpus.pairs().stream().allMatch(pair -> pair.size() == 2));
        assertEquals(Set.of(), Corpus.slips().stream().map(Slip::file).filter(file -> !files.contains(file))
                .collect(Collectors.toSet()));
    }

    @Test
    void hasASlipForEveryCheckOfTexts() {
        Set<String> checks = Arrays.stream(Check.values()).map(Check::id).filter(id -> id.startsWith("text."))
                .collect(Collectors.toSet());
        assertEquals(checks, Corpus.slips().stream().map(slip -> slip.query().id()).collect(Collectors.toSet()));
    }
}
