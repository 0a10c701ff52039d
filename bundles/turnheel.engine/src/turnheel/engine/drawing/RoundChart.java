package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import turnheel.engine.drawing.ChartRow.Span;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/**
 * Charts rounds: rounds of fewer stitches are filled up with squares that stand for no stitch, on the side on which
 * they are narrower.
 */
final class RoundChart {

    /** What every round consists of: stitches before the repeats, the number of repeats, stitches after them. */
    private record Division(int before, int times, int after) {
    }

    private final List<List<Step>> rounds;
    private final int firstNumber;
    private final Optional<Division> division;

    RoundChart(List<List<Step>> rounds, int firstNumber) {
        if (rounds.isEmpty()) {
            throw new IllegalArgumentException("a chart needs a round");
        }
        this.rounds = rounds.stream().map(Runs::joined).toList();
        this.firstNumber = firstNumber;
        this.division = division(this.rounds);
    }

    /** The one division of all rounds, where they have one. */
    private static Optional<Division> division(List<List<Step>> rounds) {
        Set<Division> found = rounds.stream().flatMap(round -> divisions(round).stream()).collect(Collectors.toSet());
        return found.size() == 1 ? found.stream().findFirst()
                .filter(division -> rounds.stream().allMatch(round -> fits(round, division))) : Optional.empty();
    }

    private static List<Division> divisions(List<Step> round) {
        List<Division> divisions = new ArrayList<>();
        for (int i = 0; i < round.size(); i++) {
            if (round.get(i) instanceof Step.Repeat repeat) {
                divisions.add(new Division(takes(round.subList(0, i)), repeat.times(),
                        takes(round.subList(i + 1, round.size()))));
            }
        }
        return divisions;
    }

    private static int takes(List<Step> steps) {
        return steps.stream().mapToInt(Step::takes).sum();
    }

    private static boolean fits(List<Step> round, Division division) {
        int rest = takes(round) - division.before() - division.after();
        return round.stream().anyMatch(Step.Repeat.class::isInstance)
                || round.size() == 1 && round.getFirst().takes() == round.getFirst().leaves()
                        && rest > 0 && rest % division.times() == 0;
    }

    Chart chart() {
        List<ChartRow> narrow = new ArrayList<>();
        List<Integer> rights = new ArrayList<>();
        int right = 0;
        for (List<Step> round : rounds) {
            ChartRow row = row(round, firstNumber + narrow.size());
            if (!narrow.isEmpty()) {
                right -= growthOnTheRight(row.squares());
            }
            narrow.add(row);
            rights.add(right);
        }
        int rightmost = Collections.min(rights);
        int width = 0;
        for (int i = 0; i < narrow.size(); i++) {
            width = Math.max(width, rights.get(i) - rightmost + narrow.get(i).width());
        }
        List<ChartRow> rows = new ArrayList<>();
        for (int i = 0; i < narrow.size(); i++) {
            rows.add(padded(narrow.get(i), rights.get(i) - rightmost, width));
        }
        return new Chart(rows, division.map(Division::times).orElse(1));
    }

    private ChartRow row(List<Step> round, int number) {
        if (division.isEmpty()) {
            return new ChartRow(number, ChartSide.ROUND, squares(round), Optional.empty());
        }
        Division divided = division.get();
        List<Step> before = new ArrayList<>();
        List<Step> section = new ArrayList<>();
        List<Step> after = new ArrayList<>();
        for (Step step : round) {
            switch (step) {
                case Step.Repeat(var repeated, var times) -> section.addAll(repeated);
                case Step.Work(var stitch, var count) when round.size() == 1 -> {
                    int rest = count * stitch.takes() - divided.before() - divided.after();
                    add(before, stitch, divided.before());
                    add(section, stitch, rest / divided.times());
                    add(after, stitch, divided.after());
                }
                case Step.Work work -> (section.isEmpty() ? before : after).add(work);
            }
        }
        List<Square> squares = new ArrayList<>(squares(before));
        Span span = new Span(squares.size(), squares(section).size());
        squares.addAll(squares(section));
        squares.addAll(squares(after));
        return new ChartRow(number, ChartSide.ROUND, squares, Optional.of(span));
    }

    private static void add(List<Step> steps, Stitch stitch, int loops) {
        if (loops > 0) {
            steps.add(new Step.Work(stitch, loops / stitch.takes()));
        }
    }

    /** A square for each stitch, and one beside it for each further loop that it makes. */
    private static List<Square> squares(List<Step> steps) {
        List<Square> squares = new ArrayList<>();
        for (Stitch stitch : Runs.unrolled(steps)) {
            if (stitch == Stitch.TURN) {
                squares.add(new Square.TurnEdge());
            } else {
                squares.add(new Square.Worked(stitch));
                squares.addAll(Collections.nCopies(Math.max(0, stitch.leaves() - 1), new Square.NoStitch()));
            }
        }
        return squares;
    }

    /** By how many stitches the round is wider on the right than the one before; the rest is on the left. */
    private static int growthOnTheRight(List<Square> squares) {
        int all = 0;
        int onTheRight = 0;
        for (int i = 0; i < squares.size(); i++) {
            if (squares.get(i) instanceof Square.Worked(var stitch) && stitch.leaves() > 0) {
                int grows = stitch.leaves() - stitch.takes();
                all += grows;
                boolean inTheMiddle = 2 * i + 1 == squares.size();
                onTheRight += inTheMiddle ? grows / 2 : 2 * i + 1 < squares.size() ? grows : 0;
            }
        }
        // changes that make up for each other, as in lace, leave the edges where they are
        return all > 0 ? Math.clamp(onTheRight, 0, all) : Math.clamp(onTheRight, all, 0);
    }

    private static ChartRow padded(ChartRow row, int right, int width) {
        List<Square> squares = new ArrayList<>(Collections.nCopies(right, new Square.NoStitch()));
        squares.addAll(row.squares());
        squares.addAll(Collections.nCopies(width - right - row.width(), new Square.NoStitch()));
        return new ChartRow(row.number(), row.side(), squares,
                row.repeat().map(span -> new Span(span.from() + right, span.squares())));
    }
}
