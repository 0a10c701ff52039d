package turnheel.cli;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * The sentences of {@code words.properties}, with their placeholders. The texts of {@code --help} are in
 * {@code usage.properties}.
 */
enum Words {
    /** {0} sentence. */
    LINE,
    /** {0} exception, {1} place. */
    FAULT,
    OUTPUT_LOST,

    /** {0} list of verbs. */
    VERB_MISSING,
    /** {0} verb, {1} list of verbs. */
    VERB_UNKNOWN,
    /** {0} command, {1} option, {2} list of options. */
    OPTION_UNKNOWN,
    /** {0} command, {1} argument. */
    ARGUMENT_LEFT_OVER,
    /** {0} command, {1} options and arguments. */
    ARGUMENT_MISSING,
    /** {0} command, {1} option. */
    OPTION_TWICE,
    /** {0} command, {1} sentence. */
    USAGE_OTHER,
    /** {0} the sentence before, {1} a word. */
    DID_YOU_MEAN,
    /** {0} what it was given for, {1} word, {2} list of words. */
    CHOICE_UNKNOWN,

    /** {0} file. */
    NOT_A_PATH,
    /** {0} file, {1} ending. */
    NOT_A_PATTERN_NAME,
    /** {0} file. */
    NO_SUCH_FILE,
    /** {0} file. */
    IS_A_FOLDER,
    /** {0} file. */
    EXISTS,
    /** {0} file, {1} size, {2} key. */
    NO_MEASUREMENT,
    /** {0} file, {1} size, {2} list of sizes. */
    NO_SUCH_SIZE,
    /** {0} file, {1} number of queries. */
    QUERIES_LEFT,

    /** {0} option, {1} what was given. */
    NO_PATTERN_FOR_ROWS,
    /** {0} option, {1} zone, {2} rows of the pattern, {3} rows given. */
    ROWS_DIFFER,
    /** {0} file. */
    ROWS_UNREADABLE,
    /** {0} argument. */
    NOT_AN_ASSIGNMENT,
    /** {0} key. */
    KEY_UNKNOWN,
    /** {0} word, {1} list of words. */
    NAME_UNKNOWN,
    /** {0} key, {1} list of keys that can be set. */
    KEY_IS_RESULT,
    /** {0} file, {1} key, {2} list of keys of the same part. */
    KEY_ABSENT,
    /** {0} file, {1} size, {2} key. */
    KEY_LEFT_WITHOUT_PART,
    /** {0} argument, {1} sentence. */
    VALUE_REFUSED,
    /** {0} name. */
    VALUE_MISSING,
    /** {0} word. */
    NOT_OF_A_SIZE,
    /** {0} argument. */
    NOT_A_CELL,
    /** {0} option, {1} value. */
    NOT_A_GAUGE,
    /** {0} option, {1} value. */
    NOT_A_CUFF,
    /** {0} option, {1} text. */
    NOT_A_YARN,
    /** {0} option, {1} text. */
    NOT_A_COLOUR,
    /** {0} option, {1} place. */
    COLOUR_TWICE,
    /** {0} option, {1} text. */
    NOT_A_SWATCH,
    /** {0} option. */
    NO_MEASURED_SWATCH,
    /** {0} text. */
    NOT_AN_OWN_ROW,
    /** {0} key. */
    OWN_ROW_ABSENT,
    /** {0} key, {1} key that is there. */
    OWN_ROW_TWICE,
    /** {0} option, {1} kinds of part that have it. */
    CHOICE_WITHOUT_PART,
    /** {0} value. */
    NOT_A_SIZE,
    /** {0} label. */
    SIZE_OPTION,
    /** {0} argument. */
    SIZE_OF,
    /** {0} label, {1} word. */
    MEASUREMENT_TWICE,
    /** {0} label, {1} word. */
    MEASUREMENT_NEEDED,
    /** {0} label, {1} word, {2} sentence. */
    MEASUREMENT_REFUSED,
    /** {0} label. */
    LABEL_TWICE,
    /** {0} list of tables. */
    SIZES_MISSING,
    SIZES_BOTH,
    /** {0} file, {1} problem. */
    SIZES_REFUSED,
    /** {0} file, {1} problem, {2} number of others. */
    SIZES_REFUSED_MORE,
    SHOE_OR_TABLE,

    /** {0} file, {1} number of sizes, {2} list of sizes. */
    NEW_WRITTEN,
    /** {0} file. */
    SET_UNCHANGED,
    SET_NOTHING,
    FORCE_WITHOUT_WORKBOOK,
    /** {0} file. */
    WORKBOOK_UNCHANGED,
    /** {0} workbook, {1} problem. */
    WORKBOOK_REFUSED,
    /** {0} workbook, {1} problem, {2} number of others. */
    WORKBOOK_REFUSED_MORE,
    /** {0} workbook, {1} problem. */
    WORKBOOK_STALE,
    /** {0} file. */
    DRY_RUN,
    /** {0} file. */
    EXPORT_WRITTEN,
    /** {0} option, {1} file. */
    EXPORT_WHOLE,
    /** {0} option that is refused, {1} option that asks for the drawing. */
    EXPORT_DRAWN,
    BATCH_DONE,
    BATCH_QUERIES,
    BATCH_FAILED,
    BATCH_CANCELLED,
    /** {0} how many are finished, {1} how many there are, {2} pattern. */
    BATCH_PROGRESS,
    /** {0} first file, {1} number of files. */
    BATCH_EXISTS,
    /** {0} number without queries, {1} with queries, {2} failed. */
    BATCH_SUMMARY,
    /** {0} number of patterns, {1} of how many. */
    BATCH_NOT_ALL,
    /** {0} number of patterns, {1} of how many. */
    BATCH_QUERIES_LEFT,
    /** {0} title, {1} size. */
    ROUNDS_TITLE,
    ROUNDS_NONE,
    GRAMS_LEFT,
    GRAMS_LEFT_RANGE,
    GRAMS_LEFT_NO_YARN,
    /** {0} file. */
    NOT_A_TEXT_NAME,
    /** {0} name, {1} list of styles, {2} ending of style files. */
    STYLE_UNKNOWN,
    /** {0} file, {1} sentence. */
    STYLE_REFUSED,
    /** {0} file. */
    STYLE_NOT_UTF8,
    /** {0} number, {1} least, {2} most. */
    TABLES_RANGE,
    EACH_SIZE_OR_ONE,
    EACH_SIZE_WHERE,
    FIND_ROUND_NO_COUNT,
    FIND_ROUND_TOO_FEW,
    FIND_ROUND_NONE,
    FIND_ROUND_SLIP,
    /** {0} direction, {1} gauge. */
    GRADE_SUBTITLE,
    /** {0} stitches, {1} rounds, {2} length. */
    GAUGE_TOGETHER,
    /** {0} stitches, {1} length, {2} rounds, {3} length. */
    GAUGE_APART,
    GRADE_LEGEND,
    /** {0} list of keys. */
    WHY_BASIS,
    /** {0} list of keys. */
    WHY_DEPENDENTS,
    /** {0} size, {1} ideal count, {2} least, {3} most. */
    OPTIONS_IDEAL,
    /** {0} size. */
    OPTIONS_OTHERS,
    OPTION_CHOSEN,
    OPTION_FAR,
    /** {0} list of needs. */
    OPTION_BREAKS,
    /** {0} list of sizes. */
    OPTION_CROWDS,
    GRADE_ONE_QUESTION,
    GAUGES_COUNTS,
    GAUGES_CIRCUMFERENCE,
    GAUGES_FITS,
    GAUGES_CLOSEST,
    /** {0} size, {1} ease in per cent. */
    GAUGES_CLOSEST_SIZE,
    GAUGES_LEGEND,
    RELAXATIONS,
    RELAXATIONS_NONE,
    CHECK_CLEAN,
    CHECK_PLACE,
    CHECK_SIZES,
    CHECK_CORRECTION,
    CHECK_LIST_OF_PATTERN,
    /** {0} number of errors, {1} number of warnings. */
    CHECK_SUMMARY,
    /** {0} source of the table. */
    SIZES_SOURCE,
    /** {0} foot length in mm. */
    SHOE_FOOT,
    NOTHING,
    WHOLE_PATTERN,

    HANDOUT_PRACTICE_ALONE,
    /** {0} file, {1} part, {2} list of parts. */
    HANDOUT_PART_ABSENT,
    /** {0} file. */
    HANDOUT_NO_PRACTICE,
    TEST_KNIT_RESULTS_ALONE,
    /** {0} file, {1} problem. */
    TEST_KNIT_REFUSED,
    /** {0} file, {1} problem, {2} number of other problems. */
    TEST_KNIT_REFUSED_MORE,

    HEADING_KEY,
    HEADING_UNIT,
    HEADING_ROUND,
    HEADING_STITCHES,
    HEADING_OPEN,
    HEADING_KIND,
    HEADING_TEXT,
    HEADING_SEVERITY,
    HEADING_CHECK,
    HEADING_SIZES,
    HEADING_MESSAGE,
    HEADING_SIZE,
    HEADING_READS,
    HEADING_SHOULD_READ,
    HEADING_WAS,
    HEADING_NOW,
    HEADING_NAME,
    HEADING_AROUND,
    HEADING_EASE,
    HEADING_NOTE,
    HEADING_DEVIATION,
    HEADING_RELAXATION,
    HEADING_TITLE,
    HEADING_PART,
    HEADING_GAUGE,
    HEADING_LOOK_FOR,
    HEADING_NEXT,
    HEADING_PATTERN,
    HEADING_STATE,
    HEADING_ERRORS,
    HEADING_WARNINGS,
    HEADING_FIRST;

    private static final ResourceBundle TEXTS = ResourceBundle.getBundle("turnheel.cli.words");

    /** The text as it stands. */
    String text() {
        return TEXTS.getString(name());
    }

    /** The sentence with its placeholders filled in. */
    String with(Object... values) {
        Object[] texts = new Object[values.length];
        for (int i = 0; i < values.length; i++) {
            // As text: a number would come out with the separators of the machine's country.
            texts[i] = String.valueOf(values[i]);
        }
        return new MessageFormat(text(), Locale.ROOT).format(texts);
    }
}
