package turnheel.engine.comparing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import turnheel.engine.comparing.Erratum.Place;
import turnheel.engine.writing.PatternText;
import turnheel.engine.writing.Piece;

/** Finds what reads otherwise. */
final class Errata {

    private final List<PrintedLine> before;
    private final List<PrintedLine> after;
    private final SizePairs sizes;
    private final String dash;
    private final List<Erratum> found = new ArrayList<>();

    private Errata(PatternText before, PatternText after, SizePairs sizes) {
        this.before = PrintedLine.of(before);
        this.after = PrintedLine.of(after);
        this.sizes = sizes;
        this.dash = before.style().dash();
    }

    static List<Erratum> between(PatternText before, PatternText after, SizePairs sizes) {
        Errata errata = new Errata(before, after, sizes);
        errata.find();
        return errata.found;
    }

    private void find() {
        int one = 0;
        int other = 0;
        for (Alignment.Match match : Alignment.of(before, after, sizes)) {
            passages(one, match.before(), other, match.after());
            values(before.get(match.before()), after.get(match.after()));
            one = match.before() + 1;
            other = match.after() + 1;
        }
        passages(one, before.size(), other, after.size());
    }

    /** Lines of which none is like another: those of one chapter and role answer each other in their order. */
    private void passages(int from, int to, int otherFrom, int otherTo) {
        int other = otherFrom;
        for (int one = from; one < to; one++) {
            PrintedLine line = before.get(one);
            int answer = other;
            while (answer < otherTo && !isAnswer(line, after.get(answer))) {
                answer++;
            }
            if (answer == otherTo) {
                found.add(new Erratum.Passage(place(line), Optional.of(line.text()), Optional.empty()));
                continue;
            }
            missing(other, answer, one);
            PrintedLine answering = after.get(answer);
            if (!answering.text().equals(line.text())) {
                found.add(new Erratum.Passage(place(line), Optional.of(line.text()), Optional.of(answering.text())));
            }
            other = answer + 1;
        }
        missing(other, otherTo, to);
    }

    private static boolean isAnswer(PrintedLine line, PrintedLine other) {
        return line.paragraph().role() == other.paragraph().role() && line.chapter().equals(other.chapter());
    }

    private void missing(int from, int to, int next) {
        for (int other = from; other < to; other++) {
            PrintedLine line = after.get(other);
            String previous = next == 0 ? "" : before.get(next - 1).text();
            found.add(new Erratum.Passage(new Place(line.chapter(), previous), Optional.empty(),
                    Optional.of(line.text())));
        }
    }

    private void values(PrintedLine line, PrintedLine other) {
        List<Piece> pieces = line.paragraph().pieces();
        for (int piece = 0; piece < pieces.size(); piece++) {
            if (pieces.get(piece) instanceof Piece.Values values
                    && other.paragraph().pieces().get(piece) instanceof Piece.Values others) {
                for (SizePairs.Pair pair : sizes.pairs()) {
                    String reads = PrintedLine.of(values, pair.before()).orElse(dash);
                    String shouldRead = PrintedLine.of(others, pair.after()).orElse(dash);
                    if (!reads.equals(shouldRead)) {
                        found.add(new Erratum.Value(place(line), pair.label(), line.lead(piece, pair.before(), dash),
                                reads, shouldRead, line.trail(piece, pair.before(), dash)));
                    }
                }
            }
        }
    }

    private static Place place(PrintedLine line) {
        return new Place(line.chapter(), line.text());
    }
}
