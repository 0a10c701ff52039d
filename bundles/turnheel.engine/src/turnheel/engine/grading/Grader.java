package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_IDEAL;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Quantity;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.term.Key;
import turnheel.engine.term.Notation;

/** Grades a design: all sizes, all numbers, in one pure function. */
public final class Grader {

    private static final Need HALVES = new Need(Need.Kind.HALVES, Congruence.multipleOf(2), 2);

    private final Design design;
    private final RuleBook rules;
    private final List<Query> queries = new ArrayList<>();

    private Grader(Design design) {
        this.design = design;
        this.rules = RuleBook.of(design);
    }

    /** The graded pattern. The same design gives the same result; what does not work out is a query, never an exception. */
    public static Graded grade(Design design) {
        return new Grader(design).grade();
    }

    private Graded grade() {
        List<SizeSheet> sheets = design.sizes().stream().map(size -> new SizeSheet(rules, size)).toList();
        sheets.forEach(this::reportMissing);
        chooseCounts(sheets);
        List<GradedSize> sizes = sheets.stream().map(SizeSheet::graded).toList();
        sheets.forEach(sheet -> sheet.undefined().forEach(
                parameter -> queries.add(new Query(Check.UNDEFINED, parameter.key(), List.of(sheet.size().label()), "", ""))));
        return new Graded(design, rules, sizes, queries);
    }

    /** A measurement without default that something other than a check of comfort needs. */
    private void reportMissing(SizeSheet sheet) {
        for (Parameter needed : List.of(Catalogue.FOOT_LENGTH, Catalogue.FOOT_CIRCUMFERENCE)) {
            if (sheet.value(needed).isEmpty()) {
                queries.add(new Query(Check.MEASUREMENT_MISSING, needed.key(), List.of(sheet.size().label()), "", ""));
            }
        }
    }

    private void chooseCounts(List<SizeSheet> sheets) {
        List<SizeSheet> solvable = sheets.stream().filter(sheet -> sheet.value(FOOT_IDEAL).isPresent()
                && ToeRules.needsBasis(design).stream().allMatch(basis -> sheet.value(basis).isPresent())).toList();
        List<SizeWish> wishes = solvable.stream().map(this::wish).toList();
        CountAnswer answer = CountSolver.solve(wishes);
        if (answer instanceof CountAnswer.Unsolvable unsolvable) {
            queries.add(new Query(Check.COUNTS_CLASH, FOOT_STITCHES.key(), unsolvable.clashing(), "", ""));
        }
        for (int i = 0; i < solvable.size(); i++) {
            SizeSheet sheet = solvable.get(i);
            SizeWish wish = wishes.get(i);
            int count = answer.perSize().get(i);
            reportBroken(wish, count);
            sheet.choose(FOOT_STITCHES, ofRule(wish, count), new Reason.Chosen(wish.ideal(), wish.ideal() - wish.reach(),
                    wish.ideal() + wish.reach(), wish.needs(), basis()));
        }
    }

    /** Beside an override stands what the size would take alone. */
    private static int ofRule(SizeWish wish, int count) {
        return wish.fixed().isEmpty() ? count
                : new SizeWish(wish.label(), wish.ideal(), wish.needs(), wish.lattice(), OptionalInt.empty()).alone();
    }

    private List<Key> basis() {
        return Stream.of(List.of(FOOT_IDEAL), ToeRules.needsBasis(design)).flatMap(Collection::stream)
                .map(Parameter::key).toList();
    }

    private SizeWish wish(SizeSheet sheet) {
        List<Need> needs = new ArrayList<>();
        needs.add(HALVES);
        needs.addAll(ToeRules.needs(design, parameter -> (int) Math.rint(sheet.value(parameter).orElseThrow())));
        if (!sheet.size().overrides().containsKey(LEG_STITCHES.key())) {
            needs.addAll(CuffRules.needs(design));
        }
        // All needs so far are multiples, which never exclude each other; edges of stitch patterns will.
        Congruence lattice = needs.stream().map(Need::counts).reduce(Congruence.multipleOf(1),
                (one, other) -> one.and(other).orElseThrow());
        Optional<Quantity> own = Optional.ofNullable(sheet.size().overrides().get(FOOT_STITCHES.key()));
        return new SizeWish(sheet.size().label(), sheet.value(FOOT_IDEAL).orElseThrow(), needs, lattice,
                own.map(quantity -> OptionalInt.of((int) quantity.inside())).orElse(OptionalInt.empty()));
    }

    private void reportBroken(SizeWish wish, int count) {
        List<Need> broken = wish.needs().stream().filter(need -> !need.isMetBy(count)).toList();
        if (!broken.isEmpty()) {
            int fewest = wish.fewest();
            String needed = NeedWords.of(wish.lattice(), fewest);
            queries.add(new Query(Check.OVERRIDE_BREAKS, FOOT_STITCHES.key(), List.of(wish.label()), needed,
                    Notation.number(count)));
        }
    }
}
