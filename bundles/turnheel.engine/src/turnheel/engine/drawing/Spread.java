package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Keeps labels from lying on each other. */
final class Spread {

    private Spread() {
    }

    /**
     * Middles near the wanted ones, in the same order, so that no two labels overlap. Labels that would are put side by
     * side about the middle of what they want.
     *
     * @param wanted in any order
     * @param heights of the labels
     */
    static List<Double> apart(List<Double> wanted, List<Double> heights) {
        List<Integer> order = IntStream.range(0, wanted.size()).boxed()
                .sorted(Comparator.comparingDouble(wanted::get)).toList();
        List<Block> blocks = new ArrayList<>();
        for (int label : order) {
            Block block = new Block(new ArrayList<>(List.of(label)), wanted.get(label), heights.get(label), 1);
            while (!blocks.isEmpty() && blocks.getLast().bottom() > block.top()) {
                block = blocks.removeLast().and(block);
            }
            blocks.add(block);
        }
        List<Double> middles = new ArrayList<>(wanted);
        for (Block block : blocks) {
            double top = block.top();
            for (int label : block.labels()) {
                middles.set(label, top + heights.get(label) / 2);
                top += heights.get(label);
            }
        }
        return middles;
    }

    /**
     * The same middles, raised as far as they must be for none to lie below a limit, nor two nearer than a distance. Whoever
     * lies high enough stays.
     */
    static List<Double> above(double limit, List<Double> middles, double distance) {
        List<Double> raised = new ArrayList<>(middles);
        double lowest = limit;
        for (int label : IntStream.range(0, middles.size()).boxed()
                .sorted(Comparator.<Integer>comparingDouble(middles::get).reversed()).toList()) {
            raised.set(label, Math.min(middles.get(label), lowest));
            lowest = raised.get(label) - distance;
        }
        return raised;
    }

    /** Labels without room between them. */
    private record Block(List<Integer> labels, double middle, double height, int count) {
        double top() {
            return middle - height / 2;
        }

        double bottom() {
            return middle + height / 2;
        }

        Block and(Block below) {
            List<Integer> all = new ArrayList<>(labels);
            all.addAll(below.labels);
            return new Block(all, (middle * count + below.middle * below.count) / (count + below.count),
                    height + below.height, count + below.count);
        }
    }
}
