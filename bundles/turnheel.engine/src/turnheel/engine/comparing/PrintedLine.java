package turnheel.engine.comparing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import turnheel.engine.writing.Paragraph;
import turnheel.engine.writing.PatternText;
import turnheel.engine.writing.Piece;
import turnheel.engine.writing.Role;

/**
 * A line of a printed pattern.
 *
 * @param chapter the heading that it stands under
 * @param text as it is printed for all sizes
 */
record PrintedLine(String chapter, Paragraph paragraph, String text) {

    /** Stands for values in a shape; no pattern is written with it. */
    private static final char VALUES = '\0';

    static List<PrintedLine> of(PatternText text) {
        List<PrintedLine> lines = new ArrayList<>();
        String chapter = "";
        for (Paragraph paragraph : text.paragraphs()) {
            String printed = text.text(paragraph);
            if (paragraph.role() == Role.HEADING) {
                chapter = printed;
            }
            lines.add(new PrintedLine(chapter, paragraph, printed));
        }
        return lines;
    }

    /** Equal for lines of one place that differ in nothing but values. */
    String shape() {
        StringBuilder shape = new StringBuilder(chapter).append('\n').append(paragraph.role()).append('\n');
        for (Piece piece : paragraph.pieces()) {
            switch (piece) {
                case Piece.Words(String words) -> shape.append(words);
                case Piece.Values values -> shape.append(VALUES);
            }
        }
        return shape.toString();
    }

    /** The values, each for every size or one for all. */
    List<Piece.Values> values() {
        return paragraph.pieces().stream().filter(Piece.Values.class::isInstance).map(Piece.Values.class::cast).toList();
    }

    /** A value of a size; empty where the size has none. */
    static Optional<String> of(Piece.Values values, int size) {
        return values.each().get(values.each().size() == 1 ? 0 : size);
    }

    /** What leads to the piece at this place in one size: the word before it, and the blank if one follows that. */
    String lead(int piece, int size, String dash) {
        String before = text(0, piece, size, dash);
        return before.substring(before.stripTrailing().lastIndexOf(' ') + 1);
    }

    /** What follows the piece at this place in one size: the word after it, and the blank if one stands before that. */
    String trail(int piece, int size, String dash) {
        String after = text(piece + 1, paragraph.pieces().size(), size, dash);
        int word = after.length() - after.stripLeading().length();
        int end = after.indexOf(' ', word);
        return end < 0 ? after : after.substring(0, end);
    }

    private String text(int from, int to, int size, String dash) {
        StringBuilder text = new StringBuilder();
        for (Piece piece : paragraph.pieces().subList(from, to)) {
            text.append(switch (piece) {
                case Piece.Words(String words) -> words;
                case Piece.Values values -> of(values, size).orElse(dash);
            });
        }
        return text.toString();
    }
}
