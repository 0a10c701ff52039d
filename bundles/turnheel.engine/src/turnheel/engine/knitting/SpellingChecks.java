package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import turnheel.engine.knitting.Layout.Paragraph;
import turnheel.engine.knitting.Layout.Role;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;

/** One thing spelled two ways: the rarer spelling is the query. */
final class SpellingChecks {

    private final List<String> sizes;
    private final ReadingWords table;

    SpellingChecks(List<String> sizes, ReadingWords table) {
        this.sizes = sizes;
        this.table = table;
    }

    List<Query> of(List<Paragraph> paragraphs) {
        List<Query> queries = new ArrayList<>();
        for (String thing : table.list("spelled-in-instructions")) {
            compare(thing, paragraphs, Role.BODY, queries);
        }
        for (String thing : table.list("spelled-anywhere")) {
            compare(thing, paragraphs, Role.TITLE, queries);
        }
        return queries;
    }

    /** @param least instructions alone, or any role */
    private void compare(String thing, List<Paragraph> paragraphs, Role least, List<Query> queries) {
        String[] ways = thing.split("/");
        List<String> one = List.of(ways[0].split(" "));
        List<String> other = List.of(ways[1].split(" "));
        List<Word> first = new ArrayList<>();
        List<Word> second = new ArrayList<>();
        for (Paragraph paragraph : paragraphs) {
            if (least == Role.BODY && paragraph.role() != Role.BODY || isList(paragraph)) {
                continue;
            }
            for (int at = 0; at < paragraph.words().size(); at++) {
                Word word = paragraph.words().get(at);
                String raw = word.raw().toLowerCase(Locale.ROOT);
                if (at > 0 && table.list("preposition").contains(paragraph.words().get(at - 1).text())) {
                    // "in the round" is never shortened
                    continue;
                }
                if (one.contains(raw)) {
                    first.add(word);
                } else if (other.contains(raw)) {
                    second.add(word);
                }
            }
        }
        if (!first.isEmpty() && !second.isEmpty()) {
            boolean rarer = first.size() < second.size();
            Word odd = (rarer ? first : second).getFirst();
            queries.add(new Query(Check.TEXT_SPELLING, Span.of(List.of(odd)).place(), sizes,
                    (rarer ? second : first).getFirst().raw(), odd.raw(), ""));
        }
    }

    private boolean isList(Paragraph paragraph) {
        return table.list("abbreviations").contains(paragraph.section().toLowerCase(Locale.ROOT));
    }
}
