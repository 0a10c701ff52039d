package turnheel.exchange.word;

import turnheel.exchange.document.Purpose;

/** The styles of {@code styles.xml} by what they are for. */
enum WordStyle {
    TITLE("Title"), SUBTITLE("Subtitle"),
    HEADING_1("Heading1"), HEADING_2("Heading2"), HEADING_3("Heading3"),
    BODY("BodyText"), SIZES("Sizes"), MEASUREMENT("Measurement"), MATERIAL("Material"), GAUGE("Gauge"), NOTE("Note"),
    INSTRUCTION("Instruction"), CAUTION("Caution"),
    LIST_BULLET("ListBullet"), LIST_NUMBER("ListNumber"), TERM("Term"), TERM_WORD("TermWord"),
    TABLE("PatternTable"), TABLE_CAPTION("TableCaption"), TABLE_HEAD("TableHead"), TABLE_ROW_HEAD("TableRowHead"),
    TABLE_TEXT("TableText"), TABLE_FIGURE("TableFigure"), TABLE_BLANK("TableBlank"),
    FIGURE("Figure"), CAPTION("Caption"), IMPRINT("Imprint"), FOOTER("Footer");

    private final String id;

    WordStyle(String id) {
        this.id = id;
    }

    /** By which a paragraph, run or table refers to it. */
    String id() {
        return id;
    }

    static WordStyle of(Purpose purpose) {
        return switch (purpose) {
            case BODY -> BODY;
            case SIZES -> SIZES;
            case MEASUREMENT -> MEASUREMENT;
            case MATERIAL -> MATERIAL;
            case GAUGE -> GAUGE;
            case NOTE -> NOTE;
            case INSTRUCTION -> INSTRUCTION;
            case CAUTION -> CAUTION;
        };
    }

    /** @param level from 1 to 3 */
    static WordStyle ofHeading(int level) {
        return switch (level) {
            case 1 -> HEADING_1;
            case 2 -> HEADING_2;
            default -> HEADING_3;
        };
    }
}
