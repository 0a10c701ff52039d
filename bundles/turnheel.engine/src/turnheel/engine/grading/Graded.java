package turnheel.engine.grading;

import java.util.List;

import turnheel.engine.design.Design;
import turnheel.engine.design.Parameter;
import turnheel.engine.query.Query;
import turnheel.engine.term.Key;

/**
 * A graded pattern: every number of every size, for one state of the design. Views, exports and checks read this and
 * nothing else.
 *
 * @param queries what grading itself found; {@code checks} adds what it finds in the numbers
 */
public record Graded(Design design, RuleBook rules, List<GradedSize> sizes, List<Query> queries) {

    public Graded {
        sizes = List.copyOf(sizes);
        queries = List.copyOf(queries);
    }

    /** The rows, in the order of the catalogue, then the designer's own. */
    public List<Parameter> parameters() {
        return rules.parameters();
    }

    /**
     * The parameter of a key, be it of the catalogue or the designer's own.
     *
     * @throws IllegalArgumentException when there is none
     */
    public Parameter parameter(Key key) {
        return rules.parameter(key);
    }

    /**
     * The size with this label.
     *
     * @throws IllegalArgumentException when there is none; the message lists the labels
     */
    public GradedSize size(String label) {
        return sizes.get(design.sizes().indexOf(design.size(label)));
    }
}
