package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import turnheel.engine.design.Part;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.RoundKind;
import turnheel.engine.shaping.Rounds;
import turnheel.engine.stitch.Step;

/** Parts of a sock whose rounds are worth a chart. */
public enum ChartedPart {
    TOE(Part.TOE), HEEL(Part.HEEL),
    /** The rounds of the foot in which a gusset narrows or widens. */
    GUSSET(Part.FOOT),
    /** The rows of the stitch pattern on the instep, over its whole panel. */
    INSTEP_PATTERN(Part.FOOT),
    /** The rows of the stitch pattern on the leg, all around; one repeat of a panel. */
    LEG_PATTERN(Part.LEG);

    private final Part part;

    ChartedPart(Part part) {
        this.part = part;
    }

    /** What it is called in a heading. */
    public String label() {
        return Words.text("chart.part." + name());
    }

    /** The chart of the numbered rounds of a size; absent where the sock has none, or they do not work out. */
    public Optional<Chart> chart(Graded graded, GradedSize size) {
        return switch (this) {
            case TOE, HEEL, GUSSET -> rounds(graded, size);
            case INSTEP_PATTERN -> PatternChart.instep(graded.design(), size);
            case LEG_PATTERN -> PatternChart.leg(graded.design(), size);
        };
    }

    private Optional<Chart> rounds(Graded graded, GradedSize size) {
        List<Round> all = Rounds.of(graded, size).stream().filter(rounds -> rounds.part() == part)
                .flatMap(rounds -> rounds.rounds().stream()).filter(round -> round.number() > 0).toList();
        List<Round> shown = this == GUSSET ? shaped(all) : all;
        if (shown.isEmpty()) {
            return Optional.empty();
        }
        List<List<Step>> steps = new ArrayList<>(shown.stream().map(Round::steps).toList());
        if (!isFlat(shown.getFirst())) {
            return Optional.of(Chart.ofRounds(steps, shown.getFirst().number()));
        }
        int gained = steps.getFirst().stream().mapToInt(step -> step.leaves() - step.takes()).sum();
        return Optional.of(Chart.ofRows(shown.getFirst().stitches() - gained, steps));
    }

    private static boolean isFlat(Round round) {
        return round.kind() == RoundKind.ROW || round.kind() == RoundKind.TURN;
    }

    /** From the first round that changes the count to the last. */
    private static List<Round> shaped(List<Round> rounds) {
        int first = -1;
        int last = -1;
        for (int i = 0; i < rounds.size(); i++) {
            RoundKind kind = rounds.get(i).kind();
            if (kind == RoundKind.INCREASE || kind == RoundKind.DECREASE) {
                first = first < 0 ? i : first;
                last = i;
            }
        }
        return first < 0 ? List.of() : rounds.subList(first, last + 1);
    }
}
