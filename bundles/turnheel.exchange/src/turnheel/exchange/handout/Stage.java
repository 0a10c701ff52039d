package turnheel.exchange.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.Part;
import turnheel.engine.shaping.PartRounds;
import turnheel.engine.shaping.Place;
import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.RoundFinder;
import turnheel.engine.shaping.RoundKind;
import turnheel.engine.shaping.Sign;

/**
 * Where a class stops and compares needles.
 *
 * @param kind what is done by then
 * @param round the last round before the stop; its stitches lie on the needle, in flat rows those of the part
 * @param sign what is seen directly under the needle
 */
record Stage(Kind kind, Part part, Round round, Sign sign) {

    /** What is done. */
    enum Kind {
        CAST_ON, CUP_OUT, CUP_BACK, CORNERS, TOE, TOE_TIP, FOOT, GUSSET, PICK_UP, TURN, FLAP, CAP, LEG, CUFF
    }

    /** What is done by then, in words. */
    String words() {
        return Words.text("stage." + kind.name());
    }

    /** The stages of a sock in one size. */
    static List<Stage> of(Design design, List<PartRounds> sock) {
        List<Place> places = RoundFinder.of(sock).table();
        List<Stage> stages = new ArrayList<>();
        for (PartRounds part : sock) {
            List<Round> rounds = part.rounds();
            for (int at = 0; at < rounds.size(); at++) {
                Optional<Kind> kind = kind(design, part, at);
                Optional<Kind> next = at + 1 == rounds.size() ? Optional.empty() : kind(design, part, at + 1);
                if (kind.isPresent() && !kind.equals(next)) {
                    Sign sign = sign(part.part(), rounds.get(at), places);
                    stages.add(new Stage(kind.get(), part.part(), rounds.get(at), sign));
                }
            }
        }
        return stages;
    }

    private static Sign sign(Part part, Round round, List<Place> places) {
        return places.stream().filter(place -> place.part() == part && place.first().kind() == round.kind()
                && place.first().number() <= round.number() && round.number() <= place.last().number()
                && place.stitches() == round.stitches()).findFirst().orElseThrow().sign();
    }

    /**
     * What a round belongs to; empty for the last one of a sock or part, after which nothing is on the needle to count.
     */
    private static Optional<Kind> kind(Design design, PartRounds part, int at) {
        Round round = part.rounds().get(at);
        return switch (round.kind()) {
            case CAST_ON, SET_UP -> Optional.of(Kind.CAST_ON);
            case PICK_UP -> Optional.of(Kind.PICK_UP);
            case TURN -> Optional.of(Kind.TURN);
            case ROW -> Optional.of(part.part() == Part.HEEL && design.heel() instanceof FlapHeel ? Kind.FLAP
                    : RoundsTable.getsShorter(part.rounds(), at) ? Kind.CUP_OUT : Kind.CUP_BACK);
            case GRAFT, BIND_OFF -> Optional.empty();
            // a row that only closes the last turn goes over into the round without a stop
            case PLAIN -> round.number() == 0 ? Optional.empty() : Optional.of(inTheRound(design, part, at));
            case INCREASE, DECREASE, RIB -> Optional.of(inTheRound(design, part, at));
        };
    }

    private static Kind inTheRound(Design design, PartRounds part, int at) {
        return switch (part.part()) {
            case TOE -> design.direction() == Direction.TOE_UP ? Kind.TOE : Kind.TOE_TIP;
            case FOOT -> isGusset(design, part.rounds(), at) ? Kind.GUSSET : Kind.FOOT;
            case HEEL -> at > 0 && part.rounds().get(at - 1).kind() == RoundKind.PICK_UP
                    && part.rounds().get(at).number() == 0 ? Kind.CORNERS : Kind.CAP;
            case LEG -> Kind.LEG;
            case CUFF -> Kind.CUFF;
            case GAUGE, BODY, FIT, YARN, OWN ->
                throw new IllegalStateException("nothing of %s is knitted".formatted(part));
        };
    }

    /** Toe-up the gusset's rounds end the foot, cuff-down they begin it. */
    private static boolean isGusset(Design design, List<Round> foot, int at) {
        boolean toeUp = design.direction() == Direction.TOE_UP;
        List<Round> fromPlainSide = toeUp ? foot.subList(0, at + 1) : foot.subList(at, foot.size());
        boolean shapedHereOrBeyond = fromPlainSide.stream().anyMatch(Stage::isShaped);
        boolean plainAfterLast = !toeUp && at > 0 && isShaped(foot.get(at - 1));
        return shapedHereOrBeyond || plainAfterLast;
    }

    private static boolean isShaped(Round round) {
        return round.kind() == RoundKind.INCREASE || round.kind() == RoundKind.DECREASE;
    }
}
