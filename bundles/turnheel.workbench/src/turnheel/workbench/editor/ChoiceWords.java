package turnheel.workbench.editor;

import org.eclipse.emf.ecore.EClass;

import turnheel.engine.design.Direction;
import turnheel.engine.design.Increase;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.TurnMethod;
import turnheel.model.pattern.PatternPackage;

/** What a designer's choices are called on the screen. */
final class ChoiceWords {

    private ChoiceWords() {
    }

    static String of(Direction direction) {
        return switch (direction) {
            case TOE_UP -> Messages.ChoiceWords_toeUp;
            case CUFF_DOWN -> Messages.ChoiceWords_cuffDown;
        };
    }

    static String of(Increase increase) {
        return switch (increase) {
            case YARN_OVER -> Messages.ChoiceWords_yarnOver;
            case MAKE_ONE -> Messages.ChoiceWords_makeOne;
            case FRONT_AND_BACK -> Messages.ChoiceWords_frontAndBack;
            case LIFTED -> Messages.ChoiceWords_lifted;
        };
    }

    static String of(TurnMethod turn) {
        return switch (turn) {
            case WRAPPED -> Messages.ChoiceWords_wrapped;
        };
    }

    static String of(SockLength length) {
        return switch (length) {
            case NO_SHOW -> Messages.ChoiceWords_noShow;
            case ANKLE -> Messages.ChoiceWords_ankle;
            case QUARTER -> Messages.ChoiceWords_quarter;
            case CREW -> Messages.ChoiceWords_crew;
            case MID_CALF -> Messages.ChoiceWords_midCalf;
            case KNEE -> Messages.ChoiceWords_knee;
        };
    }

    /** The name of a kind of part. */
    static String of(EClass kind) {
        return switch (kind.getClassifierID()) {
            case PatternPackage.ROUND_TOE_ELEMENT -> Messages.ChoiceWords_roundToe;
            case PatternPackage.WEDGE_TOE_ELEMENT -> Messages.ChoiceWords_wedgeToe;
            case PatternPackage.SHORT_ROW_HEEL_ELEMENT -> Messages.ChoiceWords_shortRowHeel;
            case PatternPackage.STRAIGHT_LEG_ELEMENT -> Messages.ChoiceWords_straightLeg;
            case PatternPackage.RIB_CUFF_ELEMENT -> Messages.ChoiceWords_ribCuff;
            default -> throw new IllegalArgumentException("%s has no name".formatted(kind.getName())); //$NON-NLS-1$
        };
    }
}
