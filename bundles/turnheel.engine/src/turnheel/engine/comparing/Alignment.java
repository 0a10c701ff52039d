package turnheel.engine.comparing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import turnheel.engine.writing.Piece;

/**
 * Which lines of two versions are the same line: as many as can be, in one order (a longest common subsequence over their
 * shapes), and of equally many the way on which most values stayed as they were.
 */
final class Alignment {

    /** More than a line can have values, so that a line more always wins. */
    private static final long LINE = 1_000_000;

    /**
     * Lines that are the same.
     *
     * @param before place in the version before, from 0
     * @param after place in the version after, from 0
     */
    record Match(int before, int after) {
    }

    private final List<PrintedLine> before;
    private final List<PrintedLine> after;
    private final SizePairs sizes;

    private Alignment(List<PrintedLine> before, List<PrintedLine> after, SizePairs sizes) {
        this.before = before;
        this.after = after;
        this.sizes = sizes;
    }

    static List<Match> of(List<PrintedLine> before, List<PrintedLine> after, SizePairs sizes) {
        return new Alignment(before, after, sizes).matches();
    }

    private List<Match> matches() {
        long[][] gained = gained();
        List<Match> matches = new ArrayList<>();
        int one = 0;
        int other = 0;
        while (one < before.size() && other < after.size()) {
            if (gained[one][other] == gained[one + 1][other]) {
                one++;
            } else if (gained[one][other] == gained[one][other + 1]) {
                other++;
            } else {
                matches.add(new Match(one, other));
                one++;
                other++;
            }
        }
        return matches;
    }

    /** What can be gained from each pair of lines on to the ends. */
    private long[][] gained() {
        List<String> shapes = before.stream().map(PrintedLine::shape).toList();
        List<String> others = after.stream().map(PrintedLine::shape).toList();
        long[][] gained = new long[before.size() + 1][after.size() + 1];
        for (int one = before.size() - 1; one >= 0; one--) {
            for (int other = after.size() - 1; other >= 0; other--) {
                long best = Math.max(gained[one + 1][other], gained[one][other + 1]);
                if (shapes.get(one).equals(others.get(other))) {
                    best = Math.max(best, gained[one + 1][other + 1] + LINE + unchanged(one, other));
                }
                gained[one][other] = best;
            }
        }
        return gained;
    }

    private long unchanged(int one, int other) {
        List<Piece.Values> values = before.get(one).values();
        List<Piece.Values> others = after.get(other).values();
        long unchanged = 0;
        for (int value = 0; value < values.size(); value++) {
            for (SizePairs.Pair pair : sizes.pairs()) {
                if (Objects.equals(PrintedLine.of(values.get(value), pair.before()),
                        PrintedLine.of(others.get(value), pair.after()))) {
                    unchanged++;
                }
            }
        }
        return unchanged;
    }
}
