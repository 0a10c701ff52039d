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

    /** The word that stands right before the piece at this place. */
    String lead(int piece) {
        String before = words(piece - 1).stripTrailing();
        return before.substring(before.lastIndexOf(' ') + 1);
    }

    /** The word that stands right after the piece at this place. */
    String trail(int piece) {
        String after = words(piece + 1).stripLeading();
        int end = after.indexOf(' ');
        return end < 0 ? after : after.substring(0, end);
    }

    private String words(int piece) {
        List<Piece> pieces = paragraph.pieces();
        return piece >= 0 && piece < pieces.size() && pieces.get(piece) instanceof Piece.Words(String words) ? words : "";
    }
}
