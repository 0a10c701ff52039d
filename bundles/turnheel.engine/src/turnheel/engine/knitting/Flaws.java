package turnheel.engine.knitting;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import turnheel.engine.query.Check;

/** What is known to be wrong, so that it is not told again where the same rounds are repeated. */
final class Flaws {

    /** For each line whose round goes wrong, by how many stitches each time; empty where that is not known. */
    private final Map<Integer, Optional<Integer>> lines = new HashMap<>();
    private final Set<Check> holesOfSection = new HashSet<>();
    /** What the line at hand has worked: known flaws, and lines. */
    private int expectedDifference;
    private boolean anyDifference;
    private final Set<Integer> worked = new HashSet<>();

    Flaws copy() {
        Flaws copy = new Flaws();
        copy.lines.putAll(lines);
        copy.holesOfSection.addAll(holesOfSection);
        copy.worked.addAll(worked);
        return copy;
    }

    void beginSection() {
        holesOfSection.clear();
    }

    void beginLine() {
        expectedDifference = 0;
        anyDifference = false;
        worked.clear();
    }

    /** A round told by that line is about to be worked. */
    void work(int line) {
        worked.add(line);
        Optional<Integer> flaw = lines.get(line);
        if (flaw != null) {
            anyDifference |= flaw.isEmpty();
            expectedDifference += flaw.orElse(0);
        }
    }

    /** Whether the line at hand works a round that is known to go wrong. */
    boolean isKnown() {
        return worked.stream().anyMatch(lines::containsKey);
    }

    /** Whether a stated count that differs by so many follows from what is known. */
    boolean explains(int difference) {
        return anyDifference || difference == expectedDifference && difference != 0;
    }

    /** The rounds of the line at hand go wrong by so many stitches, or nobody knows by how many. */
    void add(Optional<Integer> difference) {
        for (int line : worked) {
            lines.putIfAbsent(line, difference);
        }
    }

    /** Whether this hole is the first of its kind in the section and in the rounds at hand. */
    boolean isNew(Check hole) {
        boolean first = !isKnown() && holesOfSection.add(hole);
        add(Optional.of(0));
        return first;
    }
}
