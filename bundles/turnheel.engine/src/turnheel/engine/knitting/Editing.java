package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import turnheel.engine.instruction.Line;
import turnheel.engine.knitting.Layout.Paragraph;
import turnheel.engine.query.Query;

/** What an editor looks at beside the counts: measurements, lengths, abbreviations and spelling. */
final class Editing {

    private final List<Told> told;
    private final List<String> sizes;
    private final Worked worked;
    private final ReadingWords table = ReadingWords.ENGLISH;

    /**
     * @param traces for each size, what was knitted
     * @param sound the sizes whose rounds are those that the text means
     */
    Editing(List<Told> told, List<String> sizes, List<List<Traced>> traces, Set<String> sound) {
        this.told = told;
        this.sizes = sizes;
        this.worked = new Worked(told, traces, sizes.stream().map(sound::contains).toList(), table);
    }

    List<Query> queries(List<Paragraph> paragraphs, List<String> lines) {
        List<Query> queries = new ArrayList<>();
        queries.addAll(Additions.of(paragraphs, sizes, table));
        queries.addAll(new MeasurementChecks(sizes, table, paragraphs, worked).of(paragraphs));
        double roundMm = WrittenGauge.in(paragraphs, table).map(WrittenGauge::roundMm).orElse(Double.NaN);
        queries.addAll(new LengthChecks(told, sizes, worked, roundMm, isToeUp()).queries());
        List<Query> spelled = new SpellingChecks(sizes, table).of(paragraphs);
        queries.addAll(spelled);
        // who spells a word two ways has slipped once, even where the list explains only one
        new AbbreviationChecks(sizes, table).of(paragraphs, lines).stream()
                .filter(query -> spelled.stream().noneMatch(other -> other.place().equals(query.place())))
                .forEach(queries::add);
        return queries;
    }

    /** Whether the first thing told to do stands under a toe. */
    private boolean isToeUp() {
        int first = 0;
        while (first < told.size() && told.get(first).line() instanceof Line.Section) {
            first++;
        }
        String section = first < told.size() ? worked.section(first) : "";
        return table.list("part-toe").stream().anyMatch(section::contains);
    }
}
