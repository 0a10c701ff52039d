package turnheel.engine.knitting;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import turnheel.engine.knitting.Layout.Paragraph;

/**
 * The gauge that a text gives.
 *
 * @param stitchMm the width of a stitch
 * @param roundMm the height of a round; NaN when it is not given
 */
record WrittenGauge(double stitchMm, double roundMm) {

    /** From the first line that gives stitches over a length. */
    static Optional<WrittenGauge> in(List<Paragraph> paragraphs, ReadingWords table) {
        for (Paragraph paragraph : paragraphs) {
            if (table.list("gauge").contains(paragraph.section().toLowerCase(Locale.ROOT))) {
                Optional<WrittenGauge> gauge = gauge(paragraph.words(), table);
                if (gauge.isPresent()) {
                    return gauge;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<WrittenGauge> gauge(List<Word> words, ReadingWords table) {
        double stitches = before(words, "sts");
        double rounds = before(words, "rnd");
        double rows = Double.isNaN(rounds) ? before(words, "row") : rounds;
        Optional<Measured> over = Measured.in(words, table).stream().filter(Measured::isLength).findFirst();
        return over.filter(length -> stitches > 0).map(length -> new WrittenGauge(length.mm(0) / stitches, length.mm(0) / rows));
    }

    private static double before(List<Word> words, String unit) {
        for (int at = 1; at < words.size(); at++) {
            if (words.get(at).is(unit) && words.get(at - 1).kind() == Word.Kind.NUMBER) {
                return words.get(at - 1).number();
            }
        }
        return Double.NaN;
    }
}
