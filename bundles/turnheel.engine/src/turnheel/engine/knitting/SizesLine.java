package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import turnheel.engine.knitting.Layout.Paragraph;
import turnheel.engine.knitting.Layout.Role;

/** The sizes of a pattern, from the line that lists them, else from the longest list of values that any line has. */
final class SizesLine {

    /** Sizes that a pattern may have. */
    private static final int MOST_SIZES = 60;

    private SizesLine() {
    }

    static List<String> names(List<Paragraph> paragraphs, ReadingWords table) {
        for (Paragraph paragraph : paragraphs) {
            boolean sizes = table.list("sizes").contains(paragraph.section().toLowerCase(Locale.ROOT));
            List<String> names = sizes && paragraph.role() == Role.FRONT ? SizeNames.listed(paragraph.words()) : List.of();
            if (!names.isEmpty() && names.size() <= MOST_SIZES) {
                return names;
            }
        }
        int most = 1;
        for (Paragraph paragraph : paragraphs) {
            if (paragraph.role() == Role.BODY) {
                most = Math.max(most, longestList(paragraph.words()));
            }
        }
        if (most == 1 || most > MOST_SIZES) {
            return List.of(table.list("one-size").getFirst());
        }
        List<String> names = new ArrayList<>();
        for (int size = 1; size <= most; size++) {
            names.add(Integer.toString(size));
        }
        return names;
    }

    /** A number, and those in the brackets right after it. */
    private static int longestList(List<Word> words) {
        int longest = 1;
        for (int at = 0; at + 2 < words.size(); at++) {
            if (words.get(at).kind() == Word.Kind.NUMBER) {
                int values = 1;
                int close = closing(words, at + 1);
                for (int open = at + 1; close > open; open = close + 1, close = closing(words, open)) {
                    values += (int) words.subList(open, close).stream().filter(word -> word.kind() == Word.Kind.NUMBER)
                            .count();
                }
                longest = Math.max(longest, values);
            }
        }
        return longest;
    }

    /** Where brackets with numbers alone, open at {@code at}, close; -1 where there are none. */
    private static int closing(List<Word> words, int at) {
        if (at >= words.size() || !words.get(at).is("(")) {
            return -1;
        }
        int in = at + 1;
        while (in < words.size() && (words.get(in).kind() == Word.Kind.NUMBER || words.get(in).is(",")
                || words.get(in).is("-"))) {
            in++;
        }
        return in < words.size() && words.get(in).is(")") ? in : -1;
    }
}
