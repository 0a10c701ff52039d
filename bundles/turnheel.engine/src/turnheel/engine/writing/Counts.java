package turnheel.engine.writing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Gauge;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.shaping.PartRounds;
import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.RoundKind;
import turnheel.engine.shaping.Rounds;
import turnheel.engine.stitch.Step;

/** The whole numbers of a graded pattern, size by size, for those sizes of which every part can be knitted. */
final class Counts {

    private static final double TOLERANCE = 1e-6;

    private final List<GradedSize> sizes;
    private final List<List<PartRounds>> rounds;
    private final EachSize one;

    Counts(Graded graded) {
        this.sizes = graded.sizes();
        this.rounds = sizes.stream().map(size -> Rounds.of(graded, size)).toList();
        List<Optional<Integer>> knittable = new ArrayList<>();
        for (int size = 0; size < sizes.size(); size++) {
            boolean sound = isSound(sizes.get(size), rounds.get(size));
            knittable.add(sound ? Optional.of(1) : Optional.empty());
        }
        this.one = new EachSize(knittable);
    }

    /** A leg may have no rounds at all; any other part without rounds has numbers that do not work out. */
    private static boolean isSound(GradedSize size, List<PartRounds> parts) {
        boolean noLeg = size.cell(Catalogue.LEG_ROUNDS).filter(rounds -> rounds.value() == 0).isPresent();
        return parts.stream().allMatch(part -> !part.rounds().isEmpty() || part.part() == Part.LEG && noLeg);
    }

    /** The sizes that cannot be written, because the numbers of some part do not work out. */
    List<String> unsound() {
        List<String> labels = new ArrayList<>();
        for (int size = 0; size < sizes.size(); size++) {
            if (one.of(size).isEmpty()) {
                labels.add(sizes.get(size).label());
            }
        }
        return labels;
    }

    /** A number of each size; absent where the size has none or it is not whole. */
    EachSize of(Parameter parameter) {
        List<Optional<Integer>> counts = new ArrayList<>();
        for (int size = 0; size < sizes.size(); size++) {
            Optional<Double> value = sizes.get(size).cell(parameter).map(Cell::value).filter(Counts::isWhole);
            counts.add(one.of(size).isEmpty() ? Optional.empty() : value.map(whole -> (int) Math.rint(whole)));
        }
        return new EachSize(counts);
    }

    private static boolean isWhole(double value) {
        return Math.abs(value - Math.rint(value)) <= TOLERANCE;
    }

    /** A length of each size in mm, as a sum of numbers; absent where one of them is. */
    List<Optional<Double>> millimetres(Parameter... parts) {
        List<Optional<Double>> sums = new ArrayList<>();
        for (int size = 0; size < sizes.size(); size++) {
            Optional<Double> sum = one.of(size).map(count -> 0.0);
            for (Parameter part : parts) {
                Optional<Double> value = sizes.get(size).cell(part).map(Cell::value);
                sum = sum.flatMap(before -> value.map(more -> before + more));
            }
            sums.add(sum);
        }
        return sums;
    }

    /** Lengths less what so many rounds of the main fabric measure. */
    List<Optional<Double>> less(List<Optional<Double>> millimetres, EachSize rounds) {
        List<Optional<Double>> left = new ArrayList<>();
        for (int size = 0; size < sizes.size(); size++) {
            Optional<Double> gauge = sizes.get(size).cell(Catalogue.GAUGE_ROUNDS).map(Cell::value);
            Optional<Integer> fewer = rounds.of(size);
            left.add(millimetres.get(size).flatMap(length -> fewer.flatMap(count ->
                    gauge.map(over -> length - count * Gauge.SPAN_MM / over))));
        }
        return left;
    }

    /** This number in each size. */
    EachSize all(int count) {
        return one.times(count);
    }

    /**
     * Writes the round that changes a part's count by an even spread, once for all sizes that work it alike; how many
     * rounds that is in each size, 0 or 1.
     */
    EachSize spread(Passage passage, Part part, Names names) {
        Map<List<Step>, SortedSet<Integer>> alike = new LinkedHashMap<>();
        List<Optional<Integer>> changes = new ArrayList<>();
        for (int size = 0; size < sizes.size(); size++) {
            Optional<Round> spread = one.of(size).isEmpty() ? Optional.empty() : spread(size, part);
            changes.add(spread.map(round -> round.steps().stream()
                    .mapToInt(step -> step.leaves() - step.takes()).sum()));
            int its = size;
            spread.ifPresent(round -> alike.computeIfAbsent(round.steps(), steps -> new TreeSet<>()).add(its));
        }
        EachSize change = new EachSize(changes);
        alike.forEach((steps, some) -> passage.only(some).named(names.next(), change,
                StepInstructions.folded(steps).stream().map(Doing::of).toArray(Doing[]::new)));
        return all(0).with(change.map(stitches -> 1).orElse(all(0)), Integer::sum);
    }

    private Optional<Round> spread(int size, Part part) {
        return rounds.get(size).stream().filter(rounds -> rounds.part() == part)
                .flatMap(rounds -> rounds.rounds().stream())
                .filter(round -> round.number() == 0
                        && (round.kind() == RoundKind.INCREASE || round.kind() == RoundKind.DECREASE))
                .findFirst();
    }
}
