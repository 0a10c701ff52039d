package turnheel.engine.writing;

import java.util.Locale;

/** What a paragraph of a pattern is for; layouts give each its look. */
public enum Role {
    TITLE, SIZES, MEASUREMENT, MATERIAL, GAUGE, HEADING, ABBREVIATION, NOTE, INSTRUCTION, CAUTION;

    /** The word that files and scripts use; not translated. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
