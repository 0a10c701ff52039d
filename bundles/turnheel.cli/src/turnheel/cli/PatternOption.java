package turnheel.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

import turnheel.engine.design.Direction;
import turnheel.engine.design.Increase;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.TurnMethod;
import turnheel.model.Literals;
import turnheel.model.pattern.CuffElement;
import turnheel.model.pattern.HeelElement;
import turnheel.model.pattern.LegElement;
import turnheel.model.pattern.Pattern;
import turnheel.model.pattern.PatternFactory;
import turnheel.model.pattern.RibCuffElement;
import turnheel.model.pattern.RoundToeElement;
import turnheel.model.pattern.ShortRowHeelElement;
import turnheel.model.pattern.StraightLegElement;
import turnheel.model.pattern.ToeElement;
import turnheel.model.pattern.WedgeToeElement;

/**
 * What a designer decides for the whole pattern: an option of {@code new}, a name of {@code set}. The words for the
 * kinds of part are those of the command line; the others are those of the pattern file.
 */
enum PatternOption {
    TITLE, DIRECTION, GAUGE, TOE, INCREASE, HEEL, TURN, LEG, LENGTH, CUFF;

    private static final String ROUND = "round";
    private static final String WEDGE = "wedge";
    private static final String SHORT_ROW = "short-row";
    private static final String STRAIGHT = "straight";

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static List<String> words() {
        return Arrays.stream(values()).map(PatternOption::word).toList();
    }

    static Optional<PatternOption> of(String word) {
        return Arrays.stream(values()).filter(option -> option.word().equals(word)).findFirst();
    }

    /** What the document says, as it can be written on the command line. */
    String read(Pattern document) {
        return switch (this) {
            case TITLE -> Objects.requireNonNullElse(document.getTitle(), "");
            case DIRECTION -> Literals.text(document.getDirection());
            case GAUGE -> GaugePair.of(document).toString();
            case TOE -> kind(document.getToe());
            case INCREASE -> Literals.text(increase(document.getToe()));
            case HEEL -> kind(document.getHeel());
            case TURN -> Literals.text(shortRow(document.getHeel()).getTurn());
            case LEG -> kind(document.getLeg());
            case LENGTH -> Literals.text(straight(document.getLeg()).getLength());
            case CUFF -> RibText.of(rib(document.getCuff()).getKnit(), rib(document.getCuff()).getPurl());
        };
    }

    /**
     * Changes the document.
     *
     * @param given how the person named this option, for messages: {@code --toe} or {@code toe}
     */
    void write(Pattern document, String given, String value) throws Refusal {
        switch (this) {
            case TITLE -> document.setTitle(value);
            case DIRECTION -> document.setDirection(Choice.of(given, value, Direction.class));
            case GAUGE -> GaugePair.parse(given, value).writeTo(document);
            case TOE -> writeToe(document, given, value);
            case INCREASE -> setIncrease(document.getToe(), Choice.of(given, value, Increase.class));
            case HEEL -> Choice.position(given, value, List.of(SHORT_ROW));
            case TURN -> shortRow(document.getHeel()).setTurn(Choice.of(given, value, TurnMethod.class));
            case LEG -> Choice.position(given, value, List.of(STRAIGHT));
            case LENGTH -> straight(document.getLeg()).setLength(Choice.of(given, value, SockLength.class));
            case CUFF -> {
                RibCuff cuff = RibText.parse(given, value);
                rib(document.getCuff()).setKnit(cuff.knit());
                rib(document.getCuff()).setPurl(cuff.purl());
            }
        }
    }

    /** Another kind of toe grows as the one before did; the same kind keeps all that was decided for it. */
    private static void writeToe(Pattern document, String given, String value) throws Refusal {
        Choice.position(given, value, List.of(ROUND, WEDGE));
        if (value.equals(kind(document.getToe()))) {
            return;
        }
        PatternFactory factory = PatternFactory.eINSTANCE;
        ToeElement toe = value.equals(ROUND) ? factory.createRoundToeElement() : factory.createWedgeToeElement();
        setIncrease(toe, increase(document.getToe()));
        document.setToe(toe);
    }

    // Generated interfaces cannot be sealed; a test sends every kind of part through these.

    private static String kind(ToeElement toe) {
        return switch (toe) {
            case RoundToeElement round -> ROUND;
            case WedgeToeElement wedge -> WEDGE;
            default -> throw unknown(toe);
        };
    }

    private static Increase increase(ToeElement toe) {
        return switch (toe) {
            case RoundToeElement round -> round.getIncrease();
            case WedgeToeElement wedge -> wedge.getIncrease();
            default -> throw unknown(toe);
        };
    }

    private static void setIncrease(ToeElement toe, Increase increase) {
        switch (toe) {
            case RoundToeElement round -> round.setIncrease(increase);
            case WedgeToeElement wedge -> wedge.setIncrease(increase);
            default -> throw unknown(toe);
        }
    }

    private static String kind(HeelElement heel) {
        shortRow(heel);
        return SHORT_ROW;
    }

    private static ShortRowHeelElement shortRow(HeelElement heel) {
        if (heel instanceof ShortRowHeelElement shortRow) {
            return shortRow;
        }
        throw unknown(heel);
    }

    private static String kind(LegElement leg) {
        straight(leg);
        return STRAIGHT;
    }

    private static StraightLegElement straight(LegElement leg) {
        if (leg instanceof StraightLegElement straight) {
            return straight;
        }
        throw unknown(leg);
    }

    private static RibCuffElement rib(CuffElement cuff) {
        if (cuff instanceof RibCuffElement rib) {
            return rib;
        }
        throw unknown(cuff);
    }

    private static IllegalStateException unknown(Object part) {
        return new IllegalStateException("the command line has no word for %s".formatted(part));
    }
}
