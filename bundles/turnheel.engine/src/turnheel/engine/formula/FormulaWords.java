package turnheel.engine.formula;

import java.text.MessageFormat;
import java.util.ResourceBundle;

import turnheel.engine.formula.Reading.Unread;

/** What is said about formulas to a person; the words are in {@code formula.properties}. */
public final class FormulaWords {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.engine.formula.formula");
    /** Of a piece in characters; more of it would hide the sentence. */
    private static final int LONGEST_PIECE = 30;

    private FormulaWords() {
    }

    /** One sentence: what is wrong, where, and what to write instead. */
    public static String sentence(Unread unread) {
        return MessageFormat.format(WORDS.getString(unread.problem().name()), shortened(unread.piece()),
                Integer.toString(unread.position() + 1), String.join(" ", unread.allowed()));
    }

    /** How a function is called, such as {@code ROUND(number; places)}. */
    public static String call(FormulaFunction function) {
        return function.name() + WORDS.getString("signature." + function.signature().name());
    }

    /** What a function gives, in one sentence. */
    public static String meaning(FormulaFunction function) {
        return WORDS.getString("function." + function.name());
    }

    private static String shortened(String piece) {
        if (piece.codePointCount(0, piece.length()) <= LONGEST_PIECE) {
            return piece;
        }
        return piece.substring(0, piece.offsetByCodePoints(0, LONGEST_PIECE)) + "…";
    }
}
