package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_STITCHES;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.grading.CountAnswer.Conflict;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.term.Notation;

/** Grades a design: all sizes, all numbers, in one pure function. */
public final class Grader {

    private final Design design;
    private final RuleBook rules;
    private final List<Query> queries = new ArrayList<>();

    private Grader(Design design) {
        this.design = design;
        this.rules = RuleBook.of(design);
    }

    /**
     * The graded pattern. The same design gives the same result; what does not work out is a query, never an exception.
     */
    public static Graded grade(Design design) {
        return new Grader(design).grade();
    }

    private Graded grade() {
        List<SizeSheet> sheets = design.sizes().stream().map(size -> new SizeSheet(rules, size)).toList();
        sheets.forEach(this::reportMissing);
        chooseCounts(sheets);
        chooseForParts(sheets);
        List<GradedSize> sizes = sheets.stream().map(SizeSheet::graded).toList();
        sheets.forEach(sheet -> sheet.undefined().forEach(parameter ->
            queries.add(new Query(Check.UNDEFINED, parameter.key(), List.of(sheet.size().label()), "", ""))));
        return new Graded(design, rules, sizes, queries);
    }

    /** The one measurement without default that something other than a check of comfort needs. */
    private void reportMissing(SizeSheet sheet) {
        if (sheet.value(Catalogue.FOOT_LENGTH).isEmpty()) {
            queries.add(new Query(Check.MEASUREMENT_MISSING, Catalogue.FOOT_LENGTH.key(),
                    List.of(sheet.size().label()), "", ""));
        }
    }

    private void chooseCounts(List<SizeSheet> sheets) {
        CountWishes wishes = CountWishes.of(design, rules, sheets);
        CountAnswer answer = CountSolver.solve(wishes.sizes());
        if (answer instanceof CountAnswer.Unsolvable unsolvable) {
            unsolvable.conflicts().forEach(this::report);
        }
        for (int i = 0; i < wishes.sizes().size(); i++) {
            SizeWish wish = wishes.sizes().get(i);
            int count = answer.perSize().get(i);
            if (wish.fixed().isPresent()) {
                reportBroken(wish, count);
            }
            // beside an override stands what the size would take alone
            wishes.sheets().get(i).choose(FOOT_STITCHES, wish.fixed().isPresent() ? wish.free().alone() : count,
                    wishes.reason(wish));
        }
    }

    /** What a part picks by comparison once the feet have their counts. */
    private void chooseForParts(List<SizeSheet> sheets) {
        switch (design.toe()) {
            case StarToe toe -> StarToeChoice.choose(sheets, toe.sectionStep(design.direction()));
            case RoundToe toe -> { }
            case WedgeToe toe -> { }
            case ShortRowToe toe -> { }
            case AsymmetricToe toe -> { }
        }
    }

    private void report(Conflict conflict) {
        queries.add(switch (conflict) {
            case Conflict.Excluding(var sizes, var needs) ->
                new Query(Check.NEEDS_EXCLUDE, FOOT_STITCHES.key(), sizes, NeedWords.of(needs), "");
            case Conflict.OutOfReach(var size, var least, var most, var nearest) ->
                new Query(Check.COUNTS_OUT_OF_REACH, FOOT_STITCHES.key(), List.of(size),
                        oneDecimal(least) + "–" + oneDecimal(most), Notation.number(nearest));
            case Conflict.Crowded(var sizes) -> new Query(Check.COUNTS_CLASH, FOOT_STITCHES.key(), sizes, "", "");
        });
    }

    private static String oneDecimal(double stitches) {
        return Notation.number(Math.rint(stitches * 10) / 10);
    }

    private void reportBroken(SizeWish wish, int count) {
        List<Need> broken = wish.needs().stream().filter(need -> !need.isMetBy(count)).toList();
        if (!broken.isEmpty()) {
            String needed = wish.lattice().isEmpty() ? NeedWords.of(broken)
                    : NeedWords.of(wish.lattice(), wish.fewest());
            queries.add(new Query(Check.OVERRIDE_BREAKS, FOOT_STITCHES.key(), List.of(wish.label()), needed,
                    Notation.number(count)));
        }
    }
}
