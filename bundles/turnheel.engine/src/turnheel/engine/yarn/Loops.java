package turnheel.engine.yarn;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.grading.Reason;
import turnheel.engine.grading.YarnPlan;
import turnheel.engine.shaping.PartRounds;
import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.Rounds;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;
import turnheel.engine.term.Key;

/**
 * The stitches of one sock, counted from its rounds.
 *
 * @param times how often each stitch is worked, by parts in the order of knitting
 * @param keys the counts that the rounds were made from
 */
record Loops(Map<Part, Map<Stitch, Long>> times, List<Key> keys) {

    /** The stitches of a size; empty when some part has no rounds because its numbers do not work out. */
    static Optional<Loops> of(Graded graded, GradedSize size) {
        List<PartRounds> parts = Rounds.of(graded, size);
        if (parts.stream().anyMatch(part -> isMissing(part, size))) {
            return Optional.empty();
        }
        Map<Part, Map<Stitch, Long>> times = new LinkedHashMap<>();
        for (PartRounds part : parts) {
            Map<Stitch, Long> ofPart = times.computeIfAbsent(part.part(), first -> new EnumMap<>(Stitch.class));
            part.rounds().forEach(round -> count(round.steps(), 1, ofPart));
        }
        List<Key> keys = size.cells().values().stream().filter(Loops::makesRounds).map(Cell::key).toList();
        return Optional.of(new Loops(times, keys));
    }

    /** A foot or a leg may have no rounds at all and yet be right. */
    private static boolean isMissing(PartRounds part, GradedSize size) {
        if (!part.rounds().isEmpty()) {
            return false;
        }
        return switch (part.part()) {
            case FOOT -> !isNone(size, Catalogue.FOOT_ROUNDS);
            case LEG -> !isNone(size, Catalogue.LEG_ROUNDS);
            case GAUGE, BODY, FIT, TOE, HEEL, CUFF, YARN, OWN -> true;
        };
    }

    private static boolean isNone(GradedSize size, Parameter rounds) {
        return size.cell(rounds).map(cell -> cell.value() == 0).orElse(false);
    }

    private static boolean makesRounds(Cell cell) {
        Part part = cell.parameter().part();
        return cell.parameter().unit().isWhole() && switch (part) {
            case TOE, FOOT, HEEL, LEG, CUFF -> true;
            case GAUGE, BODY, FIT, YARN, OWN -> false;
        };
    }

    private static void count(List<Step> steps, long times, Map<Stitch, Long> counted) {
        for (Step step : steps) {
            switch (step) {
                case Step.Work(var stitch, var count) -> counted.merge(stitch, times * count, Long::sum);
                case Step.Repeat(var repeated, var again) -> count(repeated, times * again, counted);
            }
        }
    }

    /** The yarn that a round takes, in plain loops. */
    static double plainLoops(Round round) {
        Map<Stitch, Long> counted = new EnumMap<>(Stitch.class);
        count(round.steps(), 1, counted);
        return weighed(counted, Loops::yarnOf, List.of()).sum();
    }

    /** The yarn that the rounds of a part take, in plain loops. */
    static double plainLoops(PartRounds part) {
        return part.rounds().stream().mapToDouble(Loops::plainLoops).sum();
    }

    /** The counted rows of the yarn; those of the parts only where the pattern has them. */
    Map<Parameter, Reason.Counted> rows(YarnPlan plan) {
        Map<Stitch, Long> all = new EnumMap<>(Stitch.class);
        times.values().forEach(ofPart -> ofPart.forEach((stitch, count) -> all.merge(stitch, count, Long::sum)));
        Map<Parameter, Reason.Counted> rows = new LinkedHashMap<>();
        rows.put(Catalogue.YARN_LOOPS, weighed(all, Loops::oneOf, keys));
        rows.put(Catalogue.YARN_PLAIN_LOOPS, weighed(all, Loops::yarnOf, keys));
        if (plan.needsParts()) {
            times.forEach((part, ofPart) -> rows.put(YarnPlan.loopsOf(part), weighed(ofPart, Loops::yarnOf, keys)));
        }
        return rows;
    }

    /** The yarn in each part, in plain loops, under the keys of the rows that count the parts. */
    Map<Key, Double> ofParts() {
        Map<Key, Double> loops = new LinkedHashMap<>();
        times.forEach((part, ofPart) ->
                loops.put(YarnPlan.loopsOf(part).key(), weighed(ofPart, Loops::yarnOf, List.of()).sum()));
        return loops;
    }

    private static Reason.Counted weighed(Map<Stitch, Long> times, ToDoubleFunction<Stitch> each, List<Key> keys) {
        Map<Stitch, Reason.Counted.Share> shares = new LinkedHashMap<>();
        times.forEach((stitch, count) ->
                shares.put(stitch, new Reason.Counted.Share(count, each.applyAsDouble(stitch))));
        return new Reason.Counted(shares, keys);
    }

    /** To turn the work is no stitch. */
    private static double oneOf(Stitch stitch) {
        return stitch == Stitch.TURN ? 0 : 1;
    }

    private static double yarnOf(Stitch stitch) {
        return YarnUse.of(stitch).plainLoops();
    }
}
