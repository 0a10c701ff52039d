package turnheel.engine.writing;

import java.util.List;

import turnheel.engine.wording.HouseStyle;

/** Pieces as one text. */
final class PlainText {

    private PlainText() {
    }

    static String of(List<Piece> pieces, HouseStyle style) {
        StringBuilder text = new StringBuilder();
        for (Piece piece : pieces) {
            text.append(switch (piece) {
                case Piece.Words(String words) -> words;
                case Piece.Values values -> style.sized(values.each());
            });
        }
        return text.toString();
    }
}
