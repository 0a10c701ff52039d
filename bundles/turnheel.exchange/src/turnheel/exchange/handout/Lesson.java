package turnheel.exchange.handout;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.Part;
import turnheel.engine.drawing.ChartedPart;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.shaping.PartRounds;
import turnheel.engine.shaping.Place;
import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.RoundFinder;
import turnheel.engine.shaping.RoundKind;
import turnheel.engine.shaping.Rounds;

/**
 * A technique as a pattern uses it.
 *
 * @param title what it is called there, in a line
 * @param keys of its words: what it is, how it is done and until when, for each kind that some size uses
 */
record Lesson(Topic topic, String title, List<String> keys) {

    Lesson {
        keys = List.copyOf(keys);
    }

    /** A round with the part that it belongs to. */
    record Worked(Part part, Round round) {

        boolean isOf(Place place) {
            return place.part() == part && place.first().equals(round);
        }
    }

    /** The chart that shows it; empty where there is nothing to chart. */
    Optional<ChartedPart> chart() {
        return switch (topic) {
            case TOE -> Optional.of(ChartedPart.TOE);
            case HEEL -> Optional.of(ChartedPart.HEEL);
            case GUSSET -> Optional.of(ChartedPart.GUSSET);
            case CAST_ON, CUFF, CLOSING -> Optional.empty();
        };
    }

    /** Its rounds in a size, in the order of knitting; none where the numbers of the size do not work out. */
    List<Worked> rounds(Graded graded, GradedSize size) {
        List<PartRounds> sock = Rounds.of(graded, size);
        Design design = graded.design();
        return switch (topic) {
            case CAST_ON -> worked(sock.getFirst()).filter(worked -> worked.round().kind() == RoundKind.CAST_ON
                    || worked.round().kind() == RoundKind.SET_UP).toList();
            case TOE -> of(Part.TOE, sock).toList();
            case HEEL -> of(Part.HEEL, sock).filter(worked -> !isGussets(design, worked.round())).toList();
            case GUSSET -> gusset(design, sock);
            case CUFF -> of(Part.CUFF, sock).toList();
            case CLOSING -> sock.stream().flatMap(Lesson::worked)
                    .filter(worked -> worked.round().kind() == RoundKind.GRAFT
                            || worked.round().kind() == RoundKind.BIND_OFF).toList();
        };
    }

    /** Its lines of the round finder of a size, without those that leave nothing to count. */
    List<Place> places(Graded graded, GradedSize size) {
        List<Worked> rounds = rounds(graded, size);
        return RoundFinder.of(Rounds.of(graded, size)).table().stream()
                .filter(place -> place.stitches() > 0)
                .filter(place -> rounds.stream().anyMatch(worked -> worked.isOf(place))).toList();
    }

    private static Stream<Worked> of(Part part, List<PartRounds> sock) {
        return sock.stream().filter(rounds -> rounds.part() == part).flatMap(Lesson::worked);
    }

    private static Stream<Worked> worked(PartRounds rounds) {
        return rounds.rounds().stream().map(round -> new Worked(rounds.part(), round));
    }

    /** Cuff-down the round that picks up along the flap ends the heel and begins the gusset. */
    private static boolean isGussets(Design design, Round round) {
        return design.heel() instanceof FlapHeel && design.direction() == Direction.CUFF_DOWN
                && round.kind() == RoundKind.PICK_UP;
    }

    /**
     * The pick-up where there is one, and the rounds of the foot from the first that is shaped to the one after the
     * last.
     */
    private static List<Worked> gusset(Design design, List<PartRounds> sock) {
        List<Worked> foot = of(Part.FOOT, sock).toList();
        int first = -1;
        int last = -1;
        for (int i = 0; i < foot.size(); i++) {
            RoundKind kind = foot.get(i).round().kind();
            if (kind == RoundKind.INCREASE || kind == RoundKind.DECREASE) {
                first = first < 0 ? i : first;
                last = i;
            }
        }
        Stream<Worked> shaped = first < 0 ? Stream.of()
                : foot.subList(first, Math.min(last + 2, foot.size())).stream();
        return Stream.concat(of(Part.HEEL, sock).filter(worked -> isGussets(design, worked.round())), shaped)
                .toList();
    }
}
