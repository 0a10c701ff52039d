package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.variables.IntVar;
import turnheel.engine.fixture.Repeatable;

/** Size lists too long to try everything, against a constraint solver that knows nothing of paths. */
class CountOptimumTest {

    private static final int LARGEST = 200;
    /** Costs become whole numbers for the other solver: a millionth is the smallest difference that it sees. */
    private static final double SCALE = 1e6;

    @Property(seed = Repeatable.SEED, tries = 120, edgeCases = EdgeCasesMode.NONE)
    void noVectorIsBetterThanTheOneFound(@ForAll("sizeLists") List<SizeWish> sizes) {
        CountAnswer answer = CountSolver.solve(sizes);
        List<List<Integer>> best = cheapest(sizes);
        if (best.isEmpty()) {
            assertInstanceOf(CountAnswer.Unsolvable.class, answer);
        } else {
            Comparator<List<Integer>> byCost = (one, other) ->
                EveryVector.compare(EveryVector.cost(sizes, one), EveryVector.cost(sizes, other));
            assertEquals(new CountAnswer.Counts(best.stream()
                    .min(byCost.thenComparing(CountOptimumTest::compare)).orElseThrow()), answer);
        }
    }

    @Provide
    Arbitrary<List<SizeWish>> sizeLists() {
        return Arbitraries
                .oneOf(SizeLists.onOneLattice(12), SizeLists.onManyLattices(9), SizeLists.withStitchPatterns(9))
                .filter(sizes -> sizes.size() > 4 && sizes.getLast().ideal() < LARGEST / 1.5);
    }

    /** Every vector whose cost is the least as far as whole millionths can tell; empty when there is none at all. */
    private static List<List<Integer>> cheapest(List<SizeWish> sizes) {
        List<List<Integer>> all = new ArrayList<>();
        int least = least(sizes);
        if (least >= 0) {
            Model model = new Model();
            IntVar[] counts = counts(model, sizes);
            // each cost was rounded by half a millionth at most, so the true least is among these
            model.arithm(total(model, sizes, counts), "<=", least + sizes.size()).post();
            while (model.getSolver().solve()) {
                all.add(Arrays.stream(counts).map(IntVar::getValue).toList());
            }
        }
        return all;
    }

    /** The least whole cost; -1 when no vector meets the needs. */
    private static int least(List<SizeWish> sizes) {
        Model model = new Model();
        IntVar total = total(model, sizes, counts(model, sizes));
        model.setObjective(Model.MINIMIZE, total);
        int least = -1;
        while (model.getSolver().solve()) {
            least = total.getValue();
        }
        return least;
    }

    private static IntVar[] counts(Model model, List<SizeWish> sizes) {
        IntVar[] counts = new IntVar[sizes.size()];
        for (int i = 0; i < counts.length; i++) {
            SizeWish size = sizes.get(i);
            IntVar count = model.intVar(size.label(), 1, LARGEST);
            counts[i] = count;
            if (size.fixed().isPresent()) {
                model.arithm(counts[i], "=", size.fixed().getAsInt()).post();
            } else {
                double window = Math.max(0.08 * size.ideal(), EveryVector.widestGap(size) / 2.0) + 1e-9;
                for (Need need : size.needs()) {
                    model.or(need.counts().stream()
                            .map(congruence -> model.mod(count, congruence.step(), congruence.residue()))
                            .toArray(Constraint[]::new)).post();
                    model.arithm(counts[i], ">=", need.fewest()).post();
                }
                model.arithm(counts[i], ">=", (int) Math.ceil(size.ideal() - window)).post();
                model.arithm(counts[i], "<=", (int) Math.floor(size.ideal() + window)).post();
            }
            if (i > 0) {
                grow(model, sizes.get(i - 1), counts[i - 1], size, counts[i]);
            }
        }
        return counts;
    }

    private static void grow(Model model, SizeWish before, IntVar countBefore, SizeWish size, IntVar count) {
        double growth = size.ideal() - before.ideal();
        boolean free = growth < 0 || before.fixed().isPresent() && size.fixed().isPresent();
        if (!free) {
            int step = Math.max(EveryVector.widestGap(before), EveryVector.widestGap(size));
            model.arithm(count, growth + 1e-9 >= step ? ">" : ">=", countBefore).post();
        }
    }

    private static IntVar total(Model model, List<SizeWish> sizes, IntVar[] counts) {
        IntVar[] costs = new IntVar[counts.length];
        for (int i = 0; i < counts.length; i++) {
            double ideal = sizes.get(i).ideal();
            int[] table = new int[LARGEST];
            for (int count = 1; count <= LARGEST; count++) {
                double deviation = Math.min(2, Math.abs((count - ideal) / ideal));
                table[count - 1] = (int) Math.round(deviation * deviation * SCALE);
            }
            costs[i] = model.intVar(0, (int) (4 * SCALE));
            model.element(costs[i], table, counts[i], 1).post();
        }
        IntVar total = model.intVar(0, (int) (4 * SCALE) * counts.length);
        model.sum(costs, "=", total).post();
        return total;
    }

    private static int compare(List<Integer> one, List<Integer> other) {
        for (int i = 0; i < one.size(); i++) {
            if (!one.get(i).equals(other.get(i))) {
                return one.get(i).compareTo(other.get(i));
            }
        }
        return 0;
    }
}
