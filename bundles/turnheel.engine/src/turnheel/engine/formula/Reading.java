package turnheel.engine.formula;

import java.util.List;

import turnheel.engine.term.Term;

/** What came of reading a formula. Having no term is an answer: it is shown, not thrown. */
public sealed interface Reading {

    /** The formula as a rule; the rows that it needs are the term's keys. */
    record Read(Term term) implements Reading {
    }

    /**
     * What keeps the text from being a formula: the leftmost wrong word, else what has no meaning.
     *
     * @param position of the piece in the text, counted from 0 in {@code char}s; the text's length at its end
     * @param piece what stands there, as it was written; empty at the end of the text
     * @param allowed what could stand there instead, or the limit that was passed; empty when that is no short list
     */
    record Unread(FormulaProblem problem, int position, String piece, List<String> allowed) implements Reading {
        public Unread {
            allowed = List.copyOf(allowed);
        }
    }
}
