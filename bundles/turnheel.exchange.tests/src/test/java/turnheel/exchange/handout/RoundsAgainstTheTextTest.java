package turnheel.exchange.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Direction;
import turnheel.engine.fixture.Draft;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.instruction.Line;
import turnheel.engine.knitting.Knitted;
import turnheel.engine.knitting.Manuscript;
import turnheel.engine.knitting.Traced;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.writing.Manuscripts;
import turnheel.engine.writing.Renderings;
import turnheel.exchange.document.Block;

/** The tables of rounds, against the written pattern knitted stitch by stitch by who knows nothing but its words. */
class RoundsAgainstTheTextTest {

    /** Stitches, and the numbers of the round or rows in brackets. */
    private static final Pattern CELL = Pattern.compile("(?:(\\d+)–)?(\\d+)(?: \\((?:\\d+–)?(\\d+)\\))?");
    private static final Map<Topic, Set<String>> CHAPTERS = Map.of(Topic.TOE, Set.of("toe"),
            Topic.GUSSET, Set.of("gusset"), Topic.HEEL, Set.of("heel", "heel flap", "heel turn"));

    static Stream<Draft> ofEveryKind() {
        return Socks.ofEveryKind();
    }

    @ParameterizedTest
    @MethodSource("ofEveryKind")
    void theTextLeavesTheSameStitches(Draft draft) {
        Graded graded = draft.graded();
        if (!Socks.isSound(graded)) {
            return;
        }
        Manuscript manuscript = Manuscript.read(Renderings.plain(Manuscripts.write(graded, HouseStyles.usual())));
        Knitted knitted = manuscript.knit();
        List<String> chapters = chapters(manuscript);
        for (Lesson lesson : Lessons.of(graded)) {
            if (!CHAPTERS.containsKey(lesson.topic())) {
                continue;
            }
            Block.Table table = RoundsTable.of(graded, lesson);
            boolean flat = table.rows().stream().anyMatch(row -> row.toString().contains("Rows"));
            for (int size = 0; size < graded.sizes().size(); size++) {
                List<Traced> traced = knitted.traces().get(size).stream()
                        .filter(trace -> CHAPTERS.get(lesson.topic()).contains(chapters.get(trace.line()))).toList();
                if (flat) {
                    assertEquals(rowsOf(traced, graded.sizes().get(size)), lastRow(table, size), lesson::title);
                } else {
                    assertEquals(countsOf(traced), counts(draft, lesson, table, size), lesson::title);
                }
            }
        }
    }

    /** Under which heading each of the lines stands that tell what to do. */
    private static List<String> chapters(Manuscript manuscript) {
        List<String> chapters = new ArrayList<>();
        String chapter = "";
        for (Line line : manuscript.instructions()) {
            if (line instanceof Line.Section section) {
                chapter = section.title().toLowerCase(Locale.ROOT);
            }
            chapters.add(chapter);
        }
        return chapters;
    }

    /** All different counts, one after the other. */
    private static List<Integer> countsOf(List<Traced> traced) {
        return withoutRepeats(traced.stream().map(Traced::stitches).filter(stitches -> stitches > 0).toList());
    }

    private static List<Integer> withoutRepeats(List<Integer> counts) {
        List<Integer> different = new ArrayList<>();
        for (Integer count : counts) {
            if (different.isEmpty() || !different.getLast().equals(count)) {
                different.add(count);
            }
        }
        return different;
    }

    /** Those of a table; where a part begins on a needle that is full, its count comes first. */
    private static List<Integer> counts(Draft draft, Lesson lesson, Block.Table table, int size) {
        List<Integer> counts = new ArrayList<>();
        if (lesson.topic() == Topic.TOE && draft.direction() == Direction.CUFF_DOWN) {
            counts.add((int) draft.graded().sizes().get(size).value(Catalogue.FOOT_STITCHES));
        }
        for (Block.Row row : table.rows()) {
            cell(row, size).ifPresent(cell -> counts.add(Integer.parseInt(cell.group(2))));
        }
        return withoutRepeats(counts);
    }

    /** Flat rows: the other stitches of the round rest, or are not there yet. */
    private static int rowsOf(List<Traced> traced, GradedSize size) {
        return traced.stream().filter(trace -> trace.onHold() > 0
                || trace.stitches() < size.value(Catalogue.FOOT_STITCHES)).mapToInt(Traced::rounds).sum();
    }

    private static int lastRow(Block.Table table, int size) {
        int last = 0;
        for (Block.Row row : table.rows()) {
            boolean numbers = row.cells().getFirst().toString().contains("Rows");
            last = numbers ? cell(row, size).map(cell -> Integer.parseInt(cell.group(2))).orElse(last) : last;
        }
        return last;
    }

    private static Optional<Matcher> cell(Block.Row row, int size) {
        if (!(row.cells().get(size + 1) instanceof Block.Cell.Figure(String text))) {
            return Optional.empty();
        }
        Matcher matcher = CELL.matcher(text);
        assertTrue(matcher.matches(), text);
        return Optional.of(matcher);
    }
}
