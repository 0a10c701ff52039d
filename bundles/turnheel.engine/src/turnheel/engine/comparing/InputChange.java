package turnheel.engine.comparing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import turnheel.engine.design.Design;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Size;
import turnheel.engine.grading.Graded;
import turnheel.engine.term.Key;

/** Something that the designer decided otherwise. */
public sealed interface InputChange {

    /** Something that holds for the whole pattern; what it was and is, both designs tell. */
    record OfPattern(Aspect aspect) implements InputChange {
    }

    /**
     * A measurement or override of a size.
     *
     * @param size its label in the version before
     * @param before empty where the default or the rule held
     * @param after empty where the default or the rule holds
     */
    record OfSize(Parameter parameter, String size, Optional<Quantity> before, Optional<Quantity> after)
            implements InputChange {
    }

    /** What a designer decides for the whole pattern. */
    enum Aspect {
        TITLE(Design::title), DIRECTION(Design::direction), STITCH_GAUGE(Design::stitchGauge),
        ROUND_GAUGE(Design::roundGauge), TOE(Design::toe), HEEL(Design::heel), LEG(Design::leg), CUFF(Design::cuff),
        STITCH_PATTERNS(Design::stitchPatterns), MATERIALS(Design::materials), LENGTHS(Design::lengths),
        OWN_ROWS(Design::ownRows);

        private final Function<Design, Object> decided;

        Aspect(Function<Design, Object> decided) {
            this.decided = decided;
        }
    }

    /** All of them, those of the pattern first, then those of each size that both versions have. */
    static List<InputChange> between(Graded before, Graded after, SizePairs sizes) {
        List<InputChange> changes = new ArrayList<>();
        for (Aspect aspect : Aspect.values()) {
            if (!aspect.decided.apply(before.design()).equals(aspect.decided.apply(after.design()))) {
                changes.add(new OfPattern(aspect));
            }
        }
        for (SizePairs.Pair pair : sizes.pairs()) {
            Size one = before.design().sizes().get(pair.before());
            Size other = after.design().sizes().get(pair.after());
            changes.addAll(between(before, one.inputs(), other.inputs(), pair.label()));
            changes.addAll(between(before, one.overrides(), other.overrides(), pair.label()));
        }
        return changes;
    }

    private static List<InputChange> between(Graded graded, Map<Key, Quantity> before, Map<Key, Quantity> after,
            String size) {
        Set<Key> keys = new LinkedHashSet<>(before.keySet());
        keys.addAll(after.keySet());
        List<InputChange> changes = new ArrayList<>();
        for (Key key : keys) {
            Optional<Quantity> one = Optional.ofNullable(before.get(key));
            Optional<Quantity> other = Optional.ofNullable(after.get(key));
            if (!one.equals(other)) {
                changes.add(new OfSize(graded.parameter(key), size, one, other));
            }
        }
        return changes;
    }
}
