package turnheel.exchange.handout;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import turnheel.engine.shaping.RoundFinder.Slip;
import turnheel.engine.shaping.RoundKind;
import turnheel.engine.stitch.Stitch;
import turnheel.engine.writing.PlaceText;
import turnheel.exchange.document.Block;

/**
 * Slips that are usual in a technique, with how they show and how they are mended. Those that a count shows are the
 * round finder's own, in its words; how to mend an omitted yarn-over: the design's reading of the knitting. All others
 * are
 * <em>common practice</em>.
 */
enum UsualSlip {
    YARN_OVER_OMITTED(Slip.Kind.YARN_OVER_OMITTED), INCREASE_OMITTED(Slip.Kind.INCREASE_OMITTED),
    DECREASE_MISSED(Slip.Kind.DECREASE_MISSED), DECREASE_DOUBLED(Slip.Kind.DECREASE_DOUBLED), YARN_OVER_NOT_TWISTED,
    LINE_WANDERS, TURN_UNMARKED, TURN_HOLE, ROWS_LOST, FLAP_ROWS_LOST, TURN_OFF_CENTRE, PICK_UP_HOLE, PICK_UP_COUNT,
    CORNER_HOLE, CAST_ON_GAP, CAST_ON_TWISTED, CAST_ON_TIGHT, RIB_SHIFTED, FOLD_SHIFTED, BIND_OFF_TIGHT, GRAFT_LOST,
    DRAWN_HOLE;

    private final Optional<Slip.Kind> counted;

    UsualSlip() {
        this.counted = Optional.empty();
    }

    UsualSlip(Slip.Kind counted) {
        this.counted = Optional.of(counted);
    }

    /** How it shows, and how it is mended. */
    Block.Term term() {
        String mended = counted.map(kind -> PlaceText.of(kind, 1))
                .orElseGet(() -> Words.text("slip." + name() + ".mended"));
        return new Block.Term(Words.text("slip." + name()), mended);
    }

    /** Those of a technique, the most usual first. */
    static List<UsualSlip> of(Lesson lesson, List<Lesson.Worked> rounds) {
        Set<Stitch> stitches = rounds.stream().flatMap(worked -> Lessons.stitches(worked.round()))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Stitch.class)));
        Set<RoundKind> kinds = rounds.stream().map(worked -> worked.round().kind())
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(RoundKind.class)));
        List<UsualSlip> slips = new ArrayList<>();
        switch (lesson.topic()) {
            case CAST_ON -> slips.addAll(lesson.keys().contains("castOn.edge")
                    ? List.of(CAST_ON_TWISTED, CAST_ON_TIGHT) : List.of(CAST_ON_GAP));
            case TOE, GUSSET -> slips.addAll(shaped(kinds, stitches));
            case HEEL -> slips.addAll(heel(kinds, stitches));
            case CUFF -> slips.addAll(cuff(kinds, stitches));
            case CLOSING -> slips.addAll(closing(stitches));
        }
        return List.copyOf(slips);
    }

    private static List<UsualSlip> shaped(Set<RoundKind> kinds, Set<Stitch> stitches) {
        if (kinds.contains(RoundKind.ROW)) {
            return List.of(TURN_UNMARKED, TURN_HOLE, ROWS_LOST, CORNER_HOLE);
        }
        List<UsualSlip> slips = new ArrayList<>();
        if (stitches.contains(Stitch.PICK_UP_AND_KNIT)) {
            slips.addAll(List.of(PICK_UP_HOLE, PICK_UP_COUNT));
        }
        if (kinds.contains(RoundKind.INCREASE)) {
            boolean yarnOvers = stitches.contains(Stitch.YARN_OVER);
            slips.addAll(yarnOvers ? List.of(YARN_OVER_OMITTED, YARN_OVER_NOT_TWISTED) : List.of(INCREASE_OMITTED));
        }
        if (kinds.contains(RoundKind.DECREASE)) {
            slips.addAll(List.of(DECREASE_MISSED, DECREASE_DOUBLED));
        }
        slips.add(LINE_WANDERS);
        return slips;
    }

    private static List<UsualSlip> heel(Set<RoundKind> kinds, Set<Stitch> stitches) {
        if (kinds.contains(RoundKind.TURN)) {
            return stitches.contains(Stitch.WRAP_AND_TURN) ? List.of(TURN_UNMARKED, ROWS_LOST, FLAP_ROWS_LOST)
                    : List.of(FLAP_ROWS_LOST, TURN_OFF_CENTRE);
        }
        if (kinds.contains(RoundKind.ROW)) {
            return List.of(TURN_UNMARKED, TURN_HOLE, ROWS_LOST, CORNER_HOLE);
        }
        List<UsualSlip> slips = new ArrayList<>(List.of(CORNER_HOLE));
        slips.addAll(List.of(DECREASE_MISSED, DECREASE_DOUBLED, LINE_WANDERS));
        return slips;
    }

    private static List<UsualSlip> cuff(Set<RoundKind> kinds, Set<Stitch> stitches) {
        List<UsualSlip> slips = new ArrayList<>();
        if (kinds.contains(RoundKind.RIB)) {
            slips.add(RIB_SHIFTED);
        }
        if (stitches.contains(Stitch.SEW_DOWN) || stitches.contains(Stitch.KNIT_WITH_EDGE)) {
            slips.add(FOLD_SHIFTED);
        }
        slips.add(kinds.contains(RoundKind.BIND_OFF) ? BIND_OFF_TIGHT : CAST_ON_TIGHT);
        return slips;
    }

    private static List<UsualSlip> closing(Set<Stitch> stitches) {
        List<UsualSlip> slips = new ArrayList<>();
        if (stitches.contains(Stitch.GRAFT)) {
            slips.add(GRAFT_LOST);
        }
        if (stitches.contains(Stitch.DRAW_CLOSED)) {
            slips.add(DRAWN_HOLE);
        }
        if (stitches.contains(Stitch.BIND_OFF)) {
            slips.add(BIND_OFF_TIGHT);
        }
        if (stitches.contains(Stitch.SEW_DOWN)) {
            slips.add(FOLD_SHIFTED);
        }
        return slips;
    }
}
