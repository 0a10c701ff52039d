package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.EASE_REACHED;
import static turnheel.engine.design.Catalogue.FINISHED_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.FOOT_IDEAL;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.Design;
import turnheel.engine.design.LegCount;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Size;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.term.Key;

/**
 * What a design asks of the count solver: its sizes, as far as they are measured, and what each wishes for.
 *
 * @param sheets the sizes that can be counted
 * @param sizes what they wish for, in the same order
 * @param basis the keys that the wishes were made from
 */
record CountWishes(RuleBook rules, List<SizeSheet> sheets, List<SizeWish> sizes, List<Key> basis) {

    CountWishes {
        sheets = List.copyOf(sheets);
        sizes = List.copyOf(sizes);
        basis = List.copyOf(basis);
    }

    static CountWishes of(Design design) {
        RuleBook rules = RuleBook.of(design);
        return of(design, rules, design.sizes().stream().map(size -> new SizeSheet(rules, size)).toList());
    }

    static CountWishes of(Design design, RuleBook rules, List<SizeSheet> sheets) {
        List<Parameter> basis = Stream.concat(Stream.of(FOOT_IDEAL), ToeRules.needsBasis(design).stream()).toList();
        List<SizeSheet> measured = sheets.stream()
                .filter(sheet -> basis.stream().allMatch(parameter -> sheet.value(parameter).isPresent())).toList();
        return new CountWishes(rules, measured, measured.stream().map(sheet -> wish(design, sheet)).toList(),
                basis.stream().map(Parameter::key).toList());
    }

    private static SizeWish wish(Design design, SizeSheet sheet) {
        SizeWish wish = SizeWish.of(sheet.size().label(), sheet.value(FOOT_IDEAL).orElseThrow(), needs(design, sheet));
        return sheet.override(FOOT_STITCHES).isPresent()
                ? wish.fixedAt((int) sheet.override(FOOT_STITCHES).getAsDouble()) : wish;
    }

    private static List<Need> needs(Design design, SizeSheet sheet) {
        List<Need> needs = new ArrayList<>(FootRules.needs(design));
        needs.addAll(ToeRules.needs(design, parameter -> (int) Math.rint(sheet.value(parameter).orElseThrow())));
        if (sheet.override(LEG_STITCHES).isEmpty()) {
            needs.addAll(LegRules.needs(design));
            if (cuffJoinsTheFootsCount(design)) {
                needs.addAll(CuffRules.needs(design));
            }
        }
        // the order in which they are told, and in which they are given up last where they exclude each other
        needs.sort(Comparator.comparing(Need::kind));
        return needs;
    }

    /** A leg with a count of its own meets the rib by itself, a calf leg at its top. */
    private static boolean cuffJoinsTheFootsCount(Design design) {
        boolean straight = switch (design.leg()) {
            case StraightLeg leg -> true;
            case CalfLeg leg -> false;
        };
        return straight && design.leg().count() == LegCount.AS_FOOT;
    }

    /** The same sheets with other wishes. */
    CountWishes with(UnaryOperator<SizeWish> change) {
        return new CountWishes(rules, sheets, sizes.stream().map(change).toList(), basis);
    }

    /** What these counts cost together. */
    Cost cost(List<Integer> counts) {
        Cost cost = Cost.NONE;
        for (int i = 0; i < counts.size(); i++) {
            cost = cost.plus(counts.get(i), sizes.get(i).ideal());
        }
        return cost;
    }

    /** How every size sits with these counts, whatever the designer set for it. */
    List<SizeFit> fits(List<Integer> counts) {
        return IntStream.range(0, counts.size()).mapToObj(i -> fit(i, counts.get(i))).toList();
    }

    /** How one of the sizes sits with a count. */
    SizeFit fit(int index, int count) {
        Size size = sheets.get(index).size();
        Map<Key, Quantity> overrides = new LinkedHashMap<>(size.overrides());
        overrides.remove(FOOT_STITCHES.key());
        SizeSheet sheet = new SizeSheet(rules, new Size(size.id(), size.label(), size.inputs(), overrides));
        sheet.choose(FOOT_STITCHES, count, reason(sizes.get(index)));
        return new SizeFit(size.label(), count, sheet.value(FINISHED_CIRCUMFERENCE).orElseThrow(),
                sheet.value(EASE_REACHED).orElseThrow());
    }

    /** Why a size has the count that was picked for it. */
    Reason.Chosen reason(SizeWish size) {
        return new Reason.Chosen(size.ideal(), size.least(), size.most(), size.needs(), basis);
    }
}
