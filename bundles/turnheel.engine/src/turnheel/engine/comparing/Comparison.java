package turnheel.engine.comparing;

import java.util.List;

import turnheel.engine.grading.Graded;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.writing.Manuscripts;

/**
 * What differs between two versions of a pattern.
 *
 * @param inputs what the designer changed, parts first, then size by size
 * @param sizes which sizes are the same in both
 * @param errata what reads otherwise in print, in the order of the printed text
 */
public record Comparison(Graded before, Graded after, List<InputChange> inputs, SizePairs sizes, List<Erratum> errata) {

    public Comparison {
        inputs = List.copyOf(inputs);
        errata = List.copyOf(errata);
    }

    /** Compares two versions, both as printed in one house style. */
    public static Comparison of(Graded before, Graded after, HouseStyle style) {
        SizePairs sizes = SizePairs.of(before.design().sizes(), after.design().sizes());
        return new Comparison(before, after, InputChange.between(before, after, sizes), sizes,
                Errata.between(Manuscripts.write(before, style), Manuscripts.write(after, style), sizes));
    }

    /** Whether both read the same in print, in the same sizes. */
    public boolean readsTheSame() {
        return errata.isEmpty() && sizes.areTheSame();
    }
}
