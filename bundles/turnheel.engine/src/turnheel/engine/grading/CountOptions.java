package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_STITCHES;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

import turnheel.engine.design.Design;

/**
 * The counts that a designer can choose from in one size.
 *
 * @param size label of the size
 * @param ideal the unrounded count; 0 when the size is not measured yet
 * @param least lower end of the window around the ideal
 * @param most upper end of the window
 * @param options rising; none when the size is not measured yet
 */
public record CountOptions(String size, double ideal, double least, double most, List<Option> options) {

    /** How many counts are shown on each side of the ideal, at most. */
    private static final int HANDFUL = 4;
    /** Counts further than this from the ideal are of use to nobody, unless none is nearer. */
    private static final double FURTHEST = 0.25;
    /** A sock of more than twice the ideal is of use to nobody at all. */
    private static final double MOST_SHARE = 2;

    public CountOptions {
        options = List.copyOf(options);
    }

    /**
     * One count and what follows from it.
     *
     * @param fit what it means on the foot
     * @param chosen whether the size has this count now
     * @param withinWindow whether it is near enough to the ideal for the solver to pick it
     * @param broken needs that it does not meet; none unless it is the designer's own, or needs exclude each other
     * @param others what the other sizes would have if this one were fixed at the count
     * @param crowded labels of sizes that would then be without counts that suit and grow
     */
    public record Option(SizeFit fit, boolean chosen, boolean withinWindow, List<Need> broken, List<SizeFit> others,
            List<String> crowded) {
        public Option {
            broken = List.copyOf(broken);
            others = List.copyOf(others);
            crowded = List.copyOf(crowded);
        }

        /** The needs that it does not meet, a clause each, for a person. */
        public List<String> brokenInWords() {
            return broken.stream().map(NeedWords::of).toList();
        }
    }

    /**
     * The options of a size.
     *
     * @throws IllegalArgumentException when there is no size with this label; the message lists the labels
     */
    public static CountOptions of(Graded graded, String label) {
        GradedSize size = graded.size(label);
        Design design = graded.design();
        CountWishes wishes = CountWishes.of(design);
        int index = IntStream.range(0, wishes.sizes().size())
                .filter(i -> wishes.sizes().get(i).label().equals(label)).findFirst().orElse(-1);
        if (index < 0) {
            return new CountOptions(label, 0, 0, 0, List.of());
        }
        SizeWish wish = wishes.sizes().get(index);
        int chosen = (int) Math.rint(size.value(FOOT_STITCHES));
        Set<Integer> counts = around(wish);
        counts.add(chosen);
        return new CountOptions(label, wish.ideal(), wish.least(), wish.most(),
                counts.stream().map(count -> option(wishes, index, count, count == chosen)).toList());
    }

    private static Set<Integer> around(SizeWish wish) {
        SizeWish workable = wish.workable();
        Lattice lattice = workable.lattice();
        Set<Integer> counts = new TreeSet<>();
        int below = lattice.atMost(wish.ideal());
        int above = lattice.atLeast(Math.max(workable.fewest(), wish.ideal()));
        for (int i = 0; i < HANDFUL; i++) {
            // the first on each side may lie further off than the others: it may be the only one
            if (below >= workable.fewest() && (i == 0 || isNear(wish, below))) {
                counts.add(below);
            }
            if (i == 0 ? above <= MOST_SHARE * wish.ideal() : isNear(wish, above)) {
                counts.add(above);
            }
            below = lattice.atMost(below - 1.0);
            above = lattice.atLeast(above + 1.0);
        }
        return counts;
    }

    private static boolean isNear(SizeWish wish, int count) {
        return Math.abs(count - wish.ideal()) <= FURTHEST * wish.ideal();
    }

    private static Option option(CountWishes wishes, int index, int count, boolean chosen) {
        SizeWish wish = wishes.sizes().get(index);
        List<SizeWish> fixed = new ArrayList<>(wishes.sizes());
        fixed.set(index, wish.fixedAt(count));
        CountAnswer answer = CountSolver.solve(fixed);
        List<SizeFit> others = new ArrayList<>(wishes.fits(answer.perSize()));
        others.remove(index);
        List<String> crowded = switch (answer) {
            case CountAnswer.Counts counts -> List.of();
            case CountAnswer.Unsolvable unsolvable -> unsolvable.sizes();
        };
        return new Option(wishes.fit(index, count), chosen, wish.isInWindow(count),
                wish.needs().stream().filter(need -> !need.isMetBy(count)).toList(), others, crowded);
    }
}
