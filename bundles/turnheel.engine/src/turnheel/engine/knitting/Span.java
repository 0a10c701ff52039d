package turnheel.engine.knitting;

import java.util.List;

import turnheel.engine.query.Place;

/**
 * A piece of a text.
 *
 * @param line from 0
 * @param from its first column, from 0
 * @param to the column after its last
 */
record Span(int line, int from, int to) {

    /** From the first to the last of them; on the line of the first, where they go over several. */
    static Span of(List<Word> words) {
        Word first = words.getFirst();
        int to = first.to();
        for (Word word : words) {
            if (word.line() == first.line()) {
                to = word.to();
            }
        }
        return new Span(first.line(), first.from(), to);
    }

    Place.Text place() {
        return new Place.Text(line + 1, from + 1, to + 1);
    }
}
