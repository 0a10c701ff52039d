package turnheel.exchange.table;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The columns of lists of queries, in their order: one name for one thing, whether a manuscript or a design is asked about.
 */
public enum QueryColumn {
    /** Counted from 1. */
    NUMBER(true, true),
    /** How an entry stands against the version checked last. */
    STATE(true, false),
    /** Whether it is an error, or a person should decide. */
    SEVERITY(false, true),
    /** Where in a text it is. */
    LINE(true, false),
    /** That line. */
    TEXT(true, false),
    /** Which number of a design it concerns. */
    PLACE(false, true),
    /** Labels, separated by commas. */
    SIZES(true, true),
    /** The stable id of the check. */
    CHECK(true, true),
    /** The sentence. */
    QUERY(true, true),
    /** What would have been right. */
    EXPECTED(false, true),
    /** What was found. */
    FOUND(false, true),
    /** What to write instead. */
    CORRECTION(true, true),
    /** The author's. */
    ANSWER(true, true),
    /** The editor's mark. */
    DONE(true, true);

    private final boolean ofManuscripts;
    private final boolean ofDesigns;

    QueryColumn(boolean ofManuscripts, boolean ofDesigns) {
        this.ofManuscripts = ofManuscripts;
        this.ofDesigns = ofDesigns;
    }

    /** The columns of a list about a manuscript. */
    public static List<QueryColumn> ofManuscripts() {
        return Arrays.stream(values()).filter(column -> column.ofManuscripts).toList();
    }

    /** The columns of a list about a design. */
    public static List<QueryColumn> ofDesigns() {
        return Arrays.stream(values()).filter(column -> column.ofDesigns).toList();
    }

    /** The heading as programs read it. */
    public String heading() {
        return name().toLowerCase(Locale.ROOT);
    }
}
