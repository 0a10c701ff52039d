package turnheel.engine.checks;

import static turnheel.engine.design.Catalogue.FOOT_EVEN_ROUNDS;
import static turnheel.engine.design.Catalogue.FOOT_ROUNDS;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.HEEL_EACH_SIDE;
import static turnheel.engine.design.Catalogue.LEG_EVEN_ROUNDS;
import static turnheel.engine.design.Catalogue.LEG_ROUNDS;
import static turnheel.engine.design.Catalogue.TOE_ALTERNATE;
import static turnheel.engine.design.Catalogue.TOE_EVERY_ROUND;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import turnheel.engine.design.Parameter;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.grading.Source;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.term.Key;

/** What holds for every count: it is whole and not below zero. */
final class NumberChecks {

    private static final double TOLERANCE = 1e-6;
    /** Below zero these say that a length is too short or a turning point out of place, in better words elsewhere. */
    private static final Set<Parameter> SAID_ELSEWHERE = Set.of(FOOT_ROUNDS, FOOT_EVEN_ROUNDS, LEG_ROUNDS,
            LEG_EVEN_ROUNDS, TOE_EVERY_ROUND, TOE_ALTERNATE, HEEL_EACH_SIDE);

    private static final Set<Check> BROKEN_FOOT =
            EnumSet.of(Check.NEEDS_EXCLUDE, Check.COUNTS_OUT_OF_REACH, Check.OVERRIDE_BREAKS);

    private final GradedSize size;
    private final boolean footCountIsReported;
    private final Findings findings;
    private final Set<Set<Key>> reported = new HashSet<>();

    /** @param known what was found before; a count of the foot that it is about is not asked about again */
    NumberChecks(GradedSize size, List<Query> known) {
        this.size = size;
        this.footCountIsReported = known.stream()
                .anyMatch(query -> BROKEN_FOOT.contains(query.check()) && query.key().equals(FOOT_STITCHES.key())
                        && query.sizes().contains(size.label()));
        this.findings = new Findings(size.label());
    }

    List<Query> check() {
        size.cells().values().stream().filter(cell -> cell.parameter().unit().isWhole()).forEach(this::check);
        return findings.queries();
    }

    private void check(Cell cell) {
        if (!isWhole(cell.value())) {
            if (followsFromSoundNumbers(cell) && isNewCause(cell)) {
                findings.add(Check.NOT_WHOLE, cell.parameter(), "", cell.value());
            }
        } else if (cell.value() < 0 && !SAID_ELSEWHERE.contains(cell.parameter()) && followsFromSoundNumbers(cell)) {
            findings.add(Check.NEGATIVE, cell.parameter(), "", cell.value());
        }
    }

    /** One slip is one query: a number that only passes on a broken one is not reported again. */
    private boolean followsFromSoundNumbers(Cell cell) {
        for (Key key : cell.reason().basis()) {
            Cell basis = size.cell(key).orElseThrow();
            if (basis.parameter().unit().isWhole() && (!isWhole(basis.value()) || basis.value() < 0)) {
                return false;
            }
        }
        return !(footCountIsReported && leaves(cell.key()).equals(Set.of(FOOT_STITCHES.key())));
    }

    /** Several numbers that one override makes uneven are one slip. */
    private boolean isNewCause(Cell cell) {
        Set<Key> overridden = leaves(cell.key()).stream()
                .filter(key -> size.cell(key).orElseThrow().source() == Source.OVERRIDE).collect(Collectors.toSet());
        return overridden.isEmpty() || reported.add(overridden);
    }

    /** The counts and lines that somebody chose, or the solver did, and that a number comes from in the end. */
    private Set<Key> leaves(Key key) {
        Cell cell = size.cell(key).orElseThrow();
        boolean isChosen = switch (cell.source()) {
            case CHOSEN, OVERRIDE -> true;
            case INPUT, DEFAULT, PREDICTED, RULE, OWN -> false;
        };
        if (isChosen) {
            return Set.of(key);
        }
        return cell.reason().basis().stream().flatMap(basis -> leaves(basis).stream()).collect(Collectors.toSet());
    }

    private static boolean isWhole(double value) {
        return Math.abs(value - Math.rint(value)) <= TOLERANCE;
    }
}
