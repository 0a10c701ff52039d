package turnheel.workbench.grid;

import turnheel.engine.design.Part;

/** What the parts of a pattern are called in headings. */
final class PartWords {

    private PartWords() {
    }

    static String of(Part part) {
        return switch (part) {
            case GAUGE -> Messages.PartWords_gauge;
            case BODY -> Messages.PartWords_body;
            case FIT -> Messages.PartWords_fit;
            case TOE -> Messages.PartWords_toe;
            case FOOT -> Messages.PartWords_foot;
            case HEEL -> Messages.PartWords_heel;
            case LEG -> Messages.PartWords_leg;
            case CUFF -> Messages.PartWords_cuff;
            case YARN -> Messages.PartWords_yarn;
            case OWN -> Messages.PartWords_own;
        };
    }
}
