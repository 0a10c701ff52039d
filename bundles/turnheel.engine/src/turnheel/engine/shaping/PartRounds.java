package turnheel.engine.shaping;

import java.util.List;

import turnheel.engine.design.Part;

/**
 * The rounds of one part, in the order of knitting. Empty when the part's numbers do not work out; the checks say why.
 */
public record PartRounds(Part part, List<Round> rounds) {
    public PartRounds {
        rounds = List.copyOf(rounds);
    }
}
