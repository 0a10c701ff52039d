package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.TOE_CAST_ON;
import static turnheel.engine.design.Catalogue.TOE_POINTS;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import turnheel.engine.design.Count;
import turnheel.engine.design.Design;
import turnheel.engine.design.LegCount;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.grading.Relaxation.Change;
import turnheel.engine.grading.Relaxation.OwnCount;

/**
 * Ways to make counts fit: each is tried on the design and graded again. Where there are no counts a way is one that
 * gives some; where there are, one that gives counts nearer to their ideals without touching a number that the designer
 * set.
 */
public final class Relaxations {

    /** Wider windows that are tried, in per cent of the ideal; beyond these a sock fits another foot. */
    private static final int[] WIDER_PERCENT = {12, 16, 20, 25};
    /** The same for all sizes together: a way that leads further off than this is none. */
    private static final double FURTHEST_PERCENT = 25;
    private static final int FEWEST_LINES = 2;
    private static final int MOST_LINES = 12;
    /** More ways than these help nobody to decide. */
    private static final int MOST_WAYS = 8;

    private final Design design;
    private final CountWishes wishes;
    private final CountAnswer answer;

    /** A changed design and the counts that it has; not graded yet, since most ways are not shown. */
    private record Way(List<Change> changes, Design design, CountWishes wishes, List<Integer> counts) {

        Cost cost() {
            return wishes.cost(counts);
        }

        double deviationPercent() {
            return 100 * Math.sqrt(cost().rounded() / counts.size());
        }

        Relaxation graded() {
            return new Relaxation(changes, Grader.grade(design), wishes.fits(counts), deviationPercent());
        }
    }

    private Relaxations(Design design) {
        this.design = design;
        this.wishes = CountWishes.of(design);
        this.answer = CountSolver.solve(wishes.sizes());
    }

    /**
     * The ways that help, those with the least deviation first, eight at most. Where no single change is enough, pairs
     * of changes. None when all is well as it is, or when nothing that may be given up helps.
     */
    public static List<Relaxation> of(Graded graded) {
        return new Relaxations(graded.design()).found();
    }

    private List<Relaxation> found() {
        List<Change> changes = changes();
        List<Way> single = nearestLines(changes.stream().flatMap(change -> tried(List.of(change)).stream()).toList());
        List<Way> ways = single.isEmpty() && !isSolved() ? pairs(changes) : single;
        // the sort keeps the order of the changes where the cost is the same
        return ways.stream().sorted(Comparator.comparing(Way::cost)).limit(MOST_WAYS).map(Way::graded).toList();
    }

    private boolean isSolved() {
        return switch (answer) {
            case CountAnswer.Counts counts -> true;
            case CountAnswer.Unsolvable unsolvable -> false;
        };
    }

    /** What could be given up, the least change of the sock first. */
    private List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        changes.add(new Change.CuffAdjusts());
        design.stitchPatterns().stream().filter(pattern -> pattern.fit() == StitchPattern.Fit.WHOLE_REPEATS)
                .forEach(pattern -> changes.addAll(changes(pattern)));
        if (design.leg().count() == LegCount.AS_FOOT) {
            changes.add(new Change.LegFromAnkle());
        }
        if (design.toe() instanceof RoundToe toe) {
            IntStream.rangeClosed(FEWEST_LINES, MOST_LINES).filter(lines -> lines != toe.lines()).boxed()
                    .sorted(Comparator.comparingInt(lines -> Math.abs(lines - toe.lines())))
                    .forEach(lines -> changes.add(new Change.ToeLines(toe.lines(), lines)));
        }
        if (answer instanceof CountAnswer.Unsolvable unsolvable) {
            changes.addAll(ownNumbers(unsolvable.sizes()));
            wider().ifPresent(changes::add);
        }
        return changes;
    }

    private static List<Change> changes(StitchPattern pattern) {
        List<Change> changes = new ArrayList<>();
        int edge = pattern.edge();
        if (pattern.zone() != Zone.LEG) {
            // an edge as wide as a repeat would be one more repeat
            IntStream.of(0, edge - 1, edge + 1).distinct()
                    .filter(other -> other >= 0 && other != edge && other < pattern.repeat())
                    .forEach(other -> changes.add(new Change.Edge(pattern.zone(), edge, other)));
        }
        changes.add(new Change.Panel(pattern.zone()));
        return changes;
    }

    /** The designer's own numbers in sizes that are in a conflict. */
    private List<Change> ownNumbers(List<String> sizes) {
        List<Change> changes = new ArrayList<>();
        for (Parameter parameter : List.of(FOOT_STITCHES, TOE_POINTS, TOE_CAST_ON)) {
            List<String> own = sizes.stream()
                    .filter(label -> design.size(label).overrides().containsKey(parameter.key())).toList();
            if (!own.isEmpty()) {
                changes.add(new Change.OwnNumber(parameter, own));
            }
        }
        return changes;
    }

    /** The narrowest of the wider windows that has counts; those outside the usual window become the sizes' own. */
    private Optional<Change> wider() {
        for (int percent : WIDER_PERCENT) {
            List<SizeWish> wider = wishes.sizes().stream().map(size -> size.within(percent / 100.0)).toList();
            if (CountSolver.solve(wider) instanceof CountAnswer.Counts(var counts)) {
                List<OwnCount> own = IntStream.range(0, counts.size())
                        .filter(i -> !wishes.sizes().get(i).isInWindow(counts.get(i)))
                        .filter(i -> wishes.sizes().get(i).fixed().isEmpty())
                        .mapToObj(i -> new OwnCount(wishes.sizes().get(i).label(), new Count(counts.get(i)))).toList();
                boolean canBeSet = own.stream().allMatch(count -> count.count().value() >= FOOT_STITCHES.least()
                        && count.count().value() <= FOOT_STITCHES.most());
                return canBeSet ? Optional.of(new Change.Window(percent, own)) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    private List<Way> pairs(List<Change> changes) {
        List<Way> pairs = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            List<Way> withThis = new ArrayList<>();
            for (Change other : changes.subList(i + 1, changes.size())) {
                if (!concernTheSame(changes.get(i), other)) {
                    tried(List.of(changes.get(i), other)).ifPresent(withThis::add);
                }
            }
            pairs.addAll(nearestLines(withThis));
        }
        return pairs;
    }

    private static boolean concernTheSame(Change one, Change other) {
        Optional<Zone> zone = zone(one);
        return zone.isPresent() && zone.equals(zone(other))
                || one instanceof Change.ToeLines && other instanceof Change.ToeLines;
    }

    private static Optional<Zone> zone(Change change) {
        return switch (change) {
            case Change.Edge edge -> Optional.of(edge.zone());
            case Change.Panel panel -> Optional.of(panel.zone());
            case Change.CuffAdjusts adjusts -> Optional.empty();
            case Change.LegFromAnkle ankle -> Optional.empty();
            case Change.ToeLines lines -> Optional.empty();
            case Change.OwnNumber own -> Optional.empty();
            case Change.Window window -> Optional.empty();
        };
    }

    /** Of the ways that differ in the number of toe lines only the one nearest to the present number. */
    private static List<Way> nearestLines(List<Way> ways) {
        Optional<Way> nearest = ways.stream().filter(Relaxations::changesLines).findFirst();
        return ways.stream().filter(way -> !changesLines(way) || nearest.filter(way::equals).isPresent()).toList();
    }

    private static boolean changesLines(Way way) {
        return way.changes().stream().anyMatch(Change.ToeLines.class::isInstance);
    }

    /** The design with these changes, where that helps. */
    private Optional<Way> tried(List<Change> changes) {
        Design changed = design;
        for (Change change : changes) {
            changed = Relaxed.with(changed, change);
        }
        CountWishes relaxed = CountWishes.of(changed);
        return CountSolver.solve(relaxed.sizes()) instanceof CountAnswer.Counts(var counts)
                ? Optional.of(new Way(changes, changed, relaxed, counts)).filter(this::helps) : Optional.empty();
    }

    private boolean helps(Way way) {
        boolean isSound = way.deviationPercent() <= FURTHEST_PERCENT
                && brokenByOwn(way.wishes()) <= brokenByOwn(wishes);
        return isSound && switch (answer) {
            case CountAnswer.Unsolvable unsolvable -> true;
            case CountAnswer.Counts present -> way.cost().compareTo(wishes.cost(present.perSize())) < 0;
        };
    }

    /** How many of the designer's own counts do not meet the needs: what breaks another of them is no way out. */
    private static long brokenByOwn(CountWishes wishes) {
        return wishes.sizes().stream().filter(size -> size.fixed().isPresent())
                .filter(size -> !size.needs().stream().allMatch(need -> need.isMetBy(size.fixed().getAsInt()))).count();
    }
}
