package turnheel.exchange.handout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.CastOn;
import turnheel.engine.design.Cuff;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.HemCuff;
import turnheel.engine.design.Increase;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RolledCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.Toe;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.grading.Graded;
import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.Rounds;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;
import turnheel.exchange.imprint.PartWords;

/** The techniques that a pattern uses. */
final class Lessons {

    private final Graded graded;
    private final Design design;
    private final boolean toeUp;

    private Lessons(Graded graded) {
        this.graded = graded;
        this.design = graded.design();
        this.toeUp = design.direction() == Direction.TOE_UP;
    }

    /** In the order of knitting. */
    static List<Lesson> of(Graded graded) {
        return new Lessons(graded).inOrder();
    }

    private List<Lesson> inOrder() {
        Map<Topic, Lesson> used = new EnumMap<>(Topic.class);
        used.put(Topic.CAST_ON, new Lesson(Topic.CAST_ON, Words.text("title.castOn"), castOn()));
        used.put(Topic.TOE, new Lesson(Topic.TOE, PartWords.toe(design.toe(), design.direction()), toe()));
        used.put(Topic.HEEL, new Lesson(Topic.HEEL, PartWords.heel(design.heel(), design.direction()), heel()));
        if (design.heel() instanceof FlapHeel) {
            used.put(Topic.GUSSET, new Lesson(Topic.GUSSET, Words.text("title.gusset"), List.of(directed("gusset"))));
        }
        used.put(Topic.CUFF, new Lesson(Topic.CUFF, PartWords.cuff(design.cuff()),
                List.of(directed(cuff(design.cuff())))));
        List<String> closing = closing();
        if (!closing.isEmpty()) {
            used.put(Topic.CLOSING, new Lesson(Topic.CLOSING, Words.text("title.closing"), closing));
        }
        return order().stream().filter(used::containsKey).map(used::get).toList();
    }

    private List<Topic> order() {
        List<Topic> order = new ArrayList<>(toeUp
                ? List.of(Topic.CAST_ON, Topic.TOE, Topic.GUSSET, Topic.HEEL, Topic.CUFF)
                : List.of(Topic.CAST_ON, Topic.CUFF, Topic.HEEL, Topic.GUSSET, Topic.TOE));
        if (design.heel() instanceof AfterthoughtHeel) {
            order.remove(Topic.HEEL);
            order.add(Topic.HEEL);
        }
        order.add(Topic.CLOSING);
        return order;
    }

    private String directed(String key) {
        return key + "." + design.direction().name();
    }

    private List<String> castOn() {
        return List.of("castOn." + (toeUp ? first(design.toe()) : first(design.cuff())));
    }

    private static String first(Toe toe) {
        return switch (toe) {
            case RoundToe round -> closed(round.castOn());
            case WedgeToe wedge -> closed(wedge.castOn());
            case StarToe star -> closed(star.castOn());
            case AsymmetricToe asymmetric -> closed(asymmetric.castOn());
            case ShortRowToe shortRow -> "provisional";
        };
    }

    private static String closed(CastOn castOn) {
        return switch (castOn) {
            case UNWORKED -> "closed";
            case HALF_WORKED -> "halfWorked";
        };
    }

    private static String first(Cuff cuff) {
        return switch (cuff) {
            case RibCuff rib -> "edge";
            case RolledCuff rolled -> "edge";
            case HemCuff hem -> "provisional";
        };
    }

    private List<String> toe() {
        return switch (design.toe()) {
            case RoundToe toe -> grown("toe.round", toe.increase());
            case WedgeToe toe -> grown("toe.wedge", toe.increase());
            case StarToe toe -> grown("toe.star", toe.increase());
            case AsymmetricToe toe -> grown("toe.asymmetric", toe.increase());
            case ShortRowToe toe -> List.of(directed("toe.shortRow"), turn(toe.turn()));
        };
    }

    /** How a toe grows is worth words where it does. */
    private List<String> grown(String key, Increase increase) {
        return toeUp ? List.of(directed(key), "increase." + increase.name()) : List.of(directed(key));
    }

    private static String turn(TurnMethod turn) {
        return "turn." + turn.name();
    }

    private List<String> heel() {
        return switch (design.heel()) {
            case ShortRowHeel heel -> List.of("heel.shortRow", turn(heel.turn()));
            case FlapHeel heel -> toeUp ? List.of("heel.flap.TOE_UP", turn(TurnMethod.WRAPPED))
                    : List.of("heel.flap.CUFF_DOWN", "heelTurn." + heel.turn().name());
            case AfterthoughtHeel heel -> List.of("heel.afterthought", "cap." + heel.cap().name());
        };
    }

    private static String cuff(Cuff cuff) {
        return switch (cuff) {
            case RibCuff rib -> "cuff.rib";
            case HemCuff hem -> "cuff.hem";
            case RolledCuff rolled -> "cuff.rolled";
        };
    }

    /** What takes the last stitches off the needle in some size. */
    private List<String> closing() {
        List<Stitch> used = graded.sizes().stream().flatMap(size -> Rounds.of(graded, size).stream())
                .flatMap(part -> part.rounds().stream()).flatMap(Lessons::stitches).distinct().toList();
        return Stream.of(Stitch.DRAW_CLOSED, Stitch.GRAFT, Stitch.BIND_OFF, Stitch.SEW_DOWN).filter(used::contains)
                .map(stitch -> "closing." + stitch.name()).toList();
    }

    /** The stitches of a round. */
    static Stream<Stitch> stitches(Round round) {
        return round.steps().stream().flatMap(Lessons::stitches);
    }

    private static Stream<Stitch> stitches(Step step) {
        return switch (step) {
            case Step.Work work -> Stream.of(work.stitch());
            case Step.Repeat repeat -> repeat.steps().stream().flatMap(Lessons::stitches);
        };
    }
}
