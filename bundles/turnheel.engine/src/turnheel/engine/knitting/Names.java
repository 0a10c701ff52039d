package turnheel.engine.knitting;

import java.util.List;

import turnheel.engine.knitting.Layout.Paragraph;
import turnheel.engine.knitting.Layout.Role;

/**
 * The names that a text gives.
 *
 * @param rounds of rounds, as in {@code Inc rnd}
 * @param patterns of stitch patterns
 */
record Names(Phrases<String> rounds, Phrases<String> patterns) {

    /** Every name, so that it can be referred to before and after it is given. */
    static Names of(List<Paragraph> paragraphs, SizeNames sizes) {
        Names names = new Names(new Phrases<>(), new Phrases<>());
        for (Paragraph paragraph : paragraphs) {
            if (paragraph.role() == Role.BODY) {
                names.addRounds(paragraph.words(), sizes);
            } else if (paragraph.role() == Role.STITCH_PATTERN && !paragraph.words().isEmpty()) {
                names.patterns.add(paragraph.words().stream().map(Word::text).toList(), paragraph.section());
            }
        }
        return names;
    }

    private void addRounds(List<Word> words, SizeNames sizes) {
        for (int at = 0; at < words.size(); at++) {
            boolean begins = at == 0 || words.get(at - 1).is(".") || words.get(at - 1).is(":");
            int first = begins ? sizes.prefix(words, at).map(SizeNames.Prefix::end).orElse(at) : at;
            int colon = begins ? Labels.colon(words, first) : -1;
            if (colon > 0) {
                Labels.collectNames(words, first, colon, rounds);
            }
        }
    }
}
