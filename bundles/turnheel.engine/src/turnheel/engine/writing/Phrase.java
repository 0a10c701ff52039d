package turnheel.engine.writing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Puts pieces into the places of a phrase, and phrases in a row. */
final class Phrase {

    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");

    private final List<Piece> pieces = new ArrayList<>();

    static List<Piece> words(String text) {
        return new Phrase().add(text).pieces();
    }

    /** The phrase with its places {@code {0}}, {@code {1}} … filled. */
    @SafeVarargs
    static List<Piece> filled(String phrase, List<Piece>... places) {
        return filled(phrase, List.of(places));
    }

    /** The same with a list of what fills them. */
    static List<Piece> filled(String phrase, List<List<Piece>> places) {
        Phrase filled = new Phrase();
        Matcher matcher = PLACE.matcher(phrase);
        int done = 0;
        while (matcher.find()) {
            filled.add(phrase.substring(done, matcher.start()));
            filled.add(places.get(Integer.parseInt(matcher.group(1))));
            done = matcher.end();
        }
        return filled.add(phrase.substring(done)).pieces();
    }

    /** The same with a capital first, where it begins with a word. */
    static List<Piece> capitalized(List<Piece> pieces) {
        if (pieces.isEmpty() || !(pieces.getFirst() instanceof Piece.Words(String text))) {
            return pieces;
        }
        Phrase capitalized = new Phrase();
        // the asterisk of a repeat stands before the first word
        int first = text.startsWith("*") || text.startsWith("[") ? 1 : 0;
        if (text.length() > first) {
            int letter = text.codePointAt(first);
            capitalized.add(text.substring(0, first) + Character.toString(Character.toTitleCase(letter))
                    + text.substring(first + Character.charCount(letter)));
        } else {
            capitalized.add(text);
        }
        return capitalized.add(pieces.subList(1, pieces.size())).pieces();
    }

    Phrase add(String text) {
        if (text.isEmpty()) {
            return this;
        }
        if (!pieces.isEmpty() && pieces.getLast() instanceof Piece.Words(String before)) {
            pieces.set(pieces.size() - 1, new Piece.Words(before + text));
        } else {
            pieces.add(new Piece.Words(text));
        }
        return this;
    }

    Phrase add(List<Piece> more) {
        for (Piece piece : more) {
            switch (piece) {
                case Piece.Words(String text) -> add(text);
                case Piece.Values values -> pieces.add(values);
            }
        }
        return this;
    }

    /** Whether a letter put after it would seem to be of its last word. */
    boolean endsInLetter() {
        return !pieces.isEmpty() && pieces.getLast() instanceof Piece.Words(String text)
                && Character.isLetter(text.charAt(text.length() - 1));
    }

    List<Piece> pieces() {
        return List.copyOf(pieces);
    }
}
