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
        double stitchMm = each(words, "sts", table);
        double roundMm = each(words, "rnd", table);
        return Double.isNaN(stitchMm) ? Optional.empty()
                : Optional.of(new WrittenGauge(stitchMm, Double.isNaN(roundMm) ? each(words, "row", table) : roundMm));
    }

    /** The first length after so many of them, divided among them; NaN when there is none. */
    private static double each(List<Word> words, String what, ReadingWords table) {
        for (int at = 1; at < words.size(); at++) {
            if (words.get(at).is(what) && words.get(at - 1).kind() == Word.Kind.NUMBER) {
                double count = words.get(at - 1).number();
                return Measured.in(words.subList(at, words.size()), table).stream().filter(Measured::isLength).findFirst()
                        .map(length -> length.mm(0) / count).orElse(Double.NaN);
            }
        }
        return Double.NaN;
    }
}
